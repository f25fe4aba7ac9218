package leafturn.web;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogFit;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.DayWords;
import leafturn.reports.LogEntryWords;
import leafturn.reports.UnitWords;
import org.jspecify.annotations.Nullable;

/**
 * An entry that is in the book, in words.
 *
 * @param id of its sheet
 * @param words what was done
 * @param day when
 * @param lawn where
 * @param doubt what may be a slip in it, in sentences; may be empty
 */
public record SavedEntry(String id, String words, String day, LoggedLawn lawn, String doubt) {
  /**
   * Cut at less than half the usual height, or at more than twice of it, is worth a look; common
   * practice, no source.
   */
  private static final double FAR = 2;

  static SavedEntry of(BookReading reading, Sheet<LogSheet> sheet, LoggedLawn lawn, Units units) {
    LogSheet entry = sheet.content();
    String doubt =
        sheet.withdrawn()
            ? ""
            : Stream.of(
                    farOff(entry, lawn.cutHeightMm(), units),
                    twice(reading, sheet, units),
                    longAgo(reading, sheet, lawn.today()))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    return new SavedEntry(
        sheet.id(), LogEntryWords.headline(entry, units), day(entry.day(), lawn), lawn, doubt);
  }

  /** The day, with its year where that is not the present one at the lawn. */
  private static String day(LocalDate day, LoggedLawn lawn) {
    String words = DayWords.day(day);
    return day.getYear() == lawn.today().getYear() ? words : words + " " + day.getYear();
  }

  /**
   * That another entry of its day may tell of the same work, in a sentence; empty where none does.
   */
  static String twice(BookReading reading, Sheet<LogSheet> sheet, Units units) {
    LogSheet entry = sheet.content();
    List<LogSheet> others =
        reading.ofLawnSince(Kind.LOG, entry.lawn(), entry.day()).stream()
            .filter(other -> !other.id().equals(sheet.id()))
            .map(Sheet::content)
            .toList();
    return LogFit.perhapsTheSame(entry, others)
        .map(
            other ->
                "The log has this for the same day too: %s. Both count; withdraw one of them if it was done only once."
                    .formatted(LogEntryWords.line(other, units)))
        .orElse("");
  }

  /** The year is easily mistyped, and from its first entry on the log keeps a lawn alone. */
  private static String longAgo(BookReading reading, Sheet<LogSheet> sheet, LocalDate today) {
    LocalDate day = sheet.content().day();
    LocalDate earliest = day.minusYears(1);
    LocalDate latest = day.plusYears(1);
    boolean alone =
        latest.isBefore(today)
            && reading.ofLawnSince(Kind.LOG, sheet.content().lawn(), earliest).stream()
                .filter(other -> !other.id().equals(sheet.id()))
                .allMatch(other -> other.content().day().isAfter(latest));
    return alone
        ? "%s lies more than a year from today and from every other entry of this lawn; look whether the year is right."
            .formatted(Dates.words(day))
        : "";
  }

  private static String farOff(LogSheet entry, @Nullable Double usualMm, Units units) {
    Double cutMm = entry.done() instanceof Done.Mown mown ? mown.heightAfterMm() : null;
    if (usualMm == null || cutMm == null || cutMm * FAR >= usualMm && cutMm <= usualMm * FAR) {
      return "";
    }
    UnitWords words = new UnitWords(units);
    return "It says cut to %s, far from the %s at which this lawn is kept; look whether it is right."
        .formatted(words.height(cutMm), words.height(usualMm));
  }
}
