package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.Design;
import leafturn.trials.power.DifferenceTest.Rejections;
import leafturn.trials.power.Layout;
import leafturn.trials.power.SimulatedPower;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.SizeAnswer.AtUnits;
import leafturn.trials.power.SizeAnswer.MoreSampling;
import leafturn.trials.power.SizeAnswer.Needed;
import leafturn.trials.power.SizeQuestion;
import org.jspecify.annotations.Nullable;

/** The size of a trial in sentences. */
public final class SizeWords {
  private static final int FEWEST_BY_COIN = 6;
  private static final int FEWEST_BALANCED = 8;

  private final SizeDocument document;
  private final SizeQuestion question;
  private final Layout layout;

  /** Words for an answer to a document. */
  public SizeWords(SizeDocument document) {
    this.document = document;
    this.question = document.size();
    this.layout = question.design().layout();
  }

  /** What counts as found, in one sentence. */
  public String convention() {
    String level = percent(question.test().alpha());
    if (question.any()) {
      return "F test of all arms at %s; two arms lie apart and the others midway.".formatted(level);
    }
    if (question.test().sides() == 1) {
      return "One-sided t test at %s; only the expected direction counts.".formatted(level);
    }
    return question.test().rejections() == Rejections.BOTH_TAILS
        ? "Two-sided t test at %s; all rejections count, the wrong direction too, which is exact."
            .formatted(level)
        : "Two-sided t test at %s; only rejections in the true direction count, as tables of sample sizes usually have it."
            .formatted(level);
  }

  /** The answer by formula, most important first. */
  public List<String> of(SizeAnswer answer) {
    List<String> words = new ArrayList<>();
    needed(words, answer);
    planned(words, answer.at());
    moreSampling(words, answer.more());
    smallestP(words, answer);
    return words;
  }

  private void needed(List<String> words, SizeAnswer answer) {
    Needed difference = answer.forDifference();
    if (difference != null) {
      words.add(
          "To find %s with a power of %s takes %s%s."
              .formatted(
                  effect(question.difference()),
                  percent(question.power()),
                  count(difference.whole()),
                  range(difference)));
    }
    Needed equivalence = answer.forEquivalence();
    if (equivalence != null) {
      words.add(
          "To show with a power of %s that the difference is within %s, when it is in truth %s, takes %s%s."
              .formatted(
                  percent(question.power()),
                  margin(question.margin()),
                  truth(),
                  count(equivalence.whole()),
                  range(equivalence)));
    }
  }

  private void planned(List<String> words, @Nullable AtUnits at) {
    if (at == null) {
      return;
    }
    if (!Double.isNaN(at.power())) {
      words.add(
          "%s find %s with a power of %s."
              .formatted(
                  capital(count(at.units())), effect(question.difference()), percent(at.power())));
    }
    words.add(
        "The minimum detectable difference of %s, with a power of %s, is %s."
            .formatted(count(at.units()), percent(question.power()), effect(at.detectable())));
    if (!Double.isNaN(at.equivalencePower())) {
      words.add(
          "%s show a difference within %s with a power of %s."
              .formatted(
                  capital(count(at.units())),
                  margin(question.margin()),
                  percent(at.equivalencePower())));
    }
    words.add(
        "The smallest margin of equivalence they can show with that power is %s."
            .formatted(margin(at.smallestMargin())));
  }

  private void moreSampling(List<String> words, @Nullable MoreSampling more) {
    if (more == null) {
      if (layout == Layout.SPLIT_YARD) {
        words.add(
            "More cores or dates cannot replace yards: they lower only what varies within a half, never what makes the halves of a yard differ. Give the variances apart to see by how much.");
      }
      return;
    }
    words.add(
        "More cores or dates cannot replace %s: of the variance of a difference in one %s (%s), %s or %s stays however many are taken."
            .formatted(
                layout.units(),
                layout.unit(),
                number(more.variance()),
                number(more.floor()),
                percent(more.floor() / more.variance())));
    if (!Double.isNaN(more.power())) {
      words.add(
          "With %s, ten times the cores bring the power from %s to %s, ten times the dates to %s, any number of both to %s; %s instead bring it to %s."
              .formatted(
                  count(more.units()),
                  percent(more.power()),
                  percent(more.tenfoldCores()),
                  percent(more.tenfoldDates()),
                  percent(more.atFloor()),
                  count(more.moreUnits()),
                  percent(more.powerOfMoreUnits())));
    }
  }

  private void smallestP(List<String> words, SizeAnswer answer) {
    AtUnits at = answer.at();
    Needed needed = answer.forDifference();
    int units = at != null ? at.units() : needed == null ? 0 : needed.whole();
    double smallest = units == 0 ? Double.NaN : question.design().smallestP(units);
    if (Double.isNaN(smallest)) {
      return;
    }
    if (layout != Layout.SPLIT_YARD) {
      words.add(
          "The smallest p that drawing lots anew could give with %s is %s."
              .formatted(count(units), number(smallest)));
      return;
    }
    double balanced = Design.smallestPBalanced(units);
    words.add(
        "The smallest p that drawing lots anew could give with %s is %s where a coin draws each yard's side, and %s."
            .formatted(
                count(units),
                number(smallest),
                Double.isNaN(balanced)
                    ? "an odd number cannot be balanced"
                    : number(balanced) + " where as many are returned left as right"));
  }

  /** What a figure of power over units shows. */
  public String figure(SizeAnswer answer) {
    String planned =
        answer.at() == null ? "" : "; %s are planned".formatted(numbers.count(answer.at().units()));
    return "Power over the number of %s, with the variances below; dotted, the wanted %s%s."
        .formatted(layout.units(), SizeNumbers.percent(question.power()), planned);
  }

  /** What speaks against the number of units, and what the answer rests on. */
  public List<String> warnings(SizeAnswer answer) {
    List<String> warnings = new ArrayList<>();
    AtUnits at = answer.at();
    Needed needed = answer.forDifference();
    int units = at != null ? at.units() : needed == null ? 0 : needed.whole();
    if (layout == Layout.SPLIT_YARD && units > 0 && units < FEWEST_BALANCED) {
      warnings.add(
          units < FEWEST_BY_COIN
              ? "Fewer than 6 yards cannot reach p below 0.05 by drawing lots, however large the difference; take 6 or more by coin, 8 or more balanced, better 10."
              : "Fewer than 8 yards cannot reach p below 0.05 by drawing lots where sides are balanced; draw each side by coin, or take 8.");
    } else if (units > 0 && question.design().smallestP(units) >= question.test().alpha()) {
      warnings.add(
          "%s cannot reach p below %s by drawing lots anew, however large the difference."
              .formatted(capital(count(units)), number(question.test().alpha())));
    }
    if (document.variances().stream().anyMatch(own -> own.status().equals("assumed"))) {
      warnings.add(
          "Some of the variances are assumed; measure your own on a first round and ask again.");
    }
    return warnings;
  }

  /** How simulated trials are analysed. */
  static String analysis(SimulationQuestion question) {
    if (question.analysis() != null) {
      return "the mixed model of the file, on every reading";
    }
    return question.size().design().layout() == Layout.SPLIT_YARD
        ? "paired differences of season means"
        : "the usual mixed model of the design on season means, with Kenward and Roger's degrees of freedom";
  }

  /** What simulated trials found. */
  public List<String> of(SimulationQuestion asked, SimulatedPower simulated) {
    List<String> words = new ArrayList<>();
    words.add(
        "%s whole trials were simulated from seed %d, each analysed by %s; all rejections count."
            .formatted(
                DisplayNumber.decimals(simulated.trials(), 0), asked.seed(), analysis(asked)));
    if (simulated.found() != null) {
      words.add(
          "The power to find %s is %s."
              .formatted(effect(question.difference()), share(simulated.found())));
    }
    if (simulated.equivalent() != null) {
      words.add(
          "The power to show a difference within %s, where in truth it is %s, is %s."
              .formatted(margin(question.margin()), truth(), share(simulated.equivalent())));
    }
    if (!layout.hasFormula()) {
      words.add(
          "More yards cannot replace years: however many, the variance of the difference stays above %s, judged by %d degrees of freedom."
              .formatted(
                  number(2 * asked.around().practiceByYear() / question.design().years()),
                  question.design().years() - 1));
    }
    if (simulated.notAnalysed() > 0) {
      words.add(
          "%d of them could not be analysed and count as having shown nothing."
              .formatted(simulated.notAnalysed()));
    }
    return words;
  }

  private static String share(SimulatedPower.Share share) {
    return "%s (Monte Carlo error %s, 95 %% interval %s to %s)"
        .formatted(
            percent(share.share()),
            DisplayNumber.significant(100 * share.error(), 2) + " points",
            percent(share.low()),
            percent(share.high()));
  }

  private String truth() {
    double truth = question.trueDifference();
    if (truth == 0) {
      return "none";
    }
    return document.log() ? "a ratio of " + number(Math.exp(truth)) : number(truth);
  }

  private String effect(@Nullable Double difference) {
    return difference == null ? "a difference" : effect(difference.doubleValue());
  }

  private String effect(double difference) {
    return document.log()
        ? "a ratio of " + number(Math.exp(difference))
        : "a difference of " + number(difference);
  }

  private String margin(@Nullable Double margin) {
    return margin == null ? "the margin" : margin(margin.doubleValue());
  }

  private String margin(double margin) {
    return document.log()
        ? "a ratio of %s either way".formatted(number(Math.exp(margin)))
        : "±" + number(margin);
  }

  private String range(Needed needed) {
    if (needed.low() == 0) {
      return "";
    }
    return needed.high() == 0
        ? " (%d at least, within the range of the variances)".formatted(needed.low())
        : " (%d to %d within the range of the variances)".formatted(needed.low(), needed.high());
  }

  private String count(int units) {
    if (units == 0) {
      return "more than a million " + layout.units();
    }
    return "%s %s"
        .formatted(DisplayNumber.decimals(units, 0), units == 1 ? layout.unit() : layout.units());
  }

  static String percent(double fraction) {
    if (fraction > 0.995 && fraction < 1) {
      return "over 99 %";
    }
    double percent = 100 * fraction;
    return (percent < 1 ? DisplayNumber.significant(percent, 2) : DisplayNumber.decimals(percent, 0))
        + " %";
  }

  static String number(double value) {
    return DisplayNumber.significant(value, 3);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
