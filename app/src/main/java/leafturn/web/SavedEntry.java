package leafturn.web;

import leafturn.records.Choice;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.DayWords;

/**
 * An entry that is in the book, in words.
 *
 * @param words what was done
 * @param day when
 * @param lawn where
 */
public record SavedEntry(String words, String day, LoggedLawn lawn) {
  static SavedEntry of(LogSheet entry, LoggedLawn lawn) {
    return new SavedEntry(words(entry), DayWords.day(entry.day()), lawn);
  }

  private static String words(LogSheet entry) {
    String what = Choice.word(entry.what());
    String word = Character.toUpperCase(what.charAt(0)) + what.substring(1);
    if (entry.done() instanceof Done.Mown mown) {
      double share = mown.returnedShare();
      return word + (share >= 1 ? ", returned" : share <= 0 ? ", collected" : ", part returned");
    }
    return word;
  }
}
