package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.ThatchSheet;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;

/** A measurement of thatch as it is entered. */
final class ThatchForm extends SheetForm<ThatchSheet> {
  ThatchForm() {
    super(Kind.THATCH, "thatch measurement");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.date("day", "Day the plugs were taken").needed(),
        Field.numbers("plugsMm", "Thatch of the plugs", Measure.HEIGHT)
            .hint(
                "Of three plugs as a rule, with gaps between them: %s."
                    .formatted(setting.units() == Units.US ? "0.5 0.6 0.4" : "12 15 11"))
            .needed(),
        Field.oneOf("method", "Measured", Words.of(ThatchSheet.Method.class))
            .hint("The two differ, so only measurements of one method compare.")
            .needed(),
        note());
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting).with("day", setting.today().toString());
  }

  @Override
  public String title(ThatchSheet content, Setting setting) {
    return "Thatch on " + DayWords.dayAndYear(content.day());
  }

  @Override
  public List<Line> findings(ThatchSheet content, Setting setting) {
    List<Line> lines = new ArrayList<>();
    content
        .meanMm()
        .ifPresent(mean -> lines.add(new Line("Mean thatch", setting.words().depth(mean))));
    return lines;
  }
}
