package leafturn.web.sheet;

import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import leafturn.reports.DayWords;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** A photograph's description as it is corrected; its picture stays. */
final class PhotographForm extends SheetForm<PhotographSheet> {
  PhotographForm() {
    super(Kind.PHOTOGRAPH, "photograph");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.date("day", "Day it was taken").needed(), Field.text("caption", "What it shows"));
  }

  @Override
  public String title(PhotographSheet content, Setting setting) {
    String day = DayWords.dayAndYear(content.day());
    return content.caption() == null ? "Photograph of " + day : content.caption() + ", " + day;
  }
}
