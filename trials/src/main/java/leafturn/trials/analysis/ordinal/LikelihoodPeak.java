package leafturn.trials.analysis.ordinal;

import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import org.hipparchus.exception.MathRuntimeException;
import org.jspecify.annotations.Nullable;

/**
 * Where the likelihood of a cumulative logit is highest; without groups where their spread is best
 * at zero. What stands here was seen to be a maximum: flat, nowhere curved upwards, and the same
 * from twice the points of the integrals.
 *
 * @param best its value is minus the log likelihood
 * @param hessian of minus the log likelihood
 * @param sd of the groups on the logit scale; 0 without groups or at the boundary
 */
record LikelihoodPeak(NewtonMinimum.Point best, double[][] hessian, double sd) {
  private static final double FLAT = 1e-6;

  /** Largest slope at which a search that stalled has ended well. */
  private static final double FLAT_ENOUGH = 1e-4;

  /** Spreads the search starts from, smallest first: at zero the likelihood is flat. */
  private static final double[] STARTS = {0.05, 0.5, 1, 2, 4, 8, 16};

  /** How much thresholds and effects grow with s²: 3 / pi², of a logistic's variance. */
  private static final double GROWTH = 3 / (Math.PI * Math.PI);

  /** Where a search has run along the rising likelihood to the end of its range. */
  private static final double UNBOUNDED = 0.9 * CumulativeLogit.LARGEST_SPREAD;

  /** Most by which twice the points may move the log likelihood. */
  private static final double SAME = 1e-6;

  /**
   * Fits without groups first, then with them from the spread that starts best; from the others
   * where that leads to no maximum.
   *
   * @param count how many classes there are
   * @param groups rows of each group; empty for none
   * @throws TrialFaultException where there is no maximum, with the reason
   */
  static LikelihoodPeak of(int[] classes, int count, double[][] rows, List<int[]> groups) {
    CumulativeLogit plain = new CumulativeLogit(classes, count, rows, List.of());
    NewtonMinimum.Point without = NewtonMinimum.from(plain.start(), plain, FLAT);
    CumulativeLogit grouped = new CumulativeLogit(classes, count, rows, groups);
    List<double[]> starts = groups.isEmpty() ? List.of() : starts(grouped, without);
    if (starts.isEmpty()) {
      LikelihoodPeak peak = peak(plain, without, 0);
      if (peak == null) {
        throw new TrialFaultException(
            "The search for the effects on the classes found no end; join classes, or leave a term out.");
      }
      return peak;
    }
    for (double[] start : starts) {
      NewtonMinimum.Point best = NewtonMinimum.from(start, grouped, FLAT);
      double sd = Math.abs(best.position()[start.length - 1]);
      if (sd > UNBOUNDED) {
        throw new TrialFaultException(
            "The variance of the random term has no finite estimate: ratings change so little within its groups that the likelihood still rises at a variance of %,.0f. No test of the classes holds; analyse the ratings as numbers."
                .formatted(sd * sd));
      }
      LikelihoodPeak peak = peak(grouped, best, sd);
      if (peak != null && best.value() < without.value() + SAME) {
        return peak;
      }
    }
    throw new TrialFaultException(
        "The search for the variance of the random term found no maximum of the likelihood; join classes, or leave a term out.");
  }

  /** Starts that gain on no groups, the best first; none where the spread is best at zero. */
  private static List<double[]> starts(CumulativeLogit grouped, NewtonMinimum.Point without) {
    return Arrays.stream(STARTS)
        .mapToObj(spread -> grouped.at(start(without.position(), spread)))
        .filter(start -> start.value() < without.value())
        .sorted((a, b) -> Double.compare(a.value(), b.value()))
        .map(NewtonMinimum.Point::position)
        .toList();
  }

  private static double[] start(double[] without, double spread) {
    double[] start = Arrays.copyOf(without, without.length + 1);
    double growth = Math.sqrt(1 + GROWTH * spread * spread);
    Arrays.setAll(start, k -> growth * start[k]);
    start[without.length] = spread;
    return start;
  }

  private static @Nullable LikelihoodPeak peak(
      CumulativeLogit likelihood, NewtonMinimum.Point best, double sd) {
    if (!Double.isFinite(best.value()) || best.gradientSize() > FLAT_ENOUGH) {
      return null;
    }
    double[][] hessian = NewtonMinimum.hessian(best, likelihood, 1e-5);
    double[] curvatures = curvatures(hessian);
    boolean downwards = Arrays.stream(curvatures).min().orElse(0) < -1e-6 * largest(curvatures);
    boolean rough = Math.abs(likelihood.finer().at(best.position()).value() - best.value()) > SAME;
    return downwards || rough ? null : new LikelihoodPeak(best, hessian, sd);
  }

  private static double largest(double[] curvatures) {
    return Arrays.stream(curvatures).max().orElse(0);
  }

  private static double[] curvatures(double[][] hessian) {
    try {
      return Matrices.eigen(hessian).getEigenvalues();
    } catch (MathRuntimeException noEnd) {
      return new double[] {Double.NEGATIVE_INFINITY};
    }
  }
}
