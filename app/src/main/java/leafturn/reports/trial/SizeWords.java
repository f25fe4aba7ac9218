package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.trial.SizeDocument;
import leafturn.trials.power.DifferenceTest.Rejections;
import leafturn.trials.power.Layout;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.SizeAnswer.AtUnits;
import leafturn.trials.power.SizeAnswer.MoreSampling;
import leafturn.trials.power.SizeAnswer.Needed;
import leafturn.trials.power.SizeQuestion;
import org.jspecify.annotations.Nullable;

/** The size of a trial in sentences. */
public final class SizeWords {
  private final SizeDocument document;
  private final SizeQuestion question;
  private final Layout layout;
  private final SizeNumbers numbers;

  /** Words for an answer to a document. */
  public SizeWords(SizeDocument document) {
    this.document = document;
    this.question = document.size();
    this.layout = question.design().layout();
    this.numbers = new SizeNumbers(document);
  }

  /** What counts as found and what as shown equivalent, in a sentence each. */
  public String convention() {
    String equivalence =
        question.margin() != null
            ? "Equivalence: two one-sided t tests at %s each; both ends of the margin have to be rejected."
                .formatted(SizeNumbers.chosen(question.test().alpha()))
            : "";
    return question.difference() == null
        ? (equivalence + " " + found()).strip()
        : (found() + " " + equivalence).strip();
  }

  private String found() {
    String level = SizeNumbers.chosen(question.test().alpha());
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
    words.addAll(new SmallestPWords(document).of(units(answer)));
    return words;
  }

  private void needed(List<String> words, SizeAnswer answer) {
    Needed difference = answer.forDifference();
    if (difference != null) {
      words.add(
          "To find %s with a power of %s takes %s%s."
              .formatted(
                  numbers.effect(question.difference()),
                  SizeNumbers.chosen(question.power()),
                  numbers.count(difference.whole()),
                  range(difference)));
    }
    Needed equivalence = answer.forEquivalence();
    if (equivalence != null) {
      words.add(
          "To show with a power of %s that the difference is within %s, when it is in truth %s, takes %s%s."
              .formatted(
                  SizeNumbers.chosen(question.power()),
                  numbers.margin(question.margin()),
                  numbers.truth(),
                  numbers.count(equivalence.whole()),
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
                  SizeNumbers.capital(numbers.count(at.units())),
                  numbers.effect(question.difference()),
                  SizeNumbers.power(at.power(), question.power())));
    }
    words.add(
        "The minimum detectable difference, which %s find with a power of %s, is %s."
            .formatted(
                numbers.count(at.units()),
                SizeNumbers.chosen(question.power()),
                numbers.detectable(at.detectable())));
    if (!Double.isNaN(at.equivalencePower())) {
      words.add(
          "%s show a difference within %s with a power of %s."
              .formatted(
                  SizeNumbers.capital(numbers.count(at.units())),
                  numbers.margin(question.margin()),
                  SizeNumbers.power(at.equivalencePower(), question.power())));
    }
    words.add(
        "The smallest margin of equivalence they can show with that power is %s."
            .formatted(numbers.margin(at.smallestMargin())));
  }

  /** With how much chance the planned number finds what matters, in a sentence. */
  public String chance(AtUnits at) {
    String chance =
        "%s find %s, the margin that matters, with a chance of %s"
            .formatted(
                SizeNumbers.capital(numbers.count(at.units())),
                numbers.effect(question.difference()),
                SizeNumbers.power(at.power(), question.power()));
    String wanted = SizeNumbers.chosen(question.power());
    return at.power() < question.power()
        ? "%s, by the starting values of '%s'; %s is usual, and with less a true difference is easily missed: take more %s before you freeze."
            .formatted(chance, document.outcome(), wanted, layout.units())
        : "%s, by the starting values of '%s'; %s is usual."
            .formatted(chance, document.outcome(), wanted);
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
        "More %s or dates help down to a floor, beyond which they cannot replace %s: of the variance of a difference in one %s (%s), %s or %s stays however many are taken."
            .formatted(
                numbers.samples(),
                layout.units(),
                layout.unit(),
                SizeNumbers.number(more.variance()),
                SizeNumbers.number(more.floor()),
                SizeNumbers.percent(more.floor() / more.variance())));
    if (!Double.isNaN(more.power())) {
      words.add(
          "With %s, ten times the %s bring the power from %s to %s, ten times the dates to %s, any number of both to %s; %s instead bring it to %s."
              .formatted(
                  numbers.count(more.units()),
                  numbers.samples(),
                  SizeNumbers.percent(more.power()),
                  SizeNumbers.percent(more.tenfoldCores()),
                  SizeNumbers.percent(more.tenfoldDates()),
                  SizeNumbers.percent(more.atFloor()),
                  numbers.count(more.moreUnits()),
                  SizeNumbers.percent(more.powerOfMoreUnits())));
    }
  }

  /** What power is, and so the columns of the table, in sentences. */
  public List<String> power() {
    String wanted = SizeNumbers.chosen(question.power());
    List<String> words = new ArrayList<>();
    words.add(
        "Power is a chance: of 100 trials of this size, so many show what is really there, by the test named below.");
    words.add(
        "Chance to find it: the power to find %s that is really there; beside it the smallest difference that is found with a chance of %s."
            .formatted(numbers.effect(question.difference()), wanted));
    words.add(
        "Chance to show equivalence: the power to show that the difference lies within %s where in truth it is %s; beside it the narrowest margin within which it is shown with a chance of %s."
            .formatted(numbers.margin(question.margin()), numbers.truth(), wanted));
    return words;
  }

  /** What a figure of power over units shows. */
  public String figure(SizeAnswer answer) {
    String planned =
        answer.at() == null ? "" : "; %s are planned".formatted(numbers.count(answer.at().units()));
    return "The chance (the power) over the number of %s, with the variances below; dotted, the wanted %s%s."
        .formatted(layout.units(), SizeNumbers.chosen(question.power()), planned);
  }

  /** What speaks against the number of units, and what the answer rests on. */
  public List<String> warnings(SizeAnswer answer) {
    List<String> warnings = new ArrayList<>();
    warnings.addAll(new SmallestPWords(document).warnings(units(answer)));
    if (document.variances().stream().anyMatch(own -> own.status().equals("assumed"))) {
      warnings.add(
          "Some of the variances are assumed; measure your own on a first round and ask again.");
    }
    return warnings;
  }

  /** The units that are planned, else those that are needed, else 0. */
  private static int units(SizeAnswer answer) {
    AtUnits at = answer.at();
    Needed needed = answer.forDifference();
    return at != null ? at.units() : needed == null ? 0 : needed.whole();
  }

  /** Whether the layouts that could be drawn are too few to show any difference. */
  public boolean cannotConfirm(int units) {
    return new SmallestPWords(document).cannotConfirm(units);
  }

  private String range(Needed needed) {
    if (needed.low() == 0) {
      return "";
    }
    return needed.high() == 0
        ? " (%d at least, within the range of the variances)".formatted(needed.low())
        : " (%d to %d within the range of the variances)".formatted(needed.low(), needed.high());
  }
}
