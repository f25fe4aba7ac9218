package leafturn.records.archive;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import org.jspecify.annotations.Nullable;

/**
 * What the book says of itself.
 *
 * @param adviser whose round it is
 * @param standing how things stand, in a sentence
 * @param fixedDay the day that the book takes for today, or null
 * @param createdAt when it was begun
 */
record BookRow(String adviser, String standing, @Nullable LocalDate fixedDay, Instant createdAt) {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_SENTENCE = 400;

  /** The row of a book, or null when it has none. */
  static @Nullable BookRow of(BookReading book) {
    return book.handle()
        .createQuery("select adviser, standing, fixed_day, created_at from book")
        .map((row, context) -> row(row))
        .findOne()
        .orElse(null);
  }

  private static BookRow row(ResultSet row) throws SQLException {
    return new BookRow(
        row.getString("adviser"),
        row.getString("standing"),
        row.getObject("fixed_day", LocalDate.class),
        row.getObject("created_at", OffsetDateTime.class).toInstant());
  }

  /** The document. */
  String write() {
    ObjectNode root = new ObjectMapper().createObjectNode();
    root.put("adviser", adviser).put("standing", standing);
    if (fixedDay != null) {
      root.put("fixedDay", fixedDay.toString());
    }
    root.put("createdAt", createdAt.toString());
    return Manifest.pretty(root);
  }

  /**
   * Reads the document.
   *
   * @throws InputException with every fault
   */
  static BookRow read(SourceText document) {
    JsonObject json = JsonObject.root(document, new Faults(document.name()));
    String adviser = text(json, "adviser", LONGEST_NAME);
    String standing = text(json, "standing", LONGEST_SENTENCE);
    LocalDate fixedDay = json.date("fixedDay");
    Instant createdAt = Times.read(json, "createdAt");
    json.end();
    return new BookRow(adviser, standing, fixedDay, createdAt);
  }

  /** Puts it in the place of what the book says of itself so far. */
  void put(BookWriting book) {
    book.handle().execute("delete from book");
    book.handle()
        .createUpdate(
            "insert into book (id, adviser, standing, fixed_day, created_at)"
                + " values (1, :adviser, :standing, :day, :at)")
        .bind("adviser", adviser)
        .bind("standing", standing)
        .bind("day", fixedDay)
        .bind("at", createdAt.atOffset(ZoneOffset.UTC))
        .execute();
  }

  private static String text(JsonObject json, String name, int mostCharacters) {
    var value = json.take(name);
    if (value == null || !(value.content() instanceof String text)) {
      json.fault(name, "give a text, which may be empty.");
      return "";
    }
    if (text.length() > mostCharacters) {
      json.fault(name, "it is longer than " + mostCharacters + " characters; shorten it.");
    }
    return text;
  }
}
