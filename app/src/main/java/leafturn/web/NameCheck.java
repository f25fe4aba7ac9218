package leafturn.web;

import java.util.List;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Names;
import leafturn.records.sheet.Property;

/**
 * Checks that two properties of a book can be told apart by their names. Whoever may name a
 * property sees all of them, so that nothing is told to those who should not know of it. What the
 * book held so already does not hold up a correction of something else.
 */
final class NameCheck {
  private NameCheck() {}

  /**
   * Checks a property that is about to be written.
   *
   * @param id id of its sheet
   * @throws InputException with the fault
   */
  static void check(BookReading reading, String id, Property property) {
    boolean already =
        reading
            .find(Kind.PROPERTY, id)
            .filter(before -> Names.areSame(before.content().name(), property.name()))
            .isPresent();
    if (!already) {
      taken(reading, property.name(), id)
          .ifPresent(
              sentence -> {
                throw InputException.of(List.of(new Fault("name", sentence, "name: " + sentence)));
              });
    }
  }

  /**
   * That another property has a name, in a sentence; empty where none has.
   *
   * @param id id of the sheet that is to have it; empty for a new one
   */
  static Optional<String> taken(BookReading reading, String name, String id) {
    return reading.all(Kind.PROPERTY).stream()
        .filter(other -> !other.id().equals(id) && Names.areSame(other.content().name(), name))
        .map(Sheet::content)
        .findFirst()
        .map(
            first ->
                "the book has a property of this name already, %s with the address %s; give this one"
                        .formatted(Faults.quoted(first.name()), first.address())
                    + " a name of its own, or add its lawns to that one.");
  }
}
