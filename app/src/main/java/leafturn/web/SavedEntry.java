package leafturn.web;

import leafturn.quantity.Units;
import leafturn.records.sheet.Done;
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
 * @param doubt what may be a slip in it, a sentence; may be empty
 */
public record SavedEntry(String id, String words, String day, LoggedLawn lawn, String doubt) {
  /**
   * Cut at less than half the usual height, or at more than twice of it, is worth a look; common
   * practice, no source.
   */
  private static final double FAR = 2;

  static SavedEntry of(String id, LogSheet entry, LoggedLawn lawn, Units units) {
    return new SavedEntry(
        id,
        LogEntryWords.headline(entry, units),
        DayWords.day(entry.day()),
        lawn,
        doubt(entry, lawn.cutHeightMm(), units));
  }

  private static String doubt(LogSheet entry, @Nullable Double usualMm, Units units) {
    Double cutMm = entry.done() instanceof Done.Mown mown ? mown.heightAfterMm() : null;
    if (usualMm == null || cutMm == null || cutMm * FAR >= usualMm && cutMm <= usualMm * FAR) {
      return "";
    }
    UnitWords words = new UnitWords(units);
    return "It says cut to %s, far from the %s at which this lawn is kept; look whether it is right."
        .formatted(words.height(cutMm), words.height(usualMm));
  }
}
