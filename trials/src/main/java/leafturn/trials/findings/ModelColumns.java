package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.findings.TrialFacts.Design;
import org.jspecify.annotations.Nullable;

/**
 * A trial as the mixed model sees it: the columns of its table and the terms its design asks for.
 * Values come on the scale of the analysis.
 *
 * @param baseline of each plot; empty where none was read
 */
record ModelColumns(TrialFacts facts, SeasonTable table, double[] baseline) {
  static final String DATE = "date";
  static final String PLOT = "plot";
  private static final String SECOND = "second factor";
  private static final String ROW = "row";
  private static final String COLUMN = "column";
  private static final String VALUE = "value";
  private static final String BASELINE = "baseline";

  /** One row for each plot and date that was read. */
  TrialTable byDate() {
    List<List<String>> rows = new ArrayList<>();
    for (int plot = 0; plot < table.plots().size(); plot++) {
      for (int date = 0; date < table.dates().size(); date++) {
        add(rows, plot, table.dates().get(date), table.values()[plot][date]);
      }
    }
    return tableOf(rows);
  }

  /** One row for each plot with its season. */
  TrialTable bySeason(double[] summaries) {
    List<List<String>> rows = new ArrayList<>();
    for (int plot = 0; plot < table.plots().size(); plot++) {
      add(rows, plot, "season", summaries[plot]);
    }
    return tableOf(rows);
  }

  private void add(List<List<String>> rows, int at, String date, double value) {
    if (Double.isNaN(value)) {
      return;
    }
    Plot plot = table.plots().get(at);
    List<String> row = new ArrayList<>();
    row.add(plot.unit());
    row.add(plot.arm());
    row.add(date);
    row.add(plot.code());
    row.add(Objects.requireNonNullElse(plot.secondArm(), "-"));
    row.add(Objects.requireNonNullElse(plot.row(), "-"));
    row.add(Objects.requireNonNullElse(plot.column(), "-"));
    row.add(Double.toString(value));
    row.add(hasBaseline() && !Double.isNaN(baseline[at]) ? Double.toString(baseline[at]) : "");
    rows.add(row);
  }

  private TrialTable tableOf(List<List<String>> rows) {
    List<String> columns =
        List.of(facts.unitWord(), facts.factor(), DATE, PLOT, SECOND, ROW, COLUMN, VALUE, BASELINE);
    List<Integer> lines = Stream.iterate(2, line -> line + 1).limit(rows.size()).toList();
    return new TrialTable(columns, rows, lines);
  }

  boolean hasBaseline() {
    return baseline.length > 0;
  }

  private boolean hasSecond() {
    return facts.design() == Design.SPLIT_PLOT || facts.design() == Design.STRIP_PLOT;
  }

  /** The groups of plots that the design forms, the plots themselves aside. */
  private List<RandomTerm> strata() {
    String unit = facts.unitWord();
    String factor = facts.factor();
    return switch (facts.design()) {
      case UNITS -> List.of(RandomTerm.mean(unit));
      case SPLIT_PLOT -> List.of(RandomTerm.mean(unit), RandomTerm.mean(unit, factor));
      case STRIP_PLOT ->
          List.of(
              RandomTerm.mean(unit), RandomTerm.mean(unit, factor), RandomTerm.mean(unit, SECOND));
      case LISTED -> hasUnits() ? List.of(RandomTerm.mean(unit)) : List.of();
      case LATIN_SQUARE -> List.of();
    };
  }

  /** Whether the units of the table can differ at random: a list may hold one alone. */
  private boolean hasUnits() {
    return switch (facts.design()) {
      case UNITS, SPLIT_PLOT, STRIP_PLOT -> true;
      case LISTED -> table.units().size() > 1;
      case LATIN_SQUARE -> false;
    };
  }

  /**
   * Rows and columns of a Latin square stay in the model however little they differ, so that (t -
   * 1)(t - 2) degrees of freedom judge its treatments; each treatment stands in each of them once.
   */
  private void addRowsAndColumns(List<Term> fixed) {
    if (facts.design() == Design.LATIN_SQUARE) {
      fixed.add(term(ROW));
      fixed.add(term(COLUMN));
    }
  }

  /** The model of the plots' seasons, with all pairs of arms. */
  TrialModel ofSeasons() {
    List<Term> fixed = new ArrayList<>(List.of(term(facts.factor())));
    addRowsAndColumns(fixed);
    if (hasSecond()) {
      fixed.add(term(SECOND));
      fixed.add(term(facts.factor(), SECOND));
    }
    Comparison all =
        new Comparison(
            facts.factor(), List.of(), null, 1 - Effect.ALPHA, Comparison.Multiplicity.NONE);
    return model(fixed, strata(), null, all);
  }

  /**
   * The model of all dates.
   *
   * @param correlation between the dates of a plot; null where they differ from their plot's mean
   *     independently, which is the same correlation between any two
   * @param homogeneous whether one slope on the baseline holds for all arms
   */
  TrialModel ofDates(OverTime.@Nullable Correlation correlation, boolean homogeneous) {
    List<Term> fixed = new ArrayList<>();
    fixed.add(term(facts.factor()));
    fixed.add(term(DATE));
    addRowsAndColumns(fixed);
    fixed.add(term(facts.factor(), DATE));
    if (hasSecond()) {
      fixed.add(term(SECOND));
      fixed.add(term(facts.factor(), SECOND));
      fixed.add(term(SECOND, DATE));
      fixed.add(term(facts.factor(), SECOND, DATE));
    }
    if (hasBaseline()) {
      fixed.add(term(BASELINE));
      if (!homogeneous) {
        fixed.add(term(BASELINE, facts.factor()));
      }
    }
    List<RandomTerm> random = new ArrayList<>(strata());
    if (hasUnits()) {
      random.add(RandomTerm.mean(facts.unitWord(), DATE));
    }
    if (correlation != OverTime.Correlation.UNSTRUCTURED) {
      random.add(
          facts.design() == Design.UNITS
              ? RandomTerm.mean(facts.unitWord(), facts.factor())
              : RandomTerm.mean(PLOT));
    }
    OverTime overTime = correlation == null ? null : new OverTime(List.of(PLOT), DATE, correlation);
    return model(fixed, random, overTime, null);
  }

  private TrialModel model(
      List<Term> fixed,
      List<RandomTerm> random,
      @Nullable OverTime overTime,
      @Nullable Comparison compare) {
    List<String> factors =
        fixed.stream()
            .flatMap(term -> term.variables().stream())
            .filter(name -> !name.equals(BASELINE))
            .distinct()
            .toList();
    Map<String, List<String>> levels = new LinkedHashMap<>();
    if (factors.contains(DATE)) {
      levels.put(DATE, table.dates());
    }
    return new TrialModel(
        VALUE,
        TrialModel.Scale.IDENTITY,
        factors,
        fixed.stream().anyMatch(term -> term.variables().contains(BASELINE))
            ? List.of(BASELINE)
            : List.of(),
        fixed,
        true,
        random,
        overTime,
        DegreesOfFreedom.KENWARD_ROGER,
        compare,
        levels);
  }

  private static Term term(String... variables) {
    return new Term(List.of(variables));
  }
}
