package leafturn.records.book;

import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * Which day it is: the book's own day where it has one, else that of the calendar where it is asked
 * for. Nothing that was done can be of a later day.
 *
 * @param fixedDay the day that is today in this book, or null where the calendar decides
 * @param now the moment
 */
public record Today(@Nullable LocalDate fixedDay, Instant now) {
  private static final ZoneOffset FURTHEST_AHEAD = ZoneOffset.ofHours(14);

  /** Today in a book of this title. */
  public static Today of(BookTitle title, InstantSource clock) {
    return new Today(title.fixedDay(), clock.instant());
  }

  /** The day of what was written at a moment: no later one than a book's own day. */
  public static LocalDate of(BookTitle title, Instant written, ZoneId zone) {
    LocalDate day = LocalDate.ofInstant(written, zone);
    LocalDate own = title.fixedDay();
    return own != null && day.isAfter(own) ? own : day;
  }

  /** This moment; in a book with a day of its own at the same time of that day. */
  public Instant moment(ZoneId zone) {
    return fixedDay == null
        ? now
        : fixedDay.atTime(now.atZone(zone).toLocalTime()).atZone(zone).toInstant();
  }

  /**
   * The latest day that has begun anywhere on earth, whatever day a book has of its own: on no
   * later one was any weather measured.
   */
  public static LocalDate begunAnywhere(InstantSource clock) {
    return LocalDate.ofInstant(clock.instant(), FURTHEST_AHEAD);
  }

  /** The day it is in a time zone. */
  public LocalDate in(ZoneId zone) {
    return fixedDay == null ? LocalDate.ofInstant(now, zone) : fixedDay;
  }
}
