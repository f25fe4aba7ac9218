package leafturn.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.PhotographSheet;
import leafturn.records.sheet.Property;
import leafturn.web.PropertyPage.Item;
import leafturn.web.PropertyPage.LawnEntry;
import leafturn.web.PropertyPage.Photograph;
import leafturn.web.PropertyPage.Shelf;
import leafturn.web.sheet.Line;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetForm;
import leafturn.web.sheet.SheetForms;
import leafturn.web.sheet.SheetLines;

/** Gathers what the book keeps of a property. */
final class PropertyPages {
  private final BookReading reading;
  private final Setting setting;
  private final List<Item> withdrawn = new ArrayList<>();
  private final List<Photograph> photographs = new ArrayList<>();

  private PropertyPages(BookReading reading, Setting setting) {
    this.reading = reading;
    this.setting = setting;
  }

  /** The page of a place that is a property. */
  static PropertyPage of(
      BookReading reading, SheetPlace place, Setting setting, boolean mayChange) {
    Sheet<Property> property = Objects.requireNonNull(place.property());
    return new PropertyPages(reading, setting).page(property, mayChange);
  }

  private PropertyPage page(Sheet<Property> property, boolean mayChange) {
    SheetForm<Property> form = SheetForms.of(Kind.PROPERTY);
    String id = property.id();
    List<LawnEntry> lawns =
        standing(reading.everOfProperty(Kind.LAWN, id)).stream().map(this::lawn).toList();
    List<Shelf> shelves =
        Stream.of(
                shelf(Kind.INTAKE, "Intake", id),
                shelf(Kind.BED, "Beds and borders", id),
                shelf(Kind.HEAP, "Heaps", id),
                shelf(Kind.SOIL_TEST, "Soil tests of beds", id))
            .toList();
    standing(reading.everOfProperty(Kind.PHOTOGRAPH, id)).forEach(this::photograph);
    return new PropertyPage(
        id,
        property.content().name(),
        property.content().address(),
        property.withdrawn(),
        new SheetLines(form, setting).of(Kind.PROPERTY.write(property.content())),
        lawns,
        shelves,
        photographs,
        withdrawn,
        mayChange);
  }

  private LawnEntry lawn(Sheet<LawnSheet> lawn) {
    LawnSheet content = lawn.content();
    String id = lawn.id();
    Double area = content.surfaceM2();
    String facts =
        Stream.of(
                content.grasses(),
                area == null ? "area not measured" : setting.words().area(area),
                content.soil().texture() == null ? "soil not told" : content.soil().texture())
            .collect(Collectors.joining(", "));
    standing(reading.everOfLawn(Kind.PHOTOGRAPH, id)).forEach(this::photograph);
    standing(reading.everOfLawn(Kind.LOG, id));
    return new LawnEntry(
        id,
        content.name(),
        content.address(),
        facts,
        List.of(
            lawnShelf(Kind.PROGRAMME, "Programmes", id),
            lawnShelf(Kind.VISIT, "Visits", id),
            lawnShelf(Kind.SOIL_TEST, "Soil tests", id),
            lawnShelf(Kind.THATCH, "Thatch", id)));
  }

  private <C extends Content> Shelf shelf(Kind<C> kind, String label, String property) {
    return new Shelf(
        label,
        items(standing(reading.everOfProperty(kind, property))),
        "/sheets/new?kind=" + kind + "&property=" + property);
  }

  private <C extends Content> Shelf lawnShelf(Kind<C> kind, String label, String lawn) {
    return new Shelf(
        label,
        items(standing(reading.everOfLawn(kind, lawn))),
        "/sheets/new?kind=" + kind + "&lawn=" + lawn);
  }

  /** Those that count; the others are put aside. */
  private <C extends Content> List<Sheet<C>> standing(List<Sheet<C>> all) {
    all.stream().filter(Sheet::withdrawn).forEach(sheet -> withdrawn.add(item(sheet)));
    return all.stream().filter(sheet -> !sheet.withdrawn()).toList();
  }

  private <C extends Content> List<Item> items(List<Sheet<C>> sheets) {
    Comparator<Sheet<C>> byDay =
        Comparator.comparing(
            sheet -> sheet.content().day(), Comparator.nullsFirst(Comparator.naturalOrder()));
    return sheets.stream().sorted(byDay.reversed()).map(this::item).toList();
  }

  private <C extends Content> Item item(Sheet<C> sheet) {
    SheetForm<C> form = SheetForms.of(sheet.kind());
    String detail =
        form.findings(sheet.content(), setting).stream()
            .map(PropertyPages::inALine)
            .collect(Collectors.joining("; "));
    return new Item(sheet.id(), form.title(sheet.content(), setting), detail);
  }

  private static String inALine(Line line) {
    return line.label().toLowerCase(Locale.ROOT) + " " + line.words();
  }

  private void photograph(Sheet<PhotographSheet> sheet) {
    String title = SheetForms.of(Kind.PHOTOGRAPH).title(sheet.content(), setting);
    photographs.add(new Photograph(sheet.id(), title));
  }
}
