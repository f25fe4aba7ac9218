package leafturn.records.trial;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Today;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;

/**
 * Days of a trial are days where its first lawn lies, as those of the log are; of a trial without
 * lawns of the book they are the clock's.
 */
public final class TrialClock {
  private final BookReading book;
  private final Clock clock;

  /**
   * @param clock whose zone stands in where no lawn tells one
   */
  public TrialClock(BookReading book, Clock clock) {
    this.book = book;
    this.clock = clock;
  }

  /** The time zone in which the days of a trial are counted. */
  public ZoneId zone(TrialSheet trial) {
    return trial.lawns().stream()
        .findFirst()
        .flatMap(lawn -> book.find(Kind.LAWN, lawn))
        .flatMap(lawn -> book.find(Kind.PROPERTY, lawn.content().property()))
        .map(property -> ZoneId.of(property.content().timeZone()))
        .orElse(clock.getZone());
  }

  /** This moment, on the day that is today where a trial lies. */
  public Instant moment(TrialSheet trial) {
    return Today.of(BookTitle.of(book), clock).moment(zone(trial));
  }

  /** The day that is today where a trial lies. */
  public LocalDate today(TrialSheet trial) {
    return Today.of(BookTitle.of(book), clock).in(zone(trial));
  }
}
