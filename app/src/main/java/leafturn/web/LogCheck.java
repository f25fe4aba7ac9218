package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogFit;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import leafturn.reports.DayWords;
import leafturn.reports.LogEntryWords;

/** Checks an entry of a log against today and against what else its lawn's log has of that day. */
final class LogCheck {
  private final BookReading reading;
  private final LocalDate today;
  private final Units units;

  /**
   * @param today the day it is at the lawn
   * @param units of whoever enters it
   */
  LogCheck(BookReading reading, LocalDate today, Units units) {
    this.reading = reading;
    this.today = today;
    this.units = units;
  }

  /**
   * Checks what is about to be written. An entry that did not fit its day before may be corrected
   * step by step: it is not held up by what else is still wrong there.
   *
   * @param id of its sheet, which may be in the book already
   * @throws InputException with every fault
   */
  void check(String id, LogSheet entry) {
    List<Fault> faults = new ArrayList<>();
    if (entry.day().isAfter(today)) {
      faults.add(fault("day", notYet(entry.day(), today)));
    }
    if (entry.done() instanceof Done.Observed seen
        && seen.things().containsAll(List.of(Sight.WET, Sight.DRY_LEAVES))) {
      faults.add(
          fault(
              "things",
              "leaves are wet or dry, not both at once: keep one, or make an entry of each with"
                  + " its time."));
    }
    List<LogSheet> others = others(id, entry);
    Optional<LogSheet> before = reading.find(Kind.LOG, id).map(Sheet::content);
    if (before.flatMap(old -> LogFit.contradicted(old, others)).isEmpty()) {
      LogFit.contradicted(entry, others).ifPresent(other -> faults.add(besides(entry, other)));
    }
    if (!faults.isEmpty()) {
      throw InputException.of(faults);
    }
  }

  /**
   * Checks an entry that was withdrawn and is to count again.
   *
   * @param id of its sheet
   * @throws InputException when it cannot stand beside another one of its day
   */
  void restored(String id, LogSheet entry) {
    Optional<LogSheet> other = LogFit.contradicted(entry, others(id, entry));
    if (other.isPresent()) {
      throw new InputException(
          "This entry stays withdrawn: the log has this for the same day: %s. Both cannot be, whichever came first: correct or withdraw that entry first."
              .formatted(LogEntryWords.line(other.get(), units)));
    }
  }

  /** The other entries of its lawn that count. */
  private List<LogSheet> others(String id, LogSheet entry) {
    return reading.ofLawn(Kind.LOG, entry.lawn()).stream()
        .filter(sheet -> !sheet.id().equals(id))
        .map(Sheet::content)
        .toList();
  }

  /** That a day of an entry is one to come. */
  static String notYet(LocalDate day, LocalDate today) {
    return notYet(day, today, "lawn");
  }

  /** As {@link #notYet(LocalDate, LocalDate)}, of an entry that belongs to a place of this kind. */
  static String notYet(LocalDate day, LocalDate today, String place) {
    return "%s has not come yet: at this %s it is %s. Give the day it was done."
        .formatted(DayWords.dayAndYear(day), place, DayWords.dayAndYear(today));
  }

  private Fault besides(LogSheet entry, LogSheet other) {
    boolean measured = entry.done() instanceof Done.Mown mown && mown.heightBeforeMm() != null;
    return fault(
        measured ? "heightBeforeMm" : "heightAfterMm",
        ("the log has this for the same day: %s. Both cannot be, whichever came first: give the"
                + " height the grass stood at, or correct that entry first.")
            .formatted(LogEntryWords.line(other, units)));
  }

  private static Fault fault(String field, String sentence) {
    return new Fault(field, sentence, sentence);
  }
}
