package leafturn.trials.observation;

import leafturn.trials.analysis.numeric.Cholesky;

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
    int units = values.length;
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
