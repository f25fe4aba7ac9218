package leafturn.web.sheet;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.sheet.HeapSheet;
import leafturn.records.sheet.Kind;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;

/** A compost heap as it is entered. */
final class HeapForm extends SheetForm<HeapSheet> {
  private static final int READINGS = 3;

  HeapForm() {
    super(Kind.HEAP, "heap");
  }

  @Override
  public FormShape shape(Setting setting, String document) {
    List<Group> groups = new ArrayList<>();
    groups.add(heap());
    groups.add(
        new Group(
            "Its heat",
            "Measured in the middle, well before any turn. A row left empty is none. Seed heads go"
                + " to a heap only where its heat was logged.",
            List.of()));
    groups.addAll(Rows.of(document, "heat", READINGS, READINGS, HeapForm::reading));
    return new FormShape(groups);
  }

  private static Group heap() {
    return new Group(
        "",
        "",
        List.of(
            Field.text("name", "Name").needed(),
            Field.oneOf("heapKind", "How it is run", Words.of(HeapSheet.HeapKind.class))
                .hint("Hot: built at once and turned. Cold: filled as things come. Hot heaps burn.")
                .needed(),
            Field.number("volumeLitres", "Room it offers", Measure.VOLUME),
            Field.date("started", "Begun on"),
            note()));
  }

  private static Group reading(int number) {
    String at = "heat[" + number + "].";
    return Group.row(
        "Reading " + (number + 1),
        Field.date(at + "day", "Day"),
        Field.number(at + "temperatureC", "Temperature", Measure.TEMPERATURE));
  }

  @Override
  public String title(HeapSheet content, Setting setting) {
    return content.name();
  }
}
