package leafturn.web;

import leafturn.quantity.Units;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.DayWords;
import leafturn.reports.LogEntryWords;

/**
 * An entry that is in the book, in words.
 *
 * @param words what was done
 * @param day when
 * @param lawn where
 */
public record SavedEntry(String words, String day, LoggedLawn lawn) {
  static SavedEntry of(LogSheet entry, LoggedLawn lawn, Units units) {
    return new SavedEntry(LogEntryWords.headline(entry, units), DayWords.day(entry.day()), lawn);
  }
}
