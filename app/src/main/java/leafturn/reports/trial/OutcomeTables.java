package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import leafturn.quantity.DisplayNumber;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.findings.DatesModel;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.SeasonTable;
import leafturn.trials.findings.TrialFacts;
import org.jspecify.annotations.Nullable;

/** The tables of one outcome. */
final class OutcomeTables {
  private final TrialFacts facts;
  private final OutcomeFindings found;
  private final EffectWords words;

  OutcomeTables(TrialFacts facts, OutcomeFindings found) {
    this.facts = facts;
    this.found = found;
    this.words = new EffectWords(found.outcome());
  }

  /** Mean of an arm's plots on each date, on the scale of the analysis. */
  static double[] armMeans(SeasonTable table, String arm) {
    double[] means = new double[table.dates().size()];
    for (int date = 0; date < means.length; date++) {
      double sum = 0;
      int count = 0;
      for (int plot = 0; plot < table.plots().size(); plot++) {
        double value = table.values()[plot][date];
        if (table.plots().get(plot).arm().equals(arm) && !Double.isNaN(value)) {
          sum += value;
          count++;
        }
      }
      means[date] = count == 0 ? Double.NaN : sum / count;
    }
    return means;
  }

  /** Mean season of the plots of a unit with an arm; NaN where there is none. */
  static double season(OutcomeFindings found, String unit, String arm) {
    return found.table().plotsOf(unit).stream()
        .filter(plot -> found.table().plots().get(plot).arm().equals(arm))
        .mapToDouble(plot -> found.summaries()[plot])
        .filter(Double::isFinite)
        .average()
        .orElse(Double.NaN);
  }

  private String what() {
    return words.isRatio() ? "Ratio" : "Difference";
  }

  ShownTable byDate() {
    SeasonTable table = found.table();
    List<String> arms = OutcomeFigures.arms(facts, table);
    DatesModel model = found.support().dates();
    List<String> header = new ArrayList<>(List.of("Date"));
    header.addAll(arms);
    List<DatesModel.Differences> differences = model == null ? List.of() : model.differences();
    for (DatesModel.Differences each : differences) {
      String pair =
          each.contrast().first() + (words.isRatio() ? " : " : " − ") + each.contrast().second();
      header.add(what() + " " + pair);
      header.add("95\u00a0% interval, all dates at once");
    }
    List<List<String>> rows = new ArrayList<>();
    for (int date = 0; date < table.dates().size(); date++) {
      List<String> row = new ArrayList<>(List.of(OutcomeFigures.date(table.dates().get(date))));
      for (String arm : arms) {
        row.add(words.amount(mean(model, arm, date)));
      }
      for (DatesModel.Differences each : differences) {
        DatesModel.AtDate at = each.dates().get(date);
        row.add(words.number(at.difference(), at.se()));
        row.add(words.interval(at.interval(), at.se()));
      }
      rows.add(row);
    }
    String mean = words.isRatio() ? "Geometric means" : "Means";
    String of = model == null ? " of the plots by date" : " by date, from the model of all dates";
    return new ShownTable(mean + of + inUnit(), header, rows);
  }

  /** Means and differences of one table come from one place: the model, where there is one. */
  private double mean(@Nullable DatesModel model, String arm, int date) {
    if (model == null) {
      return armMeans(found.table(), arm)[date];
    }
    List<Double> means = model.means().get(arm);
    return means == null ? Double.NaN : means.get(date);
  }

  private String inUnit() {
    return found.outcome().unit().isEmpty() ? "" : ", " + found.outcome().unit();
  }

  ShownTable season() {
    List<Effect> effects = found.effects();
    List<String> header = new ArrayList<>(List.of("Over the season"));
    effects.forEach(
        each -> header.add(each.contrast().first() + " against " + each.contrast().second()));
    List<List<String>> rows = new ArrayList<>();
    if (!effects.isEmpty()) {
      add(rows, "Verdict", this::verdict);
      add(rows, what(), each -> words.difference(each.estimated().difference(), se(each)));
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
      addEquivalence(rows);
      addFurther(rows);
    }
    return new ShownTable(what() + " of the season", header, rows);
  }

  private String verdict(Effect effect) {
    boolean refused = effect.verdict() == null && found.outcome().primary();
    return refused ? "none" : FindingsWords.verdict(effect, words);
  }

  private void addAdjusted(List<List<String>> rows) {
    String how = found.outcome().primary() ? "p, Holm" : "p, Benjamini and Hochberg";
    if (!found.outcome().primary() || found.effects().size() > 1) {
      add(rows, how, each -> EffectWords.plainP(each.pAdjusted()));
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

  private static String df(double df) {
    if (Double.isNaN(df)) {
      return "–";
    }
    return Math.abs(df - Math.rint(df)) < 1e-6
        ? Long.toString(Math.round(df))
        : String.format(Locale.ROOT, "%.2f", df);
  }

  ShownTable byUnit() {
    List<String> arms = OutcomeFigures.arms(facts, found.table());
    List<String> header = new ArrayList<>(List.of(FindingsWords.capital(facts.unitWord())));
    header.addAll(arms);
    boolean pair = arms.size() == 2;
    if (pair) {
      header.add(what() + " " + arms.get(1) + (words.isRatio() ? " : " : " − ") + arms.get(0));
    }
    List<List<String>> rows = new ArrayList<>();
    for (String unit : found.table().units()) {
      List<String> row = new ArrayList<>(List.of(unit));
      for (String arm : arms) {
        row.add(words.amount(season(found, unit, arm)));
      }
      if (pair) {
        double difference = season(found, unit, arms.get(1)) - season(found, unit, arms.get(0));
        row.add(words.amount(difference));
      }
      rows.add(row);
    }
    return new ShownTable("Season of each " + facts.unitWord() + inUnit(), header, rows);
  }

  List<ShownTable> model() {
    DatesModel model = found.support().dates();
    if (model == null) {
      return List.of();
    }
    List<List<String>> tests = new ArrayList<>();
    model.tests().forEach(test -> tests.add(test(test)));
    List<List<String>> variances = new ArrayList<>();
    for (MixedFit.Variance own : model.variances()) {
      variances.add(variance(String.join(" by ", own.within()), own.variance()));
    }
    variances.add(variance("plot on a date (residual)", model.residualVariance()));
    if (!Double.isNaN(found.table().withinVariance())) {
      variances.add(variance("values of one plot and date", found.table().withinVariance()));
    }
    return List.of(
        new ShownTable(
            "Mixed model of all dates: tests",
            List.of("Term", "F", "Degrees of freedom", "p"),
            tests),
        new ShownTable(
            "Mixed model of all dates: variances" + (words.isRatio() ? ", log scale" : ""),
            List.of("Between", "Variance", "Standard deviation"),
            variances));
  }

  private static List<String> test(MarginalTests.Test test) {
    return test.isEstimable()
        ? List.of(
            test.term(),
            DisplayNumber.significant(test.f(), 4),
            df(test.numeratorDf()) + " and " + df(test.denominatorDf()),
            EffectWords.plainP(test.p()))
        : List.of(test.term(), "not estimable", "–", "–");
  }

  private static List<String> variance(String of, double variance) {
    return List.of(
        of,
        DisplayNumber.significant(variance, 4),
        DisplayNumber.significant(Math.sqrt(variance), 3));
  }

  ShownTable values() {
    SeasonTable table = found.table();
    List<String> header =
        new ArrayList<>(
            List.of(
                "Plot",
                FindingsWords.capital(facts.unitWord()),
                FindingsWords.capital(facts.factor())));
    table.dates().forEach(date -> header.add(OutcomeFigures.date(date)));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < table.plots().size(); i++) {
      Plot plot = table.plots().get(i);
      List<String> row = new ArrayList<>(List.of(plot.code(), plot.unit(), plot.arm()));
      for (double value : table.values()[i]) {
        row.add(words.amount(value));
      }
      rows.add(row);
    }
    return new ShownTable("All values, averaged over a plot and date" + inUnit(), header, rows);
  }
}
