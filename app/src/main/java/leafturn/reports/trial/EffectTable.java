package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import leafturn.quantity.DisplayNumber;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.RandomisationTest;
import leafturn.trials.findings.TrialFacts;

/** The table of what was compared over the season, of one outcome. */
final class EffectTable {
  private final TrialFacts facts;
  private final OutcomeFindings found;
  private final EffectWords words;
  private final String what;

  EffectTable(TrialFacts facts, OutcomeFindings found) {
    this.facts = facts;
    this.found = found;
    this.words = new EffectWords(found.outcome());
    this.what = words.isRatio() ? "Ratio" : "Difference";
  }

  ShownTable season() {
    List<Effect> effects = found.effects();
    List<String> header = new ArrayList<>(List.of("Over the season"));
    effects.forEach(
        each -> header.add(each.contrast().first() + " against " + each.contrast().second()));
    List<List<String>> rows = new ArrayList<>();
    if (!effects.isEmpty()) {
      add(rows, "Verdict", this::verdict);
      add(rows, what, each -> words.difference(each.estimated().difference(), se(each)));
      add(
          rows,
          FindingsWords.level(facts, 95),
          each -> words.interval(each.estimated().interval(), se(each)));
      add(
          rows,
          FindingsWords.capital(FindingsWords.plural(facts.unitWord())),
          each -> Integer.toString(each.units()));
      add(
          rows,
          words.isRatio() ? "Standard error, log scale" : "Standard error",
          each -> DisplayNumber.significant(se(each), 3));
      add(rows, "Degrees of freedom", each -> df(each.estimated().df()));
      add(rows, "t", each -> DisplayNumber.significant(each.estimated().t(), 4));
      add(rows, "p", each -> EffectWords.plainP(each.estimated().p()));
      addAdjusted(rows);
      addExact(rows);
      addEquivalence(rows);
      addFurther(rows);
    }
    return new ShownTable(what + " of the season", header, rows);
  }

  private String verdict(Effect effect) {
    boolean refused = effect.verdict() == null && found.outcome().primary();
    String unconfirmed = DrawnWords.unconfirmed(found, effect, facts);
    return refused ? "none" : FindingsWords.verdict(effect, words, unconfirmed);
  }

  private void addAdjusted(List<List<String>> rows) {
    String how = found.outcome().primary() ? "p, Holm" : "p, Benjamini and Hochberg";
    if (!found.outcome().primary() || found.effects().size() > 1) {
      add(rows, how, each -> EffectWords.plainP(each.pAdjusted()));
    }
  }

  /** The test by the layouts is of the first comparison alone. */
  private void addExact(List<List<String>> rows) {
    RandomisationTest drawn = found.support().randomisation();
    if (drawn != null) {
      add(
          rows,
          "p, %s test by the layouts".formatted(drawn.sampled() ? "sampled" : "exact"),
          each -> each == found.effects().get(0) ? EffectWords.plainP(drawn.p()) : "–");
    }
  }

  private void addEquivalence(List<List<String>> rows) {
    if (found.effects().stream().noneMatch(each -> each.equivalence() != null)) {
      return;
    }
    add(rows, "Margin", each -> words.margin());
    add(
        rows,
        FindingsWords.level(facts, 90),
        each -> {
          Effect.Equivalence tests = each.equivalence();
          return tests == null ? "–" : words.interval(tests.interval(), se(each));
        });
    add(
        rows,
        "p of equivalence",
        each -> {
          Effect.Equivalence tests = each.equivalence();
          return tests == null ? "–" : EffectWords.plainP(tests.p());
        });
  }

  private void addFurther(List<List<String>> rows) {
    if (found.effects().stream().anyMatch(each -> !Double.isNaN(each.leastDetectable()))) {
      String least =
          "Smallest true %s that four of five such trials would find"
              .formatted(words.isRatio() ? "ratio" : "difference");
      add(rows, least, each -> FindingsWords.least(each, words));
    }
    if (found.effects().stream().anyMatch(each -> each.newUnit() != null)) {
      add(
          rows,
          "In a new " + facts.unitWord() + ", 95\u00a0% prediction",
          each -> {
            var next = each.newUnit();
            return next == null ? "–" : words.interval(next, se(each));
          });
    }
  }

  private void add(List<List<String>> rows, String name, Function<Effect, String> cell) {
    List<String> row = new ArrayList<>(List.of(name));
    found.effects().forEach(each -> row.add(cell.apply(each)));
    rows.add(row);
  }

  private static double se(Effect effect) {
    return effect.estimated().se();
  }

  /** Degrees of freedom, whole ones without decimals. */
  static String df(double df) {
    if (Double.isNaN(df)) {
      return "–";
    }
    return Math.abs(df - Math.rint(df)) < 1e-6
        ? Long.toString(Math.round(df))
        : String.format(Locale.ROOT, "%.2f", df);
  }
}
