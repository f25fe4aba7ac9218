package leafturn.records.people;

import java.time.ZoneOffset;
import java.util.Optional;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;

/** Secret addresses of people's calendars; each person has one at most. */
public final class Calendars {
  private Calendars() {}

  /** Gives a person a new secret address; an earlier one ends. The secret is told only here. */
  public static String renew(BookWriting writing, String person) {
    withdraw(writing, person);
    String secret = Secret.fresh();
    writing
        .handle()
        .createUpdate(
            "insert into calendar (secret_hash, person, made_at) values (:hash, :person, :at)")
        .bind("hash", Secret.hash(secret))
        .bind("person", person)
        .bind("at", writing.now().atOffset(ZoneOffset.UTC))
        .execute();
    return secret;
  }

  /** Ends a person's secret address, if they have one. */
  public static void withdraw(BookWriting writing, String person) {
    writing
        .handle()
        .createUpdate(
            "update calendar set withdrawn_at = :at where person = :person and withdrawn_at is"
                + " null")
        .bind("at", writing.now().atOffset(ZoneOffset.UTC))
        .bind("person", person)
        .execute();
  }

  /** Whether a person has a secret address that counts. */
  public static boolean has(BookReading reading, String person) {
    return reading
            .handle()
            .createQuery(
                "select count(*) from calendar where person = :person and withdrawn_at is null")
            .bind("person", person)
            .mapTo(Integer.class)
            .one()
        > 0;
  }

  /** Whose calendar a secret opens; empty for a wrong or withdrawn one. */
  public static Optional<Visitor> visitor(BookReading reading, String secret) {
    return reading
        .handle()
        .createQuery(
            "select person from calendar where secret_hash = :hash and withdrawn_at is null")
        .bind("hash", Secret.hash(secret))
        .mapTo(String.class)
        .findOne()
        .flatMap(person -> People.visitor(reading, person, false));
  }
}
