package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.multiplicity.LargestT;
import leafturn.trials.analysis.numeric.Matrices;
import org.jspecify.annotations.Nullable;

/**
 * The difference of two levels of a factor at each time, with intervals that hold for all times at
 * once, and any weighted sum of them, such as the season's mean. Other factors count every
 * combination the same; covariates are at their means.
 */
public final class DifferencesOverTimes {
  private final MixedFit fit;
  private final Approximation by;
  private final List<String> times;
  private final List<double[]> functions = new ArrayList<>();
  private final List<Estimate> each = new ArrayList<>();

  /**
   * @param levels of the factor: the first less the second
   * @param time the factor of the times, part of a product with the first factor
   */
  public DifferencesOverTimes(
      MixedFit fit, Approximation by, String factor, List<String> levels, String time) {
    this.fit = fit;
    this.by = by;
    this.times = fit.frame().factor(time).levels();
    MeanFunctions means = new MeanFunctions(fit);
    for (String at : times) {
      double[] first = means.mean(cell(factor, levels.get(0), time, at));
      double[] second = means.mean(cell(factor, levels.get(1), time, at));
      double[] difference = first == null || second == null ? null : less(first, second);
      each.add(Estimate.of(fit, by, difference));
      functions.add(difference == null ? new double[0] : difference);
    }
  }

  /**
   * Estimated means of a level at each time; NaN where one cannot be estimated.
   *
   * @param time the factor of the times
   */
  public static List<Double> means(MixedFit fit, String factor, String level, String time) {
    MeanFunctions means = new MeanFunctions(fit);
    return fit.frame().factor(time).levels().stream()
        .map(at -> means.mean(cell(factor, level, time, at)))
        .map(function -> function == null ? Double.NaN : fit.value(function))
        .toList();
  }

  private static Map<String, String> cell(String factor, String level, String time, String at) {
    Map<String, String> cell = new LinkedHashMap<>();
    cell.put(factor, level);
    cell.put(time, at);
    return cell;
  }

  private static double[] less(double[] first, double[] second) {
    double[] less = new double[first.length];
    Arrays.setAll(less, i -> first[i] - second[i]);
    return less;
  }

  /** The times, in the order of the differences. */
  public List<String> times() {
    return times;
  }

  /** The difference at each time; what cannot be estimated is NaN. */
  public List<Estimate> each() {
    return each;
  }

  /**
   * A sum of the differences, each times its weight.
   *
   * @param weights one for each time
   * @return null where a time that counts cannot be estimated
   */
  public @Nullable Estimate weighted(double[] weights) {
    double[] sum = null;
    for (int i = 0; i < weights.length; i++) {
      double[] own = functions.get(i);
      if (weights[i] == 0) {
        continue;
      }
      if (own.length == 0) {
        return null;
      }
      double[] added = sum == null ? new double[own.length] : sum;
      for (int k = 0; k < own.length; k++) {
        added[k] += weights[i] * own[k];
      }
      sum = added;
    }
    return sum == null ? null : Estimate.of(fit, by, sum);
  }

  /**
   * How many standard errors an interval reaches to either side, so that all intervals hold at once
   * with a given probability; NaN for what cannot be estimated.
   *
   * @param levelFraction as 0.95
   * @source genzbretz2009, section 2.2
   */
  public double[] simultaneousReach(double levelFraction) {
    int[] known =
        IntStream.range(0, each.size())
            .filter(i -> each.get(i).isEstimable() && each.get(i).df() > 0)
            .toArray();
    double[] reach = new double[each.size()];
    Arrays.fill(reach, Double.NaN);
    if (known.length == 0) {
      return reach;
    }
    LargestT largest = LargestT.ofDates(correlation(known));
    Map<Double, Double> byFreedom = new LinkedHashMap<>();
    for (int i : known) {
      double df = Math.round(each.get(i).df() * 1e6) / 1e6;
      reach[i] =
          byFreedom.computeIfAbsent(df, freedom -> largest.quantile(1 - levelFraction, freedom));
    }
    return reach;
  }

  private double[][] correlation(int[] known) {
    double[][] rows = Arrays.stream(known).mapToObj(functions::get).toArray(double[][]::new);
    double[][] covariance =
        Matrices.product(Matrices.product(rows, by.covariance()), Matrices.transpose(rows));
    double[][] correlation = new double[rows.length][rows.length];
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < rows.length; j++) {
        double size = Math.sqrt(covariance[i][i] * covariance[j][j]);
        correlation[i][j] = i == j ? 1 : covariance[i][j] / size;
      }
    }
    return correlation;
  }
}
