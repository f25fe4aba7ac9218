package leafturn.records.archive;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import org.jspecify.annotations.Nullable;

/**
 * A person as a line of an archive: what others may know of them, and no password.
 *
 * @param id UUID in lower case
 * @param name what they are called
 * @param role what they may do, by its word
 * @param units in which they read and write, by its word
 * @param withdrawn true when they may no longer open the book
 * @param version rises with each change
 * @param writtenAt when they were changed last
 * @param writtenBy who did it
 * @param shares ids of the properties shared with them
 */
record PersonLine(
    String id,
    String name,
    String role,
    String units,
    boolean withdrawn,
    int version,
    Instant writtenAt,
    String writtenBy,
    List<String> shares) {
  PersonLine {
    shares = List.copyOf(shares);
  }

  /** All people of a book by their ids. */
  static List<PersonLine> all(BookReading book) {
    return book
        .handle()
        .createQuery(
            "select id, name, role, units, withdrawn, version, written_at, written_by from person"
                + " order by id")
        .map((row, context) -> row(row))
        .list()
        .stream()
        .map(person -> person.sharing(Shares.of(book, person.id())))
        .toList();
  }

  /** The same without some of the properties shared with them. */
  PersonLine without(Predicate<String> property) {
    return sharing(shares.stream().filter(property.negate()).toList());
  }

  private static PersonLine row(ResultSet row) throws SQLException {
    return new PersonLine(
        row.getString("id"),
        row.getString("name"),
        row.getString("role"),
        row.getString("units"),
        row.getBoolean("withdrawn"),
        row.getInt("version"),
        row.getObject("written_at", OffsetDateTime.class).toInstant(),
        row.getString("written_by"),
        List.of());
  }

  private PersonLine sharing(Iterable<String> properties) {
    TreeSet<String> sorted = new TreeSet<>();
    properties.forEach(sorted::add);
    return new PersonLine(
        id, name, role, units, withdrawn, version, writtenAt, writtenBy, new ArrayList<>(sorted));
  }

  /** The line, without a line end. */
  String write() {
    ObjectNode line = new ObjectMapper().createObjectNode();
    line.put("id", id).put("name", name).put("role", role).put("units", units);
    line.put("withdrawn", withdrawn).put("version", version);
    line.put("writtenAt", writtenAt.toString()).put("writtenBy", writtenBy);
    ArrayNode list = line.putArray("shares");
    shares.forEach(list::add);
    return line.toString();
  }

  /**
   * Hands over every readable person of an archive.
   *
   * @return the faults of the others, to which more may be added by the line's number
   */
  static Faults forEach(ZipReading archive, BiConsumer<PersonLine, Tell> use) {
    Faults faults = new Faults(archive.place(Members.PEOPLE));
    try (ZipReading.Lines lines = archive.lines(Members.PEOPLE)) {
      for (String text = lines.next(); text != null; text = lines.next()) {
        long number = lines.number();
        PersonLine person = read(text, number, faults);
        if (person != null) {
          use.accept(person, (field, sentence) -> faults.add(number, field, sentence));
        }
      }
    }
    return faults;
  }

  /** Tells a fault of a line's field. */
  @FunctionalInterface
  interface Tell {
    void fault(String field, String sentence);
  }

  /** Reads a line; null when it has faults, which are then told with its number. */
  private static @Nullable PersonLine read(String text, long number, Faults faults) {
    Faults ofLine = new Faults("");
    try {
      return read(JsonObject.root(new SourceText("it", text), ofLine));
    } catch (InputException e) {
      e.faultsByField().forEach(fault -> faults.add(number, fault.field(), fault.sentence()));
      return null;
    }
  }

  private static PersonLine read(JsonObject json) {
    String id = json.requiredId("id", "the person");
    String name = json.requiredText("name", Person.LONGEST_NAME, "what they are called");
    Role role = Choice.required(json, "role", Role.class);
    Units units = Choice.required(json, "units", Units.class);
    Boolean withdrawn = json.flag("withdrawn");
    Integer version = json.wholeNumber("version", 1, Integer.MAX_VALUE, "");
    Instant writtenAt = Times.read(json, "writtenAt");
    String writtenBy = json.requiredText("writtenBy", Person.LONGEST_NAME, "who wrote it");
    List<String> shares = json.list("shares").ids("a property");
    json.end();
    return new PersonLine(
        id,
        name,
        role.word(),
        units.name().toLowerCase(Locale.ROOT),
        withdrawn != null && withdrawn,
        version == null ? 1 : version,
        writtenAt,
        writtenBy,
        shares);
  }

  /** Puts the person into a book that has nobody of their id or name. */
  void put(BookWriting book) {
    book.handle()
        .createUpdate(
            "insert into person (id, name, name_key, role, units, withdrawn, version, written_at,"
                + " written_by) values (:id, :name, :key, :role, :units, :withdrawn, :version,"
                + " :at, :by)")
        .bind("id", id)
        .bind("name", name)
        .bind("key", Person.key(name))
        .bind("role", role)
        .bind("units", units)
        .bind("withdrawn", withdrawn)
        .bind("version", version)
        .bind("at", writtenAt.atOffset(ZoneOffset.UTC))
        .bind("by", writtenBy)
        .execute();
    shares.forEach(
        property ->
            book.handle()
                .execute("insert into share (person, property) values (?, ?)", id, property));
  }
}
