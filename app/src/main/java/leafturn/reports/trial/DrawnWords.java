package leafturn.reports.trial;

import leafturn.trials.findings.Effect;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.RandomisationTest;
import leafturn.trials.findings.TrialFacts;

/** What the test by the layouts that might have been drawn takes from a verdict, in words. */
final class DrawnWords {
  private DrawnWords() {}

  /** Where that test does not show the difference that is claimed; empty where it does. */
  static String unconfirmed(OutcomeFindings found, Effect effect, TrialFacts facts) {
    RandomisationTest drawn = found.support().randomisation();
    boolean tested = found.effects().indexOf(effect) == 0;
    if (drawn == null || !tested || drawn.p() < Effect.ALPHA) {
      return "";
    }
    return drawn.canShowNothing()
        ? " by the t test, but with %s the exact test by the layouts cannot go below p = %s"
            .formatted(units(effect, facts), EffectWords.plainP(drawn.smallestP()))
        : ", but the %s test by the layouts does not confirm it (%s)"
            .formatted(drawn.sampled() ? "sampled" : "exact", EffectWords.p(drawn.p()));
  }

  /** Why no difference is claimed where none can be shown; empty where one could be. */
  static String heldBack(OutcomeFindings found, Effect effect, TrialFacts facts) {
    RandomisationTest drawn = found.support().randomisation();
    if (drawn == null) {
      return "";
    }
    String smallest = EffectWords.plainP(drawn.smallestP());
    if (drawn.leavesOpen()) {
      return "of the %d listed layouts the exact test cannot go below p = %s, so that no difference can be shown"
          .formatted(drawn.layouts(), smallest);
    }
    return effect.isHeldBack(drawn)
        ? "the t test alone shows a difference (%s), but with %s the exact test by the layouts cannot go below p = %s, so that none is claimed; take at least 6 %s, 8 where sides are balanced"
            .formatted(
                EffectWords.p(effect.pAdjusted()),
                units(effect, facts),
                smallest,
                FindingsWords.plural(facts.unitWord()))
        : "";
  }

  private static String units(Effect effect, TrialFacts facts) {
    return "%d %s".formatted(effect.units(), FindingsWords.plural(facts.unitWord()));
  }
}
