package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.trials.analysis.numeric.Cholesky;
import org.jspecify.annotations.Nullable;

/**
 * Whether plots that are read again and again may be analysed as if dates were given out by chance:
 * the differences of any two dates must then vary alike.
 *
 * @param mauchlyW 0 to 1; 1 where all differences vary alike
 * @param greenhouseGeisser epsilon, 1/(dates - 1) to 1; degrees of freedom shrink by it
 * @param huynhFeldt epsilon, a less severe estimate, at most 1
 */
public record Sphericity(double mauchlyW, double greenhouseGeisser, double huynhFeldt) {

  /**
   * W = det(C S C') / (tr(C S C') / (m - 1))^(m - 1) and epsilon = tr(C S C')² / ((m - 1) tr((C S
   * C')²)) with orthonormal contrasts C of the m dates and the covariance S of complete units;
   * epsilon of Huynh and Feldt is (n (m - 1) e - 2) / ((m - 1) (n - 1 - (m - 1) e)).
   *
   * @param values {@code [unit][date]}, complete; two dates and two units at least
   * @source mauchly1940, greenhouse1959, huynh1976
   */
  public static Sphericity of(double[][] values) {
    return of(values, values.length);
  }

  /**
   * The same of units in groups that had different treatments, each value less the mean of its
   * group and date; null where there are too few complete units to tell, or none differ.
   *
   * @param values {@code [unit][date]}; units with a NaN are left out
   * @param groups of the units
   */
  public static @Nullable Sphericity within(double[][] values, List<String> groups) {
    Map<String, List<double[]>> complete = new LinkedHashMap<>();
    for (int unit = 0; unit < values.length; unit++) {
      if (Arrays.stream(values[unit]).noneMatch(Double::isNaN)) {
        complete.computeIfAbsent(groups.get(unit), group -> new ArrayList<>()).add(values[unit]);
      }
    }
    List<double[]> deviations = new ArrayList<>();
    complete.values().forEach(group -> deviations.addAll(lessMean(group)));
    int dates = values.length == 0 ? 0 : values[0].length;
    int units = deviations.size() - complete.size() + 1;
    if (dates < 3 || units <= dates) {
      return null;
    }
    Sphericity found = of(deviations.toArray(double[][]::new), units);
    return Double.isNaN(found.greenhouseGeisser) ? null : found;
  }

  private static List<double[]> lessMean(List<double[]> group) {
    int dates = group.get(0).length;
    double[] mean = new double[dates];
    for (double[] unit : group) {
      for (int date = 0; date < dates; date++) {
        mean[date] += unit[date] / group.size();
      }
    }
    return group.stream()
        .map(unit -> IntStream.range(0, dates).mapToDouble(i -> unit[i] - mean[i]).toArray())
        .toList();
  }

  /**
   * @param units that the covariance's degrees of freedom would come from, plus one
   */
  private static Sphericity of(double[][] values, int units) {
    int dates = values[0].length;
    int contrasts = dates - 1;
    double[][] covariance = covarianceOfContrasts(values, contrasts);
    double trace = 0;
    double squares = 0;
    for (int i = 0; i < contrasts; i++) {
      trace += covariance[i][i];
      for (int j = 0; j < contrasts; j++) {
        squares += covariance[i][j] * covariance[i][j];
      }
    }
    double mauchly = Math.exp(logDeterminant(covariance) - contrasts * Math.log(trace / contrasts));
    double epsilon = trace * trace / (contrasts * squares);
    double huynh =
        (units * contrasts * epsilon - 2) / (contrasts * (units - 1 - contrasts * epsilon));
    return new Sphericity(mauchly, epsilon, Math.min(1, huynh));
  }

  /** What it means, in a sentence. */
  public Remark remark() {
    String sentence =
        "Differences between dates do not vary alike (Mauchly's W %.3g); a plain split-plot test of"
            + " dates would have to shrink its degrees of freedom by %.2f (Greenhouse and Geisser)"
            + " or %.2f (Huynh and Feldt). A correlation over time is the better way.";
    return greenhouseGeisser < 0.75
        ? Remark.warning(sentence, mauchlyW, greenhouseGeisser, huynhFeldt)
        : Remark.note(
            "Differences between dates vary about alike (epsilon %.2f).", greenhouseGeisser);
  }

  /** Helmert's contrasts of neighbouring dates, made orthonormal. */
  private static double[][] covarianceOfContrasts(double[][] values, int contrasts) {
    int units = values.length;
    double[][] contrasted = new double[units][contrasts];
    double[] mean = new double[contrasts];
    for (int unit = 0; unit < units; unit++) {
      double sum = values[unit][0];
      for (int k = 1; k <= contrasts; k++) {
        double before = sum / k;
        contrasted[unit][k - 1] = (values[unit][k] - before) * Math.sqrt(k / (k + 1.0));
        sum += values[unit][k];
        mean[k - 1] += contrasted[unit][k - 1] / units;
      }
    }
    double[][] covariance = new double[contrasts][contrasts];
    for (double[] unit : contrasted) {
      for (int i = 0; i < contrasts; i++) {
        for (int j = 0; j < contrasts; j++) {
          covariance[i][j] += (unit[i] - mean[i]) * (unit[j] - mean[j]) / (units - 1);
        }
      }
    }
    return covariance;
  }

  /** Minus infinity where the contrasts span fewer dimensions than there are. */
  private static double logDeterminant(double[][] matrix) {
    int order = matrix.length;
    double[] flat = new double[order * order];
    for (int i = 0; i < order; i++) {
      System.arraycopy(matrix[i], 0, flat, i * order, order);
    }
    return Cholesky.factor(flat, order)
        ? Cholesky.logDeterminant(flat, order)
        : Double.NEGATIVE_INFINITY;
  }
}
