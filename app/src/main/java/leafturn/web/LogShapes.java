package leafturn.web;

import java.util.List;
import java.util.stream.Stream;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.sheet.What;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;
import leafturn.web.sheet.LogFields;

/** The fields of each entry of the log, the ones most often wanted first. */
final class LogShapes {
  private static final Field DAY = Field.date("day", "Day").needed();
  private static final Field NOTE = Field.longText("note", "Note");
  private static final Field CUT_TO = Field.number("heightAfterMm", "Cut to", Measure.HEIGHT);
  private static final Field BEFORE =
      Field.number("heightBeforeMm", "Grass height before", Measure.HEIGHT)
          .hint("If you measured it.");
  private static final Field MINUTES = LogFields.minutes();
  private static final Field TWICE = LogFields.twoPasses();
  private static final Field BAGS = LogFields.bags();
  private static final Field WENT_TO =
      Field.text("wentTo", "Where it went").hint("For instance the heap by the shed.");

  private static final String LABEL_DECIDES =
      "The label decides how long clippings must stay off beds, heaps and feed. Some residues"
          + " outlast composting.";
  private static final String BEFORE_RAIN =
      "Keep fertiliser off paving and drains, and not before heavy rain; local codes come first.";

  private final Units units;
  private final Field weight;

  /**
   * @param units of the reader, who may say leave and bag for return and collect
   */
  LogShapes(Units units) {
    this.units = units;
    this.weight = LogFields.weight(units);
  }

  List<LogChoice> choices() {
    return List.of(
        mown(LogChoice.RETURNED, "Mown, returned", 1.0, DAY, CUT_TO, BEFORE, MINUTES, TWICE, NOTE),
        mown(
            LogChoice.COLLECTED,
            "Mown, collected",
            0.0,
            DAY,
            BAGS,
            WENT_TO,
            CUT_TO,
            weight,
            BEFORE,
            MINUTES,
            TWICE,
            NOTE),
        partReturned(),
        other("watered", "Watered", What.WATERED, "", LogFields.watered()),
        other("fed", "Fed", What.FED, BEFORE_RAIN, LogFields.fed()),
        other("treated", "Treated", What.TREATED, LABEL_DECIDES, LogFields.treated()),
        other("seeded", "Seeded", What.SEEDED, "", LogFields.seeded()),
        other("aerated", "Aerated", What.AERATED, "", LogFields.depth("Depth of the holes")),
        other("scarified", "Scarified", What.SCARIFIED, "", LogFields.depth("Depth of the blades")),
        other(
            "topdressed",
            "Topdressed",
            What.TOPDRESSED,
            "",
            LogFields.depth("Depth of the dressing")),
        other("limed", "Limed", What.LIMED, "", LogFields.limed()),
        other("observed", "Seen, or a note", What.OBSERVED, "", sights()));
  }

  private LogChoice mown(String key, String heading, double share, Field... fields) {
    return new LogChoice(key, units.told(heading), What.MOWN, share, "", FormShape.of(fields));
  }

  private LogChoice partReturned() {
    Field share =
        Field.number("returnedShare", units.told("Share returned"), "")
            .needed()
            .hint(units.told("From 0, all collected, to 1, all returned."));
    FormShape shape =
        FormShape.of(DAY, share, CUT_TO, BAGS, WENT_TO, weight, BEFORE, MINUTES, TWICE, NOTE);
    return new LogChoice(
        LogChoice.PART_RETURNED, units.told("Mown, part returned"), What.MOWN, null, "", shape);
  }

  private static LogChoice other(
      String key, String heading, What what, String caution, List<Field> fields) {
    Field[] all =
        Stream.of(Stream.of(DAY), fields.stream(), Stream.of(NOTE))
            .flatMap(part -> part)
            .toArray(Field[]::new);
    return new LogChoice(key, heading, what, null, caution, FormShape.of(all));
  }

  private static List<Field> sights() {
    return Stream.concat(Stream.of(LogFields.time()), LogFields.observed().stream()).toList();
  }
}
