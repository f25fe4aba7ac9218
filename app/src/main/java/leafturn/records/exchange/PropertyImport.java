package leafturn.records.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.LawnFile;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Arrivals.NewSheet;
import leafturn.records.sheet.Address;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnDocument;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.Names;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.Property;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * Looks at a table of properties and their lawns, one lawn a row. A property is known by its name,
 * a lawn by its name on its property; what is said of a property may stand in one of its rows only.
 */
public final class PropertyImport {
  /** These stand for what is missing, which is told by itself. */
  private static final String NOBODY = "nameless";

  private static final String NO_PROPERTY = Arrivals.idOf("no property");

  private final BookReading book;
  private final TableLook look;
  private final LocalDate programmesFrom;
  private final NamedStations stations;
  private final List<Sheet<Property>> inBook;
  private final Map<String, Place> places = new HashMap<>();
  private final Set<String> faultyPlaces = new HashSet<>();
  private final Map<String, Table.Row> rowOfLawn = new HashMap<>();
  private final List<NewSheet<?>> sheets = new ArrayList<>();

  /** A property, in the book or about to come into it, and what the table says of it. */
  private record Place(String id, Property property, Table.Row row, @Nullable JsonNode said) {}

  private PropertyImport(BookReading book, TableLook look, LocalDate programmesFrom) {
    this.book = book;
    this.look = look;
    this.programmesFrom = programmesFrom;
    this.inBook = book.all(Kind.PROPERTY);
    this.stations = new NamedStations(book.all(Kind.STATION), look.faults);
  }

  /**
   * Looks at a table.
   *
   * @param programmesFrom the day from which programmes hold that name none
   */
  public static Preview look(
      BookReading book, Table table, Reading reading, LocalDate programmesFrom) {
    TableLook look = new TableLook(table, reading);
    PropertyImport properties = new PropertyImport(book, look, programmesFrom);
    if (look.hasColumns("property")) {
      table.rows().forEach(properties::row);
    }
    String notes = properties.stations.notes(properties.added());
    return look.preview(
        Arrivals.of(properties.sheets), notes.isEmpty() ? List.of() : List.of(notes));
  }

  private List<Property> added() {
    return sheets.stream()
        .map(NewSheet::content)
        .filter(Property.class::isInstance)
        .map(Property.class::cast)
        .toList();
  }

  private void row(Table.Row row) {
    String name = look.faults.text(row, PropertyColumns.PROPERTY);
    Place place = name.isEmpty() ? nameless(row) : place(row, Address.of(name));
    RowDocument lawn = RowDocument.of(PropertyColumns.LAWN, row, look.faults);
    RowDocument programme = RowDocument.of(PropertyColumns.PROGRAMME, row, look.faults);
    if (!lawn.isEmpty() || !programme.isEmpty()) {
      lawn(row, place, lawn, programme);
    }
  }

  private @Nullable Place nameless(Table.Row row) {
    look.faults.add(row, PropertyColumns.PROPERTY, "the property is missing; give its name.");
    RowDocument document = RowDocument.of(PropertyColumns.PROPERTY, row, look.faults);
    document.put("name", NOBODY);
    document.put("address", NOBODY);
    // Another row may tell what this one leaves out.
    document.check(Kind.PROPERTY::read);
    return null;
  }

  /** The property of a row; what is wrong with it is told of the first row that names it. */
  private @Nullable Place place(Table.Row row, String address) {
    Place before = places.get(address);
    if (before == null && faultyPlaces.contains(address)) {
      RowDocument.of(PropertyColumns.PROPERTY, row, look.faults);
      return null;
    }
    Place place = before == null ? firstSeen(row, address) : seenAgain(row, before);
    if (place == null) {
      faultyPlaces.add(address);
    } else {
      places.put(address, place);
    }
    return place;
  }

  private @Nullable Place firstSeen(Table.Row row, String address) {
    RowDocument document = RowDocument.of(PropertyColumns.PROPERTY, row, look.faults);
    document.put("address", address);
    stations.named(row, document);
    Optional<Sheet<Property>> known = known(row, address);
    if (known.isPresent()) {
      return inBook(row, known.get(), document);
    }
    Property told = document.read(Kind.PROPERTY::read);
    if (told == null) {
      return null;
    }
    Property property = stations.withTheOnlyOne(row, told);
    stations.check(row, property, look.remarks);
    String id = Arrivals.idOf("property " + address);
    if (taken(row, id)) {
      return null;
    }
    sheets.add(new NewSheet<>(Kind.PROPERTY, id, property, words(property)));
    return new Place(id, property, row, document.json());
  }

  private String words(Property property) {
    return "Property %s, %s".formatted(property.name(), stations.words(property));
  }

  /** The property of this name in the book, whatever its address; else the one at its address. */
  private Optional<Sheet<Property>> known(Table.Row row, String address) {
    String name = look.faults.text(row, PropertyColumns.PROPERTY);
    return inBook.stream()
        .filter(property -> Names.areSame(property.content().name(), name))
        .findFirst()
        .or(() -> book.at(Kind.PROPERTY, address));
  }

  private @Nullable Place inBook(Table.Row row, Sheet<Property> known, RowDocument document) {
    if (known.withdrawn()) {
      look.faults.add(
          row,
          PropertyColumns.PROPERTY,
          "a property of this name was withdrawn from the book; restore it or take another name.");
      return null;
    }
    Differences.between(document.json(), Kind.PROPERTY.write(known.content()))
        .forEach(difference -> conflict(row, PropertyColumns.PROPERTY, difference));
    look.alreadyThere++;
    return new Place(known.id(), known.content(), row, null);
  }

  private @Nullable Place seenAgain(Table.Row row, Place place) {
    RowDocument document = RowDocument.of(PropertyColumns.PROPERTY, row, look.faults);
    stations.named(row, document);
    String before = Kind.PROPERTY.write(place.property());
    for (Differences.Difference difference : Differences.between(document.json(), before)) {
      Optional<Column> column = column(PropertyColumns.PROPERTY, difference.path());
      if (column.isPresent() && place.said() != null) {
        look.faults.add(
            row,
            column.get(),
            "%s says %s of this property; say the same, or empty this cell."
                .formatted(look.table.place(place.row()), words(difference, column.get())));
      }
    }
    return place;
  }

  private void lawn(Table.Row row, @Nullable Place place, RowDocument lawn, RowDocument programme) {
    String name = look.faults.text(row, PropertyColumns.LAWN);
    if (name.isEmpty()) {
      look.faults.add(row, PropertyColumns.LAWN, "the lawn has no name; give it one.");
      lawn.put("name", NOBODY);
      ImportedLawn.read(NO_PROPERTY, NOBODY, lawn, programme, programmesFrom);
      return;
    }
    String propertyName = look.faults.text(row, PropertyColumns.PROPERTY);
    String address = Address.of(propertyName, name);
    Table.Row before = rowOfLawn.putIfAbsent(address, row);
    if (before != null) {
      look.faults.add(
          row,
          PropertyColumns.LAWN,
          "this lawn stands in %s too; keep one of them.".formatted(look.table.place(before)));
      ImportedLawn.read(NO_PROPERTY, NOBODY, lawn, programme, programmesFrom);
      return;
    }
    Optional<Sheet<LawnSheet>> known = place == null ? Optional.empty() : known(place, name);
    if (known.isPresent()) {
      Differences.between(lawn.json(), Kind.LAWN.write(known.get().content()))
          .forEach(difference -> conflict(row, PropertyColumns.LAWN, difference));
      look.alreadyThere++;
      return;
    }
    newLawn(row, place, lawn, programme, address);
  }

  private Optional<Sheet<LawnSheet>> known(Place place, String name) {
    return book.ofProperty(Kind.LAWN, place.id()).stream()
        .filter(lawn -> Names.areSame(lawn.content().name(), name))
        .findFirst();
  }

  private void newLawn(
      Table.Row row,
      @Nullable Place place,
      RowDocument lawn,
      RowDocument programme,
      String address) {
    String propertyId = place == null ? NO_PROPERTY : place.id();
    boolean programmeTold = !programme.isEmpty();
    var parts = ImportedLawn.read(propertyId, address, lawn, programme, programmesFrom);
    String id = parts.id();
    LawnSheet sheet = parts.lawn();
    ProgrammeSheet yearly = parts.programme();
    if (place == null || sheet == null || (programmeTold && yearly == null) || taken(row, id)) {
      return;
    }
    if (book.at(Kind.LAWN, address).isPresent()) {
      look.faults.add(
          row,
          PropertyColumns.LAWN,
          "the address %s is taken in the book; give the lawn another name."
              .formatted(Faults.quoted(address)));
      return;
    }
    // The parts may each be right and yet not go together; the model's own reader says so.
    lawn.read(text -> LawnFile.read(LawnDocument.compose(place.property(), null, sheet, yearly)));
    sheets.add(
        new NewSheet<>(
            Kind.LAWN,
            id,
            sheet,
            "Lawn %s of %s, %s".formatted(sheet.name(), place.property().name(), sheet.grasses())));
    if (yearly != null) {
      sheets.add(
          new NewSheet<>(
              Kind.PROGRAMME,
              Arrivals.idOf("programme " + id),
              yearly,
              "Programme of %s from %s on".formatted(sheet.name(), Dates.words(yearly.from()))));
    }
  }

  private boolean taken(Table.Row row, String id) {
    if (book.find(id).isEmpty()) {
      return false;
    }
    look.faults.add(
        row,
        "it was imported before and was renamed or withdrawn since; change it on its page instead.");
    return true;
  }

  private void conflict(Table.Row row, String document, Differences.Difference difference) {
    column(document, difference.path())
        .ifPresent(
            column ->
                look.conflicts.add(
                    row,
                    column,
                    "the book has %s. The book stays as it is."
                        .formatted(words(difference, column))));
  }

  /** What stands elsewhere, in the unit in which the table has it. */
  private String words(Differences.Difference difference, Column column) {
    return difference.words(column, look.reading.unitsOf(column.name()));
  }

  private Optional<Column> column(String document, String path) {
    return PropertyColumns.ALL.stream()
        .filter(column -> column.document().equals(document) && column.path().equals(path))
        .findFirst();
  }
}
