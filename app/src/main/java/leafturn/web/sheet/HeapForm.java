package leafturn.web.sheet;

import leafturn.quantity.Measure;
import leafturn.records.sheet.HeapSheet;
import leafturn.records.sheet.Kind;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** A compost heap as it is entered. */
final class HeapForm extends SheetForm<HeapSheet> {
  HeapForm() {
    super(Kind.HEAP, "heap");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    return FormShape.of(
        Field.text("name", "Name").needed(),
        Field.oneOf("heapKind", "How it is run", Words.of(HeapSheet.HeapKind.class))
            .hint("Hot: built at once and turned. Cold: filled as things come. Hot heaps burn.")
            .needed(),
        Field.number("volumeLitres", "Room it offers", Measure.VOLUME),
        Field.date("started", "Begun on"),
        note());
  }

  @Override
  public String title(HeapSheet content, Setting setting) {
    return content.name();
  }
}
