package leafturn.records.exchange;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.NearestName;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.Property;
import leafturn.records.table.Table;

/** The lawns of a book, as rows of a table name them. */
final class Lawns {
  /** Names that a sentence can tell. */
  private static final int MOST_NAMES = 20;

  private final List<Sheet<LawnSheet>> lawns;
  private final List<Sheet<Property>> properties;

  Lawns(BookReading book) {
    lawns = book.all(Kind.LAWN);
    properties = book.all(Kind.PROPERTY);
  }

  /** The lawn a row names by name or address; empty after a fault. */
  Optional<Sheet<LawnSheet>> of(Table.Row row, Findings faults) {
    String name = faults.text(row, LogColumns.LAWN);
    String property = faults.text(row, LogColumns.PROPERTY);
    List<Sheet<LawnSheet>> found =
        lawns.stream()
            .filter(lawn -> named(name, lawn.content().name(), lawn.content().address()))
            .filter(lawn -> property.isEmpty() || liesOn(lawn, property))
            .toList();
    if (found.size() == 1) {
      return Optional.of(found.get(0));
    }
    if (!property.isEmpty() && properties.stream().noneMatch(each -> named(property, each))) {
      faults.add(
          row,
          LogColumns.PROPERTY,
          "%s is no property in this book; %s"
              .formatted(Faults.quoted(property), NearestName.advice(property, propertyNames())));
    } else {
      faults.add(row, LogColumns.LAWN, fault(name, property, found));
    }
    return Optional.empty();
  }

  /** Lawn and property by their names; the id where it is not in the book. */
  String title(String id) {
    return lawns.stream()
        .filter(lawn -> lawn.id().equals(id))
        .map(lawn -> lawn.content().name() + ", " + propertyName(lawn))
        .findFirst()
        .orElse(id);
  }

  private String propertyName(Sheet<LawnSheet> lawn) {
    return properties.stream()
        .filter(property -> isOf(property, lawn))
        .map(property -> property.content().name())
        .findFirst()
        .orElse(lawn.content().address());
  }

  /** The day it is at a lawn; empty where it is not in the book, or no longer. */
  Optional<LocalDate> today(String id, Today today) {
    return lawns.stream()
        .filter(lawn -> lawn.id().equals(id))
        .flatMap(lawn -> properties.stream().filter(property -> isOf(property, lawn)))
        .map(property -> today.in(ZoneId.of(property.content().timeZone())))
        .findFirst();
  }

  private static boolean isOf(Sheet<Property> property, Sheet<LawnSheet> lawn) {
    return property.id().equals(lawn.content().property());
  }

  private String fault(String name, String property, List<Sheet<LawnSheet>> found) {
    if (name.isEmpty()) {
      return "the lawn is missing; give its name.";
    }
    if (found.isEmpty()) {
      String where = property.isEmpty() ? "" : " of " + Faults.quoted(property);
      return "%s is no lawn%s in this book; %s"
          .formatted(Faults.quoted(name), where, NearestName.advice(name, names(property)));
    }
    return "%d lawns are called %s; name the property too, or give the lawn's address (%s)."
        .formatted(
            found.size(),
            Faults.quoted(name),
            String.join(", ", found.stream().map(lawn -> lawn.content().address()).toList()));
  }

  /** Names of the lawns of a property, or of all where none is named. */
  private List<String> names(String property) {
    return lawns.stream()
        .filter(lawn -> property.isEmpty() || liesOn(lawn, property))
        .map(lawn -> lawn.content().name())
        .distinct()
        .limit(MOST_NAMES)
        .toList();
  }

  private List<String> propertyNames() {
    return properties.stream()
        .map(property -> property.content().name())
        .distinct()
        .limit(MOST_NAMES)
        .toList();
  }

  private boolean liesOn(Sheet<LawnSheet> lawn, String property) {
    return properties.stream()
        .filter(each -> isOf(each, lawn))
        .anyMatch(each -> named(property, each));
  }

  private static boolean named(String written, Sheet<Property> property) {
    return named(written, property.content().name(), property.content().address());
  }

  private static boolean named(String written, String name, String address) {
    String plain = written.toLowerCase(Locale.ROOT);
    return plain.equals(name.toLowerCase(Locale.ROOT)) || plain.equals(address);
  }
}
