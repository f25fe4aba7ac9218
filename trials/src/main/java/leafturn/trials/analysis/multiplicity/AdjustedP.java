package leafturn.trials.analysis.multiplicity;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Adjusted p values of several tests at once; each stands where its p value stood. */
public final class AdjustedP {
  private AdjustedP() {}

  /**
   * p times the number of tests.
   *
   * @source common practice, no source
   */
  public static double[] bonferroni(double[] p) {
    return mapped(p, value -> Math.min(1, value * p.length));
  }

  /**
   * 1 - (1 - p) to the number of tests.
   *
   * @source sidak1967
   */
  public static double[] sidak(double[] p) {
    return mapped(p, value -> -Math.expm1(p.length * Math.log1p(-value)));
  }

  /**
   * Step-down Bonferroni.
   *
   * @source holm1979
   */
  public static double[] holm(double[] p) {
    int[] order = rising(p);
    double[] adjusted = new double[p.length];
    double largest = 0;
    for (int i = 0; i < order.length; i++) {
      largest = Math.max(largest, Math.min(1, (p.length - i) * p[order[i]]));
      adjusted[order[i]] = largest;
    }
    return adjusted;
  }

  /**
   * The false discovery rate.
   *
   * @source benjaminihochberg1995
   */
  public static double[] benjaminiHochberg(double[] p) {
    int[] order = rising(p);
    double[] adjusted = new double[p.length];
    double smallest = 1;
    for (int i = order.length - 1; i >= 0; i--) {
      smallest = Math.min(smallest, p.length * p[order[i]] / (i + 1));
      adjusted[order[i]] = smallest;
    }
    return adjusted;
  }

  /**
   * The closed test of all subsets by Simes' inequality.
   *
   * @source hommel1988; wright1992, appendix
   */
  public static double[] hommel(double[] p) {
    int n = p.length;
    int[] order = rising(p);
    double[] adjusted = new double[n];
    double[] sorted = IntStream.of(order).mapToDouble(index -> p[index]).toArray();
    double whole = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n; i++) {
      whole = Math.min(whole, n * sorted[i] / (i + 1));
    }
    double[] least = new double[n];
    Arrays.fill(least, whole);
    for (int m = n - 1; m >= 2; m--) {
      double simes = Double.POSITIVE_INFINITY;
      for (int k = 2; k <= m; k++) {
        simes = Math.min(simes, m * sorted[n - m + k - 1] / k);
      }
      for (int i = 0; i < n; i++) {
        double candidate = i <= n - m ? Math.min(m * sorted[i], simes) : least[n - m];
        least[i] = Math.max(least[i], candidate);
      }
    }
    for (int i = 0; i < n; i++) {
      adjusted[order[i]] = Math.min(1, Math.max(least[i], sorted[i]));
    }
    return adjusted;
  }

  private static int[] rising(double[] p) {
    return IntStream.range(0, p.length)
        .boxed()
        .sorted((i, j) -> Double.compare(p[i], p[j]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static double[] mapped(double[] p, DoubleUnaryOperator by) {
    return Arrays.stream(p).map(by).toArray();
  }
}
