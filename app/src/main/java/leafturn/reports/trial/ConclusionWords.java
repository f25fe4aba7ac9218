package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.TrialFacts;

/** What may be concluded from findings and what not, in sentences. */
final class ConclusionWords {
  private final Findings findings;
  private final TrialFacts facts;
  private final boolean refused;

  /**
   * @param refused whether something of the record forbids a verdict
   */
  ConclusionWords(Findings findings, boolean refused) {
    this.findings = findings;
    this.facts = findings.facts();
    this.refused = refused;
  }

  /** What stands beside the answer where there is one: the other way, and what weakens it. */
  List<String> beside() {
    List<String> all = new ArrayList<>();
    boolean judged = findings.outcomes().get(0).outcome().primary();
    if (findings.reach() == Findings.Reach.NOTHING_YET || refused || !judged) {
      return all;
    }
    OutcomeFindings keptIn = findings.keptIn();
    if (keptIn != null) {
      all.add(
          "With the readings kept in that were left out, or withdrawn with results in sight: "
              + new FindingsWords(findings).sentence(keptIn));
    }
    all.addAll(findings.standing().cautions());
    return all;
  }

  /** How many units began, how many have a whole season, and how many the result is without. */
  String flow() {
    int whole = findings.unitsWhole();
    int used = findings.outcomes().get(0).unitsUsed();
    int lost = facts.unitsStarted() - used;
    String days = findings.standing().plannedDays() > 0 ? "planned" : "others";
    String part =
        used > whole ? ", %d read on fewer days than %s".formatted(used - whole, days) : "";
    String tail = lost > 0 ? "; %d left out, for the reasons given".formatted(lost) : "";
    return "%s: %d started, %d with a whole season%s%s."
        .formatted(
            FindingsWords.capital(FindingsWords.plural(facts.unitWord())),
            facts.unitsStarted(),
            whole,
            part,
            tail);
  }

  /** What may be concluded and what not. */
  List<String> lines() {
    List<String> all = new ArrayList<>();
    if (refused && findings.reach() != Findings.Reach.NOTHING_YET) {
      all.add("What was measured is described, and nothing is concluded from it.");
      return all;
    }
    switch (findings.reach()) {
      case NOTHING_YET ->
          all.add(
              "Nothing yet: looking at results early and stopping when they please leads astray.");
      case TWO_AREAS -> {
        all.add("What was measured holds for these two areas in this season.");
        all.add(
            "It says nothing about '%s': a single %s split once has nothing to tell a treatment from the ground it lies on. Dates and cores measure the areas better, they do not repeat the treatment."
                .formatted(facts.factor(), facts.unitWord()));
        all.add(
            "To learn about the treatment, split more yards with the side drawn by chance: at least 6, better 10.");
      }
      case THIS_YARD -> {
        all.add(thisYard());
        all.add("Other yards may answer otherwise; that needs several yards.");
        all.add(season());
      }
      case SUCH_YARDS -> {
        if (yards() == 0) {
          all.add(
              "Nothing can be said of such yards: none of the trial's has the whole season of both treatments.");
          break;
        }
        all.add(
            "The result holds for yards like the %d of the trial, looked after in the same way."
                .formatted(yards()));
        all.addAll(newUnit());
        all.add(season());
      }
    }
    boolean exploratory = findings.outcomes().stream().anyMatch(each -> !each.outcome().primary());
    if (exploratory && findings.reach() != Findings.Reach.NOTHING_YET) {
      all.add("Exploratory outcomes suggest what to ask next; they settle nothing.");
    }
    return all;
  }

  /** Yards that the result rests on: where each is a unit, without those that were left out. */
  private int yards() {
    return facts.unitWord().equals("yard")
        ? Math.min(facts.yards(), findings.outcomes().get(0).unitsUsed())
        : facts.yards();
  }

  private String thisYard() {
    return switch (facts.design()) {
      case LATIN_SQUARE ->
          "The result holds for this yard: the rows and columns of its square were the replicates.";
      case LISTED -> "The result holds for this yard: its plots were the replicates.";
      case UNITS, SPLIT_PLOT, STRIP_PLOT ->
          "The result holds for this yard: its %s were the replicates."
              .formatted(FindingsWords.plural(facts.unitWord()));
    };
  }

  private static String season() {
    return "It is one season: one draw of the weather. Dates of the same season are no further years.";
  }

  private List<String> newUnit() {
    OutcomeFindings first = findings.outcomes().get(0);
    EffectWords words = new EffectWords(first.outcome());
    List<String> all = new ArrayList<>();
    for (Effect effect : first.effects()) {
      if (effect.newUnit() != null) {
        all.add(
            "In a new %s of this kind the %s is expected at %s (95\u00a0%% prediction interval)."
                .formatted(
                    facts.unitWord(),
                    OutcomeFigures.pair(effect.contrast(), words.isRatio()),
                    words.interval(effect.newUnit(), effect.estimated().se())
                        + (words.isRatio() || words.unit().isEmpty()
                            ? ""
                            : "\u00a0" + words.unit())));
      } else {
        all.add(
            "What the %s would be in a new %s of this kind cannot be told from these data."
                .formatted(
                    OutcomeFigures.pair(effect.contrast(), words.isRatio()), facts.unitWord()));
      }
    }
    return all;
  }
}
