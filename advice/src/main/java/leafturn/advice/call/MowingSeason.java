package leafturn.advice.call;

import java.time.LocalDate;
import leafturn.model.lawn.Programme;

/** The days of the year on which a lawn is mown, by its programme. */
record MowingSeason(Programme.Mowing mowing) {

  boolean contains(LocalDate day) {
    int from = mowing.from().in(day.getYear());
    int to = mowing.to().in(day.getYear());
    int today = day.getDayOfYear();
    return from <= to ? today >= from && today <= to : today >= from || today <= to;
  }

  /** First day of the season that a day lies in or that was last before it. */
  LocalDate startBefore(LocalDate day) {
    LocalDate start = start(day.getYear());
    return start.isAfter(day) ? start(day.getYear() - 1) : start;
  }

  /** First day of the next season after a day. */
  LocalDate startAfter(LocalDate day) {
    LocalDate start = start(day.getYear());
    return start.isAfter(day) ? start : start(day.getYear() + 1);
  }

  /** Last day of the season that a day lies in. */
  LocalDate endAfter(LocalDate day) {
    LocalDate end = end(day.getYear());
    return end.isBefore(day) ? end(day.getYear() + 1) : end;
  }

  private LocalDate start(int year) {
    return LocalDate.ofYearDay(year, mowing.from().in(year));
  }

  private LocalDate end(int year) {
    return LocalDate.ofYearDay(year, mowing.to().in(year));
  }
}
