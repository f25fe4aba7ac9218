package leafturn.web;

import java.time.LocalDate;
import leafturn.advice.call.Visits;
import leafturn.records.Dates;
import leafturn.reports.DayWords;

/**
 * A day that somebody chose to have advice for.
 *
 * @param address of the lawn's page
 * @param today the day it is there
 * @param value as it was typed; empty as long as none is chosen
 * @param fault what is wrong with it; empty where nothing is
 */
public record ChosenDay(String address, LocalDate today, String value, String fault) {

  /** No day yet. */
  static ChosenDay none(String address, LocalDate today) {
    return new ChosenDay(address, today, "", "");
  }

  /** The day that was typed, with its fault. */
  static ChosenDay typed(String address, LocalDate today, String value) {
    LocalDate day = Dates.parse(value);
    LocalDate last = today.plusDays(Visits.LOOK_AHEAD_DAYS);
    String fault = "";
    if (day == null) {
      fault = Dates.fault(value);
    } else if (day.isAfter(last)) {
      fault =
          "%s is further than advice looks ahead; give a day up to %s."
              .formatted(Dates.words(day), Dates.words(last));
    }
    return new ChosenDay(address, today, value, fault);
  }

  ChosenDay faulted(String sentence) {
    return new ChosenDay(address, today, value, sentence);
  }

  public boolean faulty() {
    return !fault.isEmpty();
  }

  /** The last day that can be chosen. */
  public String last() {
    return today.plusDays(Visits.LOOK_AHEAD_DAYS).toString();
  }

  /** The day; today where it is none. */
  LocalDate day() {
    LocalDate day = Dates.parse(value);
    return day == null ? today : day;
  }

  public String heading() {
    return "Advice for " + DayWords.dayAndYear(day());
  }

  /** What the advice for the day means. */
  public String about() {
    return day().isAfter(today)
        ? "What to do if nobody can mow before this day, and somebody does on it; further cuts come on the usual days. The log counts up to today, %s; the weather until then is that of the possible seasons, along a forecast where there is one."
            .formatted(DayWords.day(today))
        : "As it would have been given then: by the log and the weather up to that day, its own weather in place of a forecast, and the facts, programme and rules that the book holds now. “Today” is that day.";
  }
}
