package leafturn.reports.trial;

import leafturn.trials.design.Outcome;
import leafturn.trials.findings.AreasDifference;
import leafturn.trials.findings.TrialFacts;

/** One unit split once in words: its two areas differ, and why cannot be told. */
record AreasWords(TrialFacts facts, Outcome outcome) {
  /**
   * By how much the areas differ, which summary of the season that is, and how well it is known.
   */
  String sentence(AreasDifference areas) {
    EffectWords words = new EffectWords(outcome);
    return "One %s split once: the difference between the two areas is that %s (%s%s). Whether '%s' is why cannot be told from one %s."
        .formatted(
            facts.unitWord(),
            FindingsWords.measured(
                EffectWords.name(outcome),
                areas.contrast(),
                areas.difference(),
                areas.samplingError(),
                words),
            areas.dates() > 1 ? summary(outcome) + "; " : "",
            known(areas, words),
            facts.factor(),
            facts.unitWord());
  }

  private String known(AreasDifference areas, EffectWords words) {
    if (areas.interval() == null) {
      boolean line = areas.dates() == 2 && outcome.summary() == Outcome.Summary.SLOPE;
      return (areas.dates() < 2
              ? "read on one date"
              : line ? "read on two dates" : "the same on every date")
          + ", so that how well it is known cannot be told";
    }
    return "95\u00a0%% interval %s from the measuring alone"
        .formatted(words.interval(areas.interval(), areas.samplingError()));
  }

  /** How the season of a plot was summed up. */
  static String summary(Outcome outcome) {
    return switch (outcome.summary()) {
      case SEASON_MEAN -> "mean over the season by trapezoids between dates";
      case SLOPE -> "change a day over the season";
      case LAST_DATE -> "value of the last date that was read";
    };
  }
}
