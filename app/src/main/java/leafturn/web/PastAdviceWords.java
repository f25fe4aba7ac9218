package leafturn.web;

import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.round.PastAdvice;
import leafturn.records.round.PastAdvice.Outcome;
import leafturn.records.round.PastAdvice.Piece;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Range;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.ClippingsFate;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/** What became of advice, in words. */
final class PastAdviceWords {
  private PastAdviceWords() {}

  /** What became of one piece of advice, in a few words. */
  static String outcome(Outcome outcome) {
    return switch (outcome) {
      case FOLLOWED -> "Followed";
      case ANOTHER_DAY -> "Mown on another day";
      case CLIPPINGS_OTHERWISE -> "Mown, the clippings otherwise";
      case HEIGHT_OTHERWISE -> "Mown to another height";
      case NOT_MOWN -> "Not mown";
      case MOWN_ALL_THE_SAME -> "Mown all the same";
      case LEFT_ALONE -> "Left alone, as advised";
      case REPLACED -> "Newer advice came";
      case OPEN -> "Its days have not passed";
    };
  }

  /** How much of the advice to mow was followed, in a sentence; empty before any could be. */
  static String followed(PastAdvice past) {
    long tested = past.tested();
    if (tested == 0) {
      return "";
    }
    String others =
        List.of(
                part(past, Outcome.ANOTHER_DAY, "mown on another day"),
                part(past, Outcome.CLIPPINGS_OTHERWISE, "mown, the clippings otherwise"),
                part(past, Outcome.HEIGHT_OTHERWISE, "mown to another height"),
                part(past, Outcome.NOT_MOWN, "not mown"))
            .stream()
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(", "));
    return "Of %d put to the test, %d followed%s."
        .formatted(tested, past.with(Outcome.FOLLOWED), others.isEmpty() ? "" : "; " + others);
  }

  private static String part(PastAdvice past, Outcome outcome, String words) {
    long count = past.with(outcome);
    return count == 0 ? "" : count + " " + words;
  }

  /** "Mown on 28 May to 60 mm (76 mm advised), returned". */
  static String mown(Piece piece, LogSheet mown, Done.Mown cut, UnitWords units) {
    StringBuilder words = new StringBuilder("Mown on ").append(DayWords.date(mown.day()));
    Double leftMm = cut.heightAfterMm();
    if (leftMm != null) {
      words.append(" to ").append(units.height(leftMm));
    }
    AdviceSheet.Expected expected = piece.advice().expected();
    Double advisedMm = expected == null ? null : expected.cutToMm();
    if (piece.outcome() == Outcome.HEIGHT_OTHERWISE && advisedMm != null) {
      words.append(" (").append(units.height(advisedMm)).append(" advised)");
    }
    return words
        .append(", ")
        .append(ClippingsFate.words(cut.returnedShare(), units.units()))
        .toString();
  }

  /** How long the clippings were to be seen; none is seen for nought days. */
  static String inSight(Range days) {
    if (days.high() == 0) {
      return "Clippings not seen at all by forecast";
    }
    if (days.middle() == 0) {
      return "Clippings seen for at most %s by forecast".formatted(days(days.high()));
    }
    return "Clippings seen for %s by forecast"
        .formatted(days.low() == days.high() ? days(days.middle()) : plain(days) + " days");
  }

  private static String days(double days) {
    return QuantityWords.brief(days) + (days == 1 ? " day" : " days");
  }

  /** A range, or its one number: "25 (20 to 31)". */
  static String plain(Range range) {
    String middle = QuantityWords.brief(range.middle());
    return range.low() == range.high()
        ? middle
        : "%s (%s to %s)"
            .formatted(middle, QuantityWords.brief(range.low()), QuantityWords.brief(range.high()));
  }
}
