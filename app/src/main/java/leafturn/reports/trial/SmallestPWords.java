package leafturn.reports.trial;

import java.util.List;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.Layout;
import leafturn.trials.power.SizeQuestion;

/** The smallest p that drawing lots anew could give a trial, in sentences. */
final class SmallestPWords {
  private static final double ROUNDING = 1e-9;

  private final SizeQuestion question;
  private final Layout layout;
  private final SizeNumbers numbers;

  SmallestPWords(SizeDocument document) {
    this.question = document.size();
    this.layout = question.design().layout();
    this.numbers = new SizeNumbers(document);
  }

  /**
   * The smallest p in a sentence; none where it is not known.
   *
   * @param units 0 where their number is not known
   */
  List<String> of(int units) {
    double smallest = units == 0 ? Double.NaN : question.smallestP(units);
    String p = question.isOneSided() ? "smallest one-sided p" : "smallest p";
    if (!Double.isNaN(smallest)) {
      return List.of(
          "The %s that drawing lots anew could give %s."
              .formatted(p, reached(units, SizeNumbers.number(smallest))));
    }
    if (layout == Layout.LISTED) {
      return List.of(
          "The %s of the exact test is that of the list: one divided by the number of its layouts%s."
              .formatted(
                  p,
                  question.isOneSided()
                      ? ""
                      : ", or twice that where the mirror image of the drawn one is on it"));
    }
    return List.of();
  }

  private String reached(int units, String smallest) {
    String count = numbers.count(units);
    return switch (layout) {
      case PAIRED_STRIPS ->
          "with %s is %s: one coin lays two pairs of a lawn, as ABBA or BAAB, which makes %d coins"
              .formatted(count, smallest, question.design().coins(units));
      case SPLIT_YARD -> {
        double balanced = question.smallestPBalanced(units);
        yield "with %s is %s where a coin draws each yard's side, and %s"
            .formatted(
                count,
                smallest,
                Double.isNaN(balanced)
                    ? "an odd number cannot be balanced"
                    : SizeNumbers.number(balanced) + " where as many are returned left as right");
      }
      default -> {
        boolean all = layout == Layout.INDEPENDENT_GROUPS && !question.isOneSided();
        yield "%s with %s is %s"
            .formatted(
                all ? "for all arms at once" : "for one comparison of two arms", count, smallest);
      }
    };
  }

  /** That the layouts are too few to show a difference, in a sentence. */
  List<String> warnings(int units) {
    if (layout == Layout.SPLIT_YARD && units > 0 && units < fewestBalanced()) {
      return List.of(tooFewYards(units));
    }
    return cannotConfirm(units)
        ? List.of(
            "%s cannot reach p below %s by drawing lots anew, however large the difference%s."
                .formatted(
                    SizeNumbers.capital(numbers.count(units)),
                    SizeNumbers.number(question.test().alpha()),
                    enoughPairs(units)))
        : List.of();
  }

  /** Whether the layouts that could be drawn are too few to show any difference. */
  boolean cannotConfirm(int units) {
    return units > 0 && isTooLarge(question.smallestP(units));
  }

  /** A p of exactly the level is no rejection, whichever way its last digit was rounded. */
  private boolean isTooLarge(double p) {
    return p >= question.test().alpha() * (1 - ROUNDING);
  }

  private String tooFewYards(int units) {
    String level = SizeNumbers.number(question.test().alpha());
    int balanced = fewestBalanced();
    if (!cannotConfirm(units)) {
      return "Fewer than %d yards cannot reach p below %s by drawing lots where sides are balanced; draw each side by coin, or take %1$d."
          .formatted(balanced, level);
    }
    int byCoin = enough(units);
    return "Fewer than %d yards cannot reach p below %s by drawing lots, however large the difference; take %1$d or more by coin, %d or more balanced, better %d."
        .formatted(byCoin, level, balanced, balanced + 2);
  }

  /** The fewest yards, as many left as right, that can show a difference. */
  private int fewestBalanced() {
    int enough = 2;
    while (isTooLarge(question.smallestPBalanced(enough))) {
      enough += 2;
    }
    return enough;
  }

  /** The fewest units, from a number on, that can show a difference. */
  private int enough(int units) {
    int enough = units;
    while (isTooLarge(question.smallestP(enough))) {
      enough++;
    }
    return enough;
  }

  private String enoughPairs(int units) {
    if (layout != Layout.PAIRED_STRIPS) {
      return "";
    }
    return ", since one coin lays two pairs of a lawn; with as many on each lawn as planned, it takes %d"
        .formatted(enough(units));
  }
}
