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
import org.jspecify.annotations.Nullable;

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
  /** An effect this far out along which the likelihood is this flat goes on without end. */
  private static final double FAR = 15;

  private static final double FLAT = 1e-4;

  /** A term's likelihood ratio cannot be below zero by more than rounding. */
  private static final double CLEAR_LOSS = 1e-4;

  /** Rows a class on average; with fewer there is nothing but thresholds to estimate (assumed). */
  private static final int LEAST_ROWS = 2;

  /** Most classes; ratings have 9, percentages in steps of one have 101. */
  private static final int MOST_CLASSES = 101;

  /**
   * A likelihood ratio test of a term.
   *
   * @param chiSquared twice the loss; NaN where not known
   * @param p NaN where not known
   * @param untested why there is no p; null where there is one
   */
  public record Test(String term, int df, double chiSquared, double p, @Nullable String untested) {
    private static Test none(String term, int df, String why) {
      return new Test(term, df, Double.NaN, Double.NaN, why);
    }
  }

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
      LikelihoodPeak peak = peak(chosen(columns.rows(), used));
      if (peak.sd() == 0 && !groups.isEmpty()) {
        warnings.add("The random term is held at zero: the groups differ no more than chance.");
      }
      List<Coefficient> coefficients = coefficients(peak, columns, used);
      if (coefficients.stream().anyMatch(own -> Double.isNaN(own.se()))) {
        warnings.add(
            "Where no standard error stands, the likelihood hardly changes with the coefficient.");
      }
      double value = peak.best().value();
      return new OrdinalAnalysis(
          observed.length, -value, coefficients, tests(value), peak.sd(), warnings);
    }

    private LikelihoodPeak peak(double[][] rows) {
      return LikelihoodPeak.of(observed, classes.levels().size(), rows, groups);
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

    private List<Coefficient> coefficients(LikelihoodPeak peak, FixedColumns columns, int[] used) {
      NewtonMinimum.Point best = peak.best();
      double[][] covariance = Matrices.inverseOfSymmetric(peak.hessian());
      List<Coefficient> all = new ArrayList<>();
      int thresholds = classes.levels().size() - 1;
      for (int j = 0; j < thresholds; j++) {
        String name = classes.levels().get(j) + "|" + classes.levels().get(j + 1);
        all.add(new Coefficient(name, best.position()[j], se(covariance[j][j])));
      }
      for (int k = 0; k < used.length; k++) {
        int at = thresholds + k;
        double estimate = best.position()[at];
        if (Math.abs(estimate) > FAR && peak.hessian()[at][at] < FLAT) {
          warnings.add(
              "%s separates the classes completely; its estimate has no finite value, but its test holds."
                  .formatted(columns.name(used[k])));
        }
        all.add(new Coefficient(columns.name(used[k]), estimate, se(covariance[at][at])));
      }
      return all;
    }

    /** NaN where the likelihood is too flat to tell it. */
    private static double se(double variance) {
      return variance > 0 ? Math.sqrt(variance) : Double.NaN;
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
        tests.add(test(model.fixed().get(term).toString(), df, chosen(rows, others), full));
      }
      return tests;
    }

    private Test test(String term, int df, double[][] others, double full) {
      if (df == 0) {
        return Test.none(term, df, "the other terms leave nothing of it.");
      }
      try {
        double chiSquared = 2 * (peak(others).best().value() - full);
        if (chiSquared < -CLEAR_LOSS) {
          return Test.none(term, df, "the search ended below the maximum.");
        }
        double above = Math.max(0, chiSquared);
        return new Test(term, df, above, Tails.chiSquaredAbove(above, df), null);
      } catch (TrialFaultException noMaximum) {
        return Test.none(term, df, "without this term there is no fit. " + noMaximum.getMessage());
      }
    }
  }
}
