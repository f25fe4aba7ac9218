package leafturn.trials.analysis.ordinal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coding;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.mixed.RandomEffects;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Ordered ratings by a cumulative logit, with a random mean for the groups of one combination of
 * factors at most: the check on an analysis of the ratings as numbers.
 *
 * @param observations used
 * @param logLikelihood at its highest
 * @param coefficients thresholds between neighbouring classes, then effects in treatment coding
 * @param tests by twice the loss of log likelihood without each term
 * @param randomSd of the groups on the logit scale; 0 without groups or at the boundary
 * @param warnings what a reader should know
 */
public record OrdinalAnalysis(
    int observations,
    double logLikelihood,
    List<Coefficient> coefficients,
    List<Test> tests,
    double randomSd,
    List<String> warnings) {
  private static final double FLAT = 1e-6;
  private static final double FLAT_ENOUGH = 1e-5;
  private static final double A_LITTLE = 0.05;

  /** Rows a class on average; with fewer there is nothing but thresholds to estimate (assumed). */
  private static final int LEAST_ROWS = 2;

  /** Most classes; ratings have 9, percentages in steps of one have 101. */
  private static final int MOST_CLASSES = 101;

  /** A likelihood ratio test of a term. */
  public record Test(String term, int df, double chiSquared, double p) {}

  /**
   * Analyses a table on the ordinal scale.
   *
   * @throws TrialFaultException with a sentence for each fault of data or model
   */
  public static OrdinalAnalysis of(TrialTable table, TrialModel model) {
    check(model);
    ModelFrame frame = ModelFrame.of(table, model);
    String[] cells = table.cells(model.response());
    Factor classes = Factor.of(model.response(), cells, model.levels().get(model.response()));
    if (classes.levels().size() > MOST_CLASSES) {
      throw new TrialFaultException(
          "%s has %,d different values, which are no classes; use the identity or the log scale."
              .formatted(model.response(), classes.levels().size()));
    }
    int[] observed = Arrays.stream(frame.response().values()).mapToInt(v -> (int) v).toArray();
    if (Arrays.stream(observed).distinct().count() < classes.levels().size()
        || classes.levels().size() < 2) {
      throw new TrialFaultException(
          "%s needs at least two classes, each of them observed among the usable rows."
              .formatted(model.response()));
    }
    try {
      return new Fit(model, frame, classes, observed).analysis();
    } catch (MathRuntimeException noEnd) {
      throw new TrialFaultException(
          "The search for the effects on the classes of %s found no end: perhaps a treatment or a unit has all of its ratings in one class; join classes, or leave a term out."
              .formatted(model.response()));
    }
  }

  private static void check(TrialModel model) {
    List<String> faults = new ArrayList<>();
    if (model.overTime() != null) {
      faults.add(
          "scale is ordinal, which knows no correlation over time; give the plot as a random term instead.");
    }
    if (model.random().size() > 1) {
      faults.add("scale is ordinal, which takes one random term; name the plots alone.");
    }
    if (model.random().stream().anyMatch(term -> !term.slopes().isEmpty())) {
      faults.add("scale is ordinal, whose random term takes no slopes.");
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  /** One data set, fitted with and without each term. */
  private static final class Fit {
    private final TrialModel model;
    private final ModelFrame frame;
    private final Factor classes;
    private final int[] observed;
    private final List<int[]> groups;
    private final List<String> warnings;

    Fit(TrialModel model, ModelFrame frame, Factor classes, int[] observed) {
      this.model = model;
      this.frame = frame;
      this.classes = classes;
      this.observed = observed;
      this.warnings = new ArrayList<>(frame.notes());
      List<RandomTerm> random = model.random();
      this.groups =
          random.isEmpty()
              ? List.of()
              : CumulativeLogit.groups(RandomEffects.groups(random.get(0).within(), frame));
    }

    OrdinalAnalysis analysis() {
      FixedColumns columns = new FixedColumns(model, frame, Coding.TREATMENT);
      ColumnBasis basis = new ColumnBasis(columns.rows());
      int[] used =
          IntStream.range(0, columns.size())
              .filter(j -> columns.termOf(j) >= 0 && basis.isKept(j))
              .toArray();
      if (observed.length < LEAST_ROWS * classes.levels().size()) {
        warnings.add(
            "%d rows have %d different values of %s, fewer than two rows each; these are hardly classes: analyse such values as numbers, or join classes."
                .formatted(observed.length, classes.levels().size(), model.response()));
      }
      Lowest lowest = lowest(chosen(columns.rows(), used));
      if (lowest.sd == 0 && !groups.isEmpty()) {
        warnings.add("The random term is held at zero: the groups differ no more than chance.");
      }
      List<Coefficient> coefficients = coefficients(lowest, columns, used);
      double value = lowest.best.value();
      return new OrdinalAnalysis(
          observed.length, -value, coefficients, tests(value), lowest.sd, warnings);
    }

    /** The lowest point of a likelihood; without groups where their spread is best at zero. */
    private record Lowest(CumulativeLogit likelihood, NewtonMinimum.Point best, double sd) {}

    /**
     * Fits without groups first. At a spread of zero the likelihood is flat in the spread, so zero
     * is its lowest point if it rises a little beside it.
     */
    private Lowest lowest(double[][] rows) {
      int count = classes.levels().size();
      CumulativeLogit plain = new CumulativeLogit(observed, count, rows, List.of());
      NewtonMinimum.Point without = NewtonMinimum.from(plain.start(), plain, FLAT);
      if (groups.isEmpty()) {
        return new Lowest(plain, without, 0);
      }
      CumulativeLogit grouped = new CumulativeLogit(observed, count, rows, groups);
      double[] start = Arrays.copyOf(without.position(), without.position().length + 1);
      start[start.length - 1] = A_LITTLE;
      if (grouped.at(start).value() >= without.value()) {
        return new Lowest(plain, without, 0);
      }
      start[start.length - 1] = 0.5;
      NewtonMinimum.Point best = NewtonMinimum.from(start, grouped, FLAT_ENOUGH);
      return new Lowest(grouped, best, Math.abs(best.position()[start.length - 1]));
    }

    private static double[][] chosen(double[][] rows, int[] columns) {
      double[][] chosen = new double[rows.length][columns.length];
      for (int i = 0; i < rows.length; i++) {
        for (int k = 0; k < columns.length; k++) {
          chosen[i][k] = rows[i][columns[k]];
        }
      }
      return chosen;
    }

    private List<Coefficient> coefficients(Lowest lowest, FixedColumns columns, int[] used) {
      NewtonMinimum.Point best = lowest.best;
      double step = lowest.sd == 0 ? 1e-5 : 1e-3;
      double[][] covariance =
          Matrices.inverseOfSymmetric(NewtonMinimum.hessian(best, lowest.likelihood, step));
      List<Coefficient> all = new ArrayList<>();
      int thresholds = classes.levels().size() - 1;
      for (int j = 0; j < thresholds; j++) {
        String name = classes.levels().get(j) + "|" + classes.levels().get(j + 1);
        all.add(new Coefficient(name, best.position()[j], Math.sqrt(covariance[j][j])));
      }
      for (int k = 0; k < used.length; k++) {
        int at = thresholds + k;
        double estimate = best.position()[at];
        if (Math.abs(estimate) > 15) {
          warnings.add(
              "%s separates the classes completely; its estimate has no finite value, but its test holds."
                  .formatted(columns.name(used[k])));
        }
        all.add(new Coefficient(columns.name(used[k]), estimate, Math.sqrt(covariance[at][at])));
      }
      return all;
    }

    private List<Test> tests(double full) {
      FixedColumns columns = new FixedColumns(model, frame, Coding.SUM_TO_ZERO);
      double[][] rows = columns.rows();
      ColumnBasis basis = new ColumnBasis(rows);
      List<Test> tests = new ArrayList<>();
      for (int term = 0; term < model.fixed().size(); term++) {
        Set<Integer> left = new HashSet<>();
        for (int j : columns.columnsOf(term)) {
          left.add(j);
        }
        int[] others =
            IntStream.range(0, columns.size())
                .filter(j -> columns.termOf(j) >= 0 && basis.isKept(j) && !left.contains(j))
                .toArray();
        int df = (int) left.stream().filter(basis::isKept).count();
        double without = lowest(chosen(rows, others)).best.value();
        double chiSquared = Math.max(0, 2 * (without - full));
        double p = df == 0 ? Double.NaN : Tails.chiSquaredAbove(chiSquared, df);
        tests.add(new Test(model.fixed().get(term).toString(), df, chiSquared, p));
      }
      return tests;
    }
  }
}
