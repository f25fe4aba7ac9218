package leafturn.web;

import java.time.ZoneId;
import java.util.Optional;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.Property;
import org.jspecify.annotations.Nullable;

/**
 * Where a sheet belongs.
 *
 * @param property the property, or null for what belongs to the book as a whole
 * @param lawn the lawn, or null
 */
public record SheetPlace(@Nullable Sheet<Property> property, @Nullable Sheet<LawnSheet> lawn) {
  /** Of the book as a whole. */
  static final SheetPlace BOOK = new SheetPlace(null, null);

  /** Where a sheet belongs. */
  static SheetPlace of(BookReading reading, Sheet<?> sheet) {
    if (sheet.kind() == Kind.PROPERTY) {
      return new SheetPlace(reading.find(Kind.PROPERTY, sheet.id()).orElse(null), null);
    }
    String lawn = sheet.kind() == Kind.LAWN ? sheet.id() : sheet.content().lawn();
    return of(reading, sheet.content().property(), lawn);
  }

  /** A lawn with its property, or a property. */
  static SheetPlace of(BookReading reading, @Nullable String propertyId, @Nullable String lawnId) {
    Sheet<LawnSheet> lawn = found(reading, Kind.LAWN, lawnId).orElse(null);
    String id = lawn == null ? propertyId : lawn.content().property();
    return new SheetPlace(found(reading, Kind.PROPERTY, id).orElse(null), lawn);
  }

  private static <C extends Content> Optional<Sheet<C>> found(
      BookReading reading, Kind<C> kind, @Nullable String id) {
    return id == null ? Optional.empty() : reading.find(kind, id);
  }

  /** Whether a visitor sees what belongs there; the book as a whole is for those who see it all. */
  boolean mayRead(Visitor visitor) {
    return property == null ? visitor.mayReadAll() : visitor.mayRead(property.id());
  }

  /** Whether a visitor may change what belongs there. */
  boolean mayChange(Visitor visitor) {
    return property == null ? visitor.mayChangeAll() : visitor.mayChange(property.id());
  }

  /** The time zone of its days. */
  ZoneId zone(ZoneId otherwise) {
    return property == null ? otherwise : ZoneId.of(property.content().timeZone());
  }

  /** What it is, in a word. */
  String word() {
    return lawn != null ? "lawn" : property != null ? "property" : "book";
  }

  /** The page it is best seen from. */
  String page() {
    if (lawn != null) {
      return "/lawns/" + lawn.content().address();
    }
    return property == null ? "/lawns" : "/properties/" + property.content().address();
  }
}
