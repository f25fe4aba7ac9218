package leafturn.web.sheet;

import leafturn.quantity.Measure;
import leafturn.records.sheet.BedSheet;
import leafturn.records.sheet.Kind;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** A bed or border as it is entered. */
final class BedForm extends SheetForm<BedSheet> {
  BedForm() {
    super(Kind.BED, "bed or border");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.text("name", "Name").needed(),
        Field.text("growing", "What grows there"),
        Field.outline("outline", "Outline").hint("Its area counts where none is typed below."),
        Field.number("areaM2", "Area, as measured", Measure.AREA)
            .hint("Left empty: that of the outline."),
        Field.number("mulchDepthMm", "Depth of mulch it may carry", Measure.HEIGHT)
            .hint("Left empty: not told, so nothing is counted against a depth."),
        Field.number("mostNKgPerHa", "Most nitrogen a year", Measure.NUTRIENT_LIMIT)
            .hint("Left empty: no cap of its own. Local codes come first."),
        note());
  }

  @Override
  public String title(BedSheet content, Setting setting) {
    return content.name();
  }
}
