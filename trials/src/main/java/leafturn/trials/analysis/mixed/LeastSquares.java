package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * What least squares makes of the observations, so that the likelihood works on small numbers.
 *
 * @param level a level taken off all observations beforehand
 * @param coefficients of the orthonormal basis
 * @param scaledRest what is left, divided by {@code scale}
 * @param scale the root mean square of what is left
 */
record LeastSquares(double level, double[] coefficients, double[] scaledRest, double scale) {

  static LeastSquares of(MixedModel.Design design, double[] observed) {
    double level = level(design, observed);
    double[] coefficients = new double[design.basis().rank()];
    double[] rest = rest(design, observed, level, coefficients);
    double scale = sizeOf(rest, observed);
    Arrays.setAll(rest, i -> rest[i] / scale);
    return new LeastSquares(level, coefficients, rest, scale);
  }

  /** The estimates in the unit of the response. */
  MixedFit.Estimates estimates(
      MixedModel.Design design,
      RestrictedLikelihood.State state,
      int freedom,
      List<String> boundary,
      List<String> warnings) {
    double[] all = new double[coefficients.length];
    Arrays.setAll(all, k -> coefficients[k] + scale * state.coefficients()[k]);
    double variance = scale * scale * state.squares() / freedom;
    return new MixedFit.Estimates(
        all, constant(design, level), scale, variance, boundary, warnings);
  }

  /**
   * A level that is taken off all observations before anything else, so that a large mean costs no
   * digits: exact where the values are close to each other. 0 where the fixed part has no mean.
   */
  private static double level(MixedModel.Design design, double[] observed) {
    double[] ones = new double[observed.length];
    Arrays.fill(ones, 1);
    return design.basis().spans(ones) ? observed[0] : 0;
  }

  /** The level as coefficients of the basis. */
  private static double[] constant(MixedModel.Design design, double level) {
    double[] constant = new double[design.basis().rank()];
    for (double[] row : design.onBasis()) {
      for (int k = 0; k < constant.length; k++) {
        constant[k] += level * row[k];
      }
    }
    double largest = Arrays.stream(constant).map(Math::abs).max().orElse(0);
    Arrays.setAll(constant, k -> Math.abs(constant[k]) < 1e-12 * largest ? 0 : constant[k]);
    return constant;
  }

  /** What least squares leaves, in two passes. */
  private static double[] rest(
      MixedModel.Design design, double[] observed, double level, double[] coefficients) {
    double[] rest = observed.clone();
    Arrays.setAll(rest, i -> rest[i] - level);
    for (int pass = 0; pass < 2; pass++) {
      for (int k = 0; k < coefficients.length; k++) {
        double along = 0;
        for (int i = 0; i < rest.length; i++) {
          along += design.onBasis()[i][k] * rest[i];
        }
        coefficients[k] += along;
        for (int i = 0; i < rest.length; i++) {
          rest[i] -= along * design.onBasis()[i][k];
        }
      }
    }
    return rest;
  }

  private static double sizeOf(double[] rest, double[] observed) {
    double size = Math.sqrt(Matrices.dot(rest, rest) / rest.length);
    double whole = Math.sqrt(Matrices.dot(observed, observed) / observed.length);
    return size > 0 ? size : Math.max(whole, Double.MIN_NORMAL);
  }
}
