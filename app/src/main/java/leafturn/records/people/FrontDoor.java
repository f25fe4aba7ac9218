package leafturn.records.people;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import leafturn.records.book.Book;
import leafturn.records.people.SignIns.Outcome;
import org.jspecify.annotations.Nullable;

/** Where people come in with name and password; one at a time, so that guesses cannot race. */
public final class FrontDoor {
  private static final Duration ONCE_IN = Duration.ofMinutes(1);

  private final Book book;
  private final InstantSource clock;

  /** What came of knocking. */
  public sealed interface Answer {
    /**
     * They are in.
     *
     * @param secret what their browser is known by from now on
     */
    record In(Person person, String secret) implements Answer {}

    /** The name or the password is wrong; which, nobody is told. */
    record Wrong() implements Answer {}

    /** There were too many failures. */
    record Paused(Instant until) implements Answer {}
  }

  public FrontDoor(Book book, InstantSource clock) {
    this.book = book;
    this.clock = clock;
  }

  /**
   * Lets somebody in, or not.
   *
   * @param address network address they come from
   * @param browser what their browser calls itself
   */
  public synchronized Answer knock(String name, String password, String address, String browser) {
    Instant now = clock.instant();
    Optional<Instant> paused =
        book.read(reading -> SignIns.pausedUntil(reading, name, address, now));
    if (paused.isPresent()) {
      notePaused(name, address, now);
      return new Answer.Paused(paused.get());
    }
    Optional<Person> person =
        book.read(reading -> People.named(reading, name).filter(known -> !known.withdrawn()));
    Optional<String> kept =
        person.flatMap(known -> book.read(reading -> People.passwordHash(reading, known.id())));
    if (!Passwords.match(password, kept)) {
      note(name, person.orElse(null), address, Outcome.WRONG);
      return new Answer.Wrong();
    }
    Person known = person.orElseThrow();
    return new Answer.In(
        known,
        book.write(
            known.name(),
            writing -> {
              SignIns.note(writing, name, known, address, Outcome.CAME_IN);
              return Sessions.begin(writing, known.id(), address, browser);
            }));
  }

  /**
   * Whether somebody who is in knows their password; failures count as those of knocking do.
   *
   * @param address network address they come from
   */
  public synchronized boolean confirms(Person person, String password, String address) {
    Instant now = clock.instant();
    boolean paused =
        book.<Boolean>read(
            reading -> SignIns.pausedUntil(reading, person.name(), address, now).isPresent());
    if (paused) {
      return false;
    }
    Optional<String> kept = book.read(reading -> People.passwordHash(reading, person.id()));
    boolean right = Passwords.match(password, kept);
    if (!right) {
      note(person.name(), person, address, Outcome.WRONG);
    }
    return right;
  }

  /** Writes down a try during a pause, once a minute: guesses must not fill the disk. */
  private void notePaused(String name, String address, Instant now) {
    Instant since = now.minus(ONCE_IN);
    boolean noted =
        book.<Boolean>read(reading -> SignIns.pauseNoted(reading, name, address, since));
    if (!noted) {
      note(
          name,
          book.read(reading -> People.named(reading, name)).orElse(null),
          address,
          Outcome.PAUSED);
    }
  }

  private void note(String name, @Nullable Person person, String address, Outcome outcome) {
    book.write(
        "Leafturn",
        writing -> {
          SignIns.note(writing, name, person, address, outcome);
          return true;
        });
  }
}
