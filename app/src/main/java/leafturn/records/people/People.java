package leafturn.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;

/** The people a book knows. */
public final class People {
  private static final String COLUMNS =
      "select id, name, role, units, password, withdrawn, version from person ";

  private People() {}

  /** A person by id, withdrawn or not. */
  public static Optional<Person> find(BookReading reading, String id) {
    return reading
        .handle()
        .createQuery(COLUMNS + "where id = :id")
        .bind("id", id)
        .map((row, context) -> person(row))
        .findOne();
  }

  /** A person by name, whatever its case; withdrawn or not. */
  public static Optional<Person> named(BookReading reading, String name) {
    return reading
        .handle()
        .createQuery(COLUMNS + "where name_key = :key")
        .bind("key", Person.key(name))
        .map((row, context) -> person(row))
        .findOne();
  }

  /** Everybody by name, those who were withdrawn with them. */
  public static List<Person> all(BookReading reading) {
    return reading
        .handle()
        .createQuery(COLUMNS + "order by name_key")
        .map((row, context) -> person(row))
        .list();
  }

  /** True when somebody can sign in, so that everybody has to. */
  public static boolean haveAccounts(BookReading reading) {
    return reading
            .handle()
            .createQuery("select count(*) from person where password is not null and not withdrawn")
            .mapTo(Integer.class)
            .one()
        > 0;
  }

  /**
   * Somebody as a visitor; empty when they were withdrawn.
   *
   * @param open true when the site serves this machine alone and nobody has a password yet
   */
  public static Optional<Visitor> visitor(BookReading reading, String id, boolean open) {
    return find(reading, id)
        .filter(person -> !person.withdrawn())
        .map(
            person ->
                new Visitor(
                    person, open, person.role().needsShares() ? Shares.of(reading, id) : Set.of()));
  }

  /**
   * Adds a person without a password.
   *
   * @throws InputException when the name is taken or no name
   */
  public static Person add(BookWriting writing, String name, Role role, Units units) {
    String id = UUID.randomUUID().toString();
    String kept = checkedName(writing, name, id);
    writing
        .handle()
        .createUpdate(
            "insert into person (id, name, name_key, role, units, withdrawn, version, written_at,"
                + " written_by) values (:id, :name, :key, :role, :units, false, 1, :at, :by)")
        .bind("id", id)
        .bind("name", kept)
        .bind("key", Person.key(kept))
        .bind("role", role.word())
        .bind("units", word(units))
        .bind("at", writing.now().atOffset(ZoneOffset.UTC))
        .bind("by", writing.by())
        .execute();
    return new Person(id, kept, role, units, false, false, 1);
  }

  /**
   * Changes a person's name, role or units, or withdraws them.
   *
   * @param changed what is to be, with the version it was made from
   * @throws StalePersonException when they have another version by now
   * @throws InputException when the name is taken, or nobody would be left to look after people
   */
  public static Person revise(BookWriting writing, Person changed) {
    String name = checkedName(writing, changed.name(), changed.id());
    int done =
        writing
            .handle()
            .createUpdate(
                "update person set name = :name, name_key = :key, role = :role, units = :units,"
                    + " withdrawn = :withdrawn, version = version + 1, written_at = :at,"
                    + " written_by = :by where id = :id and version = :version")
            .bind("name", name)
            .bind("key", Person.key(name))
            .bind("role", changed.role().word())
            .bind("units", word(changed.units()))
            .bind("withdrawn", changed.withdrawn())
            .bind("at", writing.now().atOffset(ZoneOffset.UTC))
            .bind("by", writing.by())
            .bind("id", changed.id())
            .bind("version", changed.version())
            .execute();
    if (done != 1) {
      throw new StalePersonException(
          find(writing, changed.id())
              .orElseThrow(() -> new InputException("There is no such person.")));
    }
    checkThatAnOwnerIsLeft(writing);
    return find(writing, changed.id()).orElseThrow();
  }

  /** Sets the units in which a person reads and writes. */
  public static void setUnits(BookWriting writing, String id, Units units) {
    writing.handle().execute("update person set units = ? where id = ?", word(units), id);
  }

  /** The hash of a person's password, if they have one. */
  public static Optional<String> passwordHash(BookReading reading, String id) {
    return reading
        .handle()
        .createQuery("select password from person where id = :id and password is not null")
        .bind("id", id)
        .mapTo(String.class)
        .findOne();
  }

  /** Keeps the hash of a person's new password. */
  public static void setPasswordHash(BookWriting writing, String id, String hash) {
    writing
        .handle()
        .execute("update person set password = ?, version = version + 1 where id = ?", hash, id);
  }

  static String checkedName(BookWriting writing, String name, String id) {
    String kept = name.strip().replaceAll("\\s+", " ");
    if (kept.isEmpty() || kept.length() > Person.LONGEST_NAME) {
      throw fault("name", "give a name of 1 to %d characters.".formatted(Person.LONGEST_NAME));
    }
    if (kept.codePoints().anyMatch(Character::isISOControl)) {
      throw fault("name", "a name holds no control characters.");
    }
    if (named(writing, kept).filter(other -> !other.id().equals(id)).isPresent()) {
      throw fault("name", Faults.quoted(kept) + " is taken in this book; add something to it.");
    }
    return kept;
  }

  private static void checkThatAnOwnerIsLeft(BookWriting writing) {
    boolean accounts = haveAccounts(writing);
    boolean left =
        all(writing).stream()
            .anyMatch(
                person ->
                    person.role() == Role.OWNER
                        && !person.withdrawn()
                        && (person.hasPassword() || !accounts));
    if (!left) {
      throw fault("role", "the book needs an owner who can sign in; make somebody else one first.");
    }
  }

  private static InputException fault(String field, String sentence) {
    return InputException.of(List.of(new Faults.Fault(field, sentence, field + ": " + sentence)));
  }

  private static Person person(ResultSet row) throws SQLException {
    String role = row.getString("role");
    String units = row.getString("units");
    return new Person(
        row.getString("id"),
        row.getString("name"),
        Role.of(role).orElseThrow(() -> unknown(role)),
        Units.valueOf(units.toUpperCase(Locale.ROOT)),
        row.getString("password") != null,
        row.getBoolean("withdrawn"),
        row.getInt("version"));
  }

  private static String word(Units units) {
    return units.name().toLowerCase(Locale.ROOT);
  }

  private static IllegalStateException unknown(String word) {
    return new IllegalStateException("the book holds an unknown word for a person: " + word);
  }
}
