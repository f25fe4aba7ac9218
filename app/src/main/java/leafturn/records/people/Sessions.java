package leafturn.records.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;

/** Who has signed in where. */
public final class Sessions {
  private static final int LONGEST_BROWSER = 200;
  private static final String COLUMNS =
      "select secret_hash, person, began_at, seen_at, address, browser from session ";

  private Sessions() {}

  /** Begins a session under a secret of its own, which is told only here. */
  public static String begin(BookWriting writing, String person, String address, String browser) {
    prune(writing);
    String secret = Secret.fresh();
    writing
        .handle()
        .createUpdate(
            "insert into session (secret_hash, person, began_at, seen_at, address, browser)"
                + " values (:hash, :person, :now, :now, :address, :browser)")
        .bind("hash", Secret.hash(secret))
        .bind("person", person)
        .bind("now", writing.now().atOffset(ZoneOffset.UTC))
        .bind("address", address)
        .bind("browser", shortened(browser))
        .execute();
    return secret;
  }

  /** The session a secret stands for, as long as it holds. */
  public static Optional<Session> find(BookReading reading, String secret, Instant now) {
    return reading
        .handle()
        .createQuery(COLUMNS + "where secret_hash = :hash")
        .bind("hash", Secret.hash(secret))
        .map((row, context) -> session(row))
        .findOne()
        .filter(session -> session.holds(now));
  }

  /** A person's sessions that hold, the latest used first. */
  public static List<Session> of(BookReading reading, String person, Instant now) {
    return reading
        .handle()
        .createQuery(COLUMNS + "where person = :person order by seen_at desc, began_at desc")
        .bind("person", person)
        .map((row, context) -> session(row))
        .list()
        .stream()
        .filter(session -> session.holds(now))
        .toList();
  }

  /** Writes down that a session is used. */
  public static void seen(BookWriting writing, Session session) {
    writing
        .handle()
        .createUpdate("update session set seen_at = :now where secret_hash = :hash")
        .bind("now", writing.now().atOffset(ZoneOffset.UTC))
        .bind("hash", session.secretHash())
        .execute();
  }

  /** Ends one session. */
  public static void end(BookWriting writing, String secretHash) {
    writing.handle().execute("delete from session where secret_hash = ?", secretHash);
  }

  /** Ends all sessions of a person. */
  public static void endAll(BookWriting writing, String person) {
    writing.handle().execute("delete from session where person = ?", person);
  }

  private static void prune(BookWriting writing) {
    writing
        .handle()
        .createUpdate("delete from session where seen_at < :idle or began_at < :oldest")
        .bind("idle", writing.now().minus(Session.IDLE).atOffset(ZoneOffset.UTC))
        .bind("oldest", writing.now().minus(Session.LONGEST).atOffset(ZoneOffset.UTC))
        .execute();
  }

  private static String shortened(String browser) {
    String line = browser.replaceAll("\\p{Cntrl}", " ").strip();
    return line.substring(0, Math.min(line.length(), LONGEST_BROWSER));
  }

  private static Session session(ResultSet row) throws SQLException {
    return new Session(
        row.getString("secret_hash"),
        row.getString("person"),
        row.getObject("began_at", OffsetDateTime.class).toInstant(),
        row.getObject("seen_at", OffsetDateTime.class).toInstant(),
        row.getString("address"),
        row.getString("browser"));
  }
}
