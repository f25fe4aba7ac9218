package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leafturn.quantity.Measure;
import leafturn.records.sheet.Compaction;
import leafturn.records.sheet.Cover;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PointShare;
import leafturn.records.sheet.VisitSheet;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A visit to a lawn as it is entered. */
final class VisitForm extends SheetForm<VisitSheet> {
  VisitForm() {
    super(Kind.VISIT, "visit sheet");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>(List.of(measured(), cover(), ground()));
    groups.add(
        new Group(
            "Photographs from fixed points",
            "The same point each time, so that years compare. Once the visit is saved its page takes them; here those of the lawn's log are named after their points."
                + (setting.photographs().isEmpty() ? " The log has none yet." : ""),
            List.of()));
    if (!setting.photographs().isEmpty()) {
      groups.addAll(Rows.of(document, "photographs", 2, 1, i -> photograph(i, setting)));
    }
    groups.add(new Group("", "", List.of(note())));
    return new FormShape(groups);
  }

  @Override
  public Form begun(Setting setting) {
    return super.begun(setting).with("day", setting.today().toString());
  }

  private static Group measured() {
    return new Group(
        "",
        "",
        List.of(
            Field.date("day", "Day of the visit").needed(),
            Field.numbers("heightsMm", "Heights of the grass", Measure.HEIGHT)
                .hint(
                    "At ten points as a rule, up to twenty, with gaps between them. Their mean sets the grass of the model right on that day; on a day with a mowing log the height there.")));
  }

  private static Group cover() {
    return new Group(
        "Point count",
        "How many points of a frame or a walk fell on what; a hundred or so tell something.",
        List.of(
            Field.number("cover.grass", "On grass", ""),
            Field.number("cover.weed", "On weeds", ""),
            Field.number("cover.moss", "On moss", ""),
            Field.number("cover.bare", "On bare ground", "")),
        true);
  }

  private static Group ground() {
    return new Group(
        "How hard the ground is, and its thatch",
        "",
        List.of(
            Field.oneOf("compaction.method", "Found with", Words.of(Compaction.Method.class))
                .hint("One method, and the one field below that belongs to it."),
            Field.number("compaction.resistanceKPa", "Penetrometer: resistance", Measure.PRESSURE),
            Field.number("compaction.depthMm", "Screwdriver: goes in by hand", Measure.HEIGHT),
            Field.text("compaction.words", "In words: what it feels like underfoot"),
            Field.numbers("thatchPlugsMm", "Thatch of the plugs", Measure.HEIGHT)
                .hint("Of three plugs as a rule, with gaps between them.")));
  }

  private static Group photograph(int number, Setting setting) {
    String at = "photographs[" + number + "].";
    return Group.row(
        "Photograph " + (number + 1),
        Field.text(at + "point", "Point"),
        Field.oneOf(at + "photograph", "Photograph", setting.photographs()));
  }

  @Override
  public String title(VisitSheet content, Setting setting) {
    return "Visit of " + DayWords.dayAndYear(content.day());
  }

  @Override
  public List<Line> findings(VisitSheet content, Setting setting) {
    List<Line> lines = new ArrayList<>();
    content
        .meanHeightMm()
        .ifPresent(
            mean ->
                lines.add(
                    new Line(
                        "Mean height",
                        setting.words().height(mean) + spread(content.heightSpreadMm(), setting))));
    Cover cover = content.cover();
    if (cover != null) {
      share(lines, "Grass", cover.grassShare());
      share(lines, "Weeds", cover.weedShare());
      share(lines, "Moss", cover.mossShare());
      share(lines, "Bare", cover.bareShare());
    }
    content
        .meanThatchMm()
        .ifPresent(mean -> lines.add(new Line("Mean thatch", setting.words().depth(mean))));
    return lines;
  }

  private static String spread(OptionalDouble spreadMm, Setting setting) {
    return spreadMm.isEmpty()
        ? ""
        : ", standard deviation " + setting.words().height(spreadMm.getAsDouble());
  }

  private static void share(List<Line> lines, String label, PointShare share) {
    lines.add(
        new Line(
            label,
            "%s (95 %% interval %s to %s)"
                .formatted(
                    QuantityWords.percent(share.fraction()),
                    QuantityWords.percent(share.lowFraction()),
                    QuantityWords.percent(share.highFraction()))));
  }
}
