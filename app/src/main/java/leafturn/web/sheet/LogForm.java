package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** An entry of the log as it is corrected; what was done stays what it is. */
final class LogForm extends SheetForm<LogSheet> {
  LogForm() {
    super(Kind.LOG, "log entry");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    What what = Choice.of(Rows.parsed(document).path("what").asText(), What.class);
    List<Field> fields = new ArrayList<>();
    fields.add(Field.date("day", "Day").needed());
    fields.add(Field.time("time", "Time"));
    fields.addAll(what == null ? List.of() : fieldsOf(what, setting.units()));
    fields.add(note());
    return new FormShape(List.of(new Group("", "", fields)));
  }

  private static List<Field> fieldsOf(What what, Units units) {
    return switch (what) {
      case MOWN -> mown(units);
      case FED -> LogFields.fed();
      case WATERED -> LogFields.watered();
      case TREATED -> LogFields.treated();
      case SEEDED -> LogFields.seeded();
      case AERATED, SCARIFIED, TOPDRESSED -> LogFields.depth("Depth");
      case LIMED -> LogFields.limed();
      case OBSERVED -> LogFields.observed();
    };
  }

  private static List<Field> mown(Units units) {
    return List.of(
        Field.number("returnedShare", units.told("Share of the clippings returned"), "")
            .hint(units.told("From 0, all collected, to 1, all returned."))
            .needed(),
        Field.number("heightAfterMm", "Cut to", Measure.HEIGHT)
            .hint("Left empty: the programme's cut height."),
        Field.number("heightBeforeMm", "Grass height before", Measure.HEIGHT)
            .hint("Only where it was measured; the model then goes on from it."),
        LogFields.bags(),
        LogFields.weight(units),
        Field.text("wentTo", "Where it went"),
        LogFields.minutes(),
        LogFields.twoPasses());
  }

  @Override
  public String title(LogSheet content, Setting setting) {
    return Words.capital(Choice.word(content.what())) + " on " + DayWords.dayAndYear(content.day());
  }
}
