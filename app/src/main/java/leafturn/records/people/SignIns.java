package leafturn.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import org.jspecify.annotations.Nullable;

/** The record of who came in or tried to, and the pauses that follow from it. */
public final class SignIns {
  private static final Duration KEPT = Duration.ofDays(400);
  private static final Duration LOOKED_BACK = Duration.ofHours(24);
  private static final Duration SHORTEST_PAUSE = Duration.ofSeconds(15);
  private static final Duration LONGEST_PAUSE = Duration.ofMinutes(15);
  private static final int FREE_OF_A_NAME = 4;

  /** Failures since the name was last let in. */
  private static final String OF_NAME =
      "name_key = :value and number > coalesce((select max(number) from sign_in where name_key ="
          + " :value and outcome in ('CAME_IN', 'PASSWORD_RESET')), 0)";

  /** All failures: whoever has an account of their own could otherwise begin anew at will. */
  private static final String FROM_ADDRESS = "address = :value";

  private static final int FREE_OF_AN_ADDRESS = 19;

  /** What happened. */
  public enum Outcome {
    CAME_IN("signed in"),
    WRONG("wrong name or password"),
    PAUSED("tried during a pause, told once a minute"),
    WENT("signed out"),
    WENT_EVERYWHERE("signed out everywhere"),
    INVITATION_TAKEN("took up an invitation"),
    PASSWORD_CHANGED("changed the password"),
    PASSWORD_RESET("got a new password at the command line"),
    RIGHTS_CHANGED("role or shares were changed"),
    WITHDRAWN("account was withdrawn");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    /** How it is told. */
    public String words() {
      return words;
    }

    /** True for what others do to somebody. */
    boolean byOthers() {
      return this == RIGHTS_CHANGED || this == WITHDRAWN;
    }
  }

  /**
   * One line of the record.
   *
   * @param name who it was, or empty where nobody of that name is in the book
   * @param by who did it to them, or empty for what they did themselves or nobody noted
   */
  public record Entry(Instant at, String name, String address, Outcome outcome, String by) {
    /** What happened, and who did it. */
    public String words() {
      return by.isEmpty() ? outcome.words() : outcome.words() + " by " + by;
    }
  }

  private SignIns() {}

  /**
   * Writes down what happened to somebody the book knows or does not.
   *
   * @param name as it was typed; kept readable only when it is a person's name, since passwords get
   *     typed into the wrong field
   */
  public static void note(
      BookWriting writing, String name, @Nullable Person person, String address, Outcome outcome) {
    writing
        .handle()
        .createUpdate(
            "insert into sign_in (happened_at, name, name_key, person, address, outcome, done_by)"
                + " values (:now, :name, :key, :person, :address, :outcome, :by)")
        .bind("now", writing.now().atOffset(ZoneOffset.UTC))
        .bind("name", person == null ? "" : person.name())
        .bind("key", Secret.hash(Person.key(name)))
        .bind("person", person == null ? null : person.id())
        .bind("address", address)
        .bind("outcome", outcome.name())
        .bind("by", writing.by())
        .execute();
    writing
        .handle()
        .createUpdate("delete from sign_in where happened_at < :oldest")
        .bind("oldest", writing.now().minus(KEPT).atOffset(ZoneOffset.UTC))
        .execute();
  }

  /** True when a try during a pause, of this name or from this address, stands since a moment. */
  static boolean pauseNoted(BookReading reading, String name, String address, Instant since) {
    return reading
        .handle()
        .createQuery(
            "select count(*) from sign_in where (name_key = :key or address = :address)"
                + " and outcome = 'PAUSED' and happened_at > :since")
        .bind("key", Secret.hash(Person.key(name)))
        .bind("address", address)
        .bind("since", since.atOffset(ZoneOffset.UTC))
        .mapTo(Integer.class)
        .map(count -> count > 0)
        .one();
  }

  /** The latest entries, the last first. */
  public static List<Entry> latest(BookReading reading, int most) {
    return reading
        .handle()
        .createQuery(
            "select happened_at, name, address, outcome, done_by from sign_in order by number desc"
                + " fetch first "
                + most
                + " rows only")
        .map((row, context) -> entry(row))
        .list();
  }

  /**
   * Until when nobody may try this name, or anything from this address. The pause doubles with each
   * failure and is the same whether the book knows the name or not.
   */
  public static Optional<Instant> pausedUntil(
      BookReading reading, String name, String address, Instant now) {
    Instant since = now.minus(LOOKED_BACK);
    Instant ofName = end(reading, OF_NAME, Secret.hash(Person.key(name)), since, FREE_OF_A_NAME);
    Instant ofAddress = end(reading, FROM_ADDRESS, address, since, FREE_OF_AN_ADDRESS);
    Instant later = ofName.isAfter(ofAddress) ? ofName : ofAddress;
    return later.isAfter(now) ? Optional.of(later) : Optional.empty();
  }

  private static Instant end(
      BookReading reading, String condition, String value, Instant since, int free) {
    return reading
        .handle()
        .createQuery(
            "select count(*), max(happened_at) from sign_in"
                + " where outcome = 'WRONG' and happened_at > :since and "
                + condition)
        .bind("value", value)
        .bind("since", since.atOffset(ZoneOffset.UTC))
        .map((row, context) -> end(row, free))
        .one();
  }

  private static Instant end(ResultSet row, int free) throws SQLException {
    int failures = row.getInt(1);
    if (failures <= free) {
      return Instant.EPOCH;
    }
    return row.getObject(2, OffsetDateTime.class).toInstant().plus(pause(failures - free));
  }

  /** The pause after so many failures beyond the free ones. */
  static Duration pause(int failures) {
    long factor = 1L << Math.min(failures - 1, 20);
    Duration pause = SHORTEST_PAUSE.multipliedBy(factor);
    return pause.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : pause;
  }

  private static Entry entry(ResultSet row) throws SQLException {
    Outcome outcome = Outcome.valueOf(row.getString("outcome"));
    String by = row.getString("done_by");
    return new Entry(
        row.getObject("happened_at", OffsetDateTime.class).toInstant(),
        row.getString("name"),
        row.getString("address"),
        outcome,
        by == null || !outcome.byOthers() ? "" : by);
  }
}
