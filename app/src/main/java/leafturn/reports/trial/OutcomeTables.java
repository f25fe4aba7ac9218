package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.findings.DatesModel;
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
    return new EffectTable(facts, found).season();
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
            EffectTable.df(test.numeratorDf()) + " and " + EffectTable.df(test.denominatorDf()),
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
