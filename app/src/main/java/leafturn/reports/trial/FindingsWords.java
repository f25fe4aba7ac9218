package leafturn.reports.trial;

import java.util.List;
import java.util.Locale;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.AreasDifference;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.TrialFacts;
import org.jspecify.annotations.Nullable;

/**
 * Findings in sentences. A verdict is "differs", "equivalent within" the margin, or "undecided",
 * and only the primary outcome has one; that a test found nothing is never told as sameness.
 */
public final class FindingsWords {
  private final Findings findings;
  private final TrialFacts facts;

  /**
   * @param findings to be told
   */
  public FindingsWords(Findings findings) {
    this.findings = findings;
    this.facts = findings.facts();
  }

  /** The answer with all that stands beside it. */
  public String headline() {
    return beside().isEmpty() ? result() : result() + " " + String.join(" ", beside());
  }

  /** The answer in one or two sentences. */
  String result() {
    if (findings.reach() == Findings.Reach.NOTHING_YET) {
      return "The season is not over; what was read so far is shown, and nothing is tested before its end.";
    }
    if (refused()) {
      return "No verdict: " + String.join(" ", findings.standing().refusals());
    }
    OutcomeFindings first = findings.outcomes().get(0);
    return first.outcome().primary()
        ? sentence(first)
        : "No outcome was named the primary one beforehand, so there is no verdict; all that follows is exploratory.";
  }

  /** What stands beside the answer where there is one: the other way, and what weakens it. */
  List<String> beside() {
    return new ConclusionWords(findings, refused()).beside();
  }

  /** Whether something of the record forbids a verdict. */
  boolean refused() {
    return !findings.standing().refusals().isEmpty();
  }

  /** What was found of an outcome. */
  public String sentence(OutcomeFindings found) {
    EffectWords words = new EffectWords(found.outcome());
    AreasDifference areas = found.areas();
    if (areas != null) {
      return new AreasWords(facts, found.outcome()).sentence(areas);
    }
    if (findings.reach() == Findings.Reach.NOTHING_YET) {
      return "%s: read on %d %s so far; not tested before the season ends."
          .formatted(
              capital(EffectWords.name(found.outcome())),
              found.table().dates().size(),
              dates(found));
    }
    if (found.effects().isEmpty()) {
      return "Not tested: %s; the warnings say why.".formatted(EffectWords.name(found.outcome()));
    }
    List<String> sentences =
        found.effects().stream().map(effect -> effect(found, effect, words)).toList();
    return String.join(" ", sentences);
  }

  private static String dates(OutcomeFindings found) {
    return found.table().dates().size() == 1 ? "date" : "dates";
  }

  private String effect(OutcomeFindings found, Effect effect, EffectWords words) {
    Verdict verdict = effect.verdict();
    if (verdict == null && found.outcome().primary()) {
      return "Described, not judged: %s, %s."
          .formatted(measured(found, effect, words), interval95(effect, words));
    }
    if (verdict == null) {
      return "Exploratory: %s, %s; adjusted for all exploratory comparisons %s."
          .formatted(
              measured(found, effect, words),
              interval95(effect, words),
              EffectWords.p(effect.pAdjusted()));
    }
    return switch (verdict) {
      case DIFFERS ->
          "%s differs%s: %s, %s, %s.%s"
              .formatted(
                  capital(EffectWords.name(found.outcome())),
                  DrawnWords.unconfirmed(found, effect, facts),
                  measured(found, effect, words),
                  interval95(effect, words),
                  p(effect),
                  againstMargin(effect, words));
      case EQUIVALENT ->
          "%s is equivalent within %s: %s, %s."
              .formatted(
                  capital(EffectWords.name(found.outcome())),
                  words.margin(),
                  measured(found, effect, words),
                  interval90(effect, words));
      case DIFFERS_BUT_EQUIVALENT ->
          "%s differs%s, and is equivalent within %s: %s, %s, %s. There is a difference, but it is smaller than what was fixed as mattering."
              .formatted(
                  capital(EffectWords.name(found.outcome())),
                  DrawnWords.unconfirmed(found, effect, facts),
                  words.margin(),
                  measured(found, effect, words),
                  interval95(effect, words),
                  interval90(effect, words));
      case UNDECIDED -> undecided(found, effect, words);
    };
  }

  /** How a difference that is not equivalent lies to the margin; empty where none was fixed. */
  private String againstMargin(Effect effect, EffectWords words) {
    Effect.Equivalence tests = effect.equivalence();
    if (tests == null) {
      return "";
    }
    boolean beyond =
        tests.interval().lower() > tests.margin() || tests.interval().upper() < -tests.margin();
    return beyond
        ? " It is larger than what was fixed as mattering, %s: %s."
            .formatted(words.margin(), interval90(effect, words))
        : " Whether it is smaller than what was fixed as mattering, %s, is undecided: %s."
            .formatted(words.margin(), interval90(effect, words));
  }

  private String undecided(OutcomeFindings found, Effect effect, EffectWords words) {
    String heldBack = DrawnWords.heldBack(found, effect, facts);
    if (!heldBack.isEmpty()) {
      return "Undecided: %s, %s; %s."
          .formatted(measured(found, effect, words), interval95(effect, words), heldBack);
    }
    String least =
        Double.isNaN(effect.leastDetectable())
            ? ""
            : " A trial of this size and spread finds %s in four of five cases."
                .formatted(least(effect, words));
    String margin =
        effect.equivalence() == null // a warning says that no margin was fixed
            ? ""
            : ", and it is not shown to be equivalent within " + words.margin();
    return "Undecided: %s, %s; a difference is not shown (%s)%s.%s"
        .formatted(
            measured(found, effect, words), interval95(effect, words), p(effect), margin, least);
  }

  /** The p that judges, and for several planned comparisons how it was adjusted. */
  private String p(Effect effect) {
    String p = EffectWords.p(effect.pAdjusted());
    return facts.contrasts().size() < 2 ? p : p + " by Holm";
  }

  /** The difference that four of five such trials would find. */
  static String least(Effect effect, EffectWords words) {
    double se = effect.estimated().se();
    return words.isRatio()
        ? "a ratio of " + words.number(effect.leastDetectable(), se)
        : words.difference(effect.leastDetectable(), se);
  }

  /** "quality with returned is 0.41 points above collected". */
  private static String measured(OutcomeFindings found, Effect effect, EffectWords words) {
    return measured(
        EffectWords.name(found.outcome()),
        effect.contrast(),
        effect.estimated().difference(),
        effect.estimated().se(),
        words);
  }

  static String measured(
      String outcome, Contrast contrast, double difference, double se, EffectWords words) {
    if (words.isRatio()) {
      return "%s of '%s' is %s times that of '%s'"
          .formatted(outcome, contrast.first(), words.number(difference, se), contrast.second());
    }
    String side = difference < 0 ? "below" : "above";
    return "%s of '%s' is %s %s that of '%s'"
        .formatted(
            outcome,
            contrast.first(),
            words.difference(Math.abs(difference), se),
            side,
            contrast.second());
  }

  private String interval95(Effect effect, EffectWords words) {
    return level(facts, 95)
        + " "
        + words.interval(effect.estimated().interval(), effect.estimated().se());
  }

  /** "95 % interval", and of several planned comparisons for how many at once. */
  static String level(TrialFacts facts, int percent) {
    int comparisons = facts.contrasts().size();
    return comparisons < 2
        ? percent + "\u00a0% interval"
        : "%d\u00a0%% interval (for %d comparisons at once, Bonferroni)"
            .formatted(percent, comparisons);
  }

  private String interval90(Effect effect, EffectWords words) {
    Effect.Equivalence tests = effect.equivalence();
    return tests == null
        ? ""
        : level(facts, 90) + " " + words.interval(tests.interval(), effect.estimated().se());
  }

  /** How many units began and how many ended. */
  public String flow() {
    return new ConclusionWords(findings, refused()).flow();
  }

  /** What may be concluded and what not. */
  public List<String> conclusions() {
    return new ConclusionWords(findings, refused()).lines();
  }

  /**
   * The verdict of an effect in a few words; "exploratory" where it has none.
   *
   * @param unconfirmed what the test by the layouts takes from a difference; empty for nothing
   */
  static String verdict(Effect effect, EffectWords words, String unconfirmed) {
    @Nullable Verdict verdict = effect.verdict();
    if (verdict == null) {
      return "exploratory";
    }
    return switch (verdict) {
      case DIFFERS -> "differs" + unconfirmed;
      case EQUIVALENT -> "equivalent within " + words.margin();
      case DIFFERS_BUT_EQUIVALENT ->
          "differs%s; equivalent within %s".formatted(unconfirmed, words.margin());
      case UNDECIDED -> "undecided";
    };
  }

  static String plural(String word) {
    return word.endsWith("s") ? word : word + "s";
  }

  static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
