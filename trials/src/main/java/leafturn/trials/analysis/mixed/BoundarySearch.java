package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import org.jspecify.annotations.Nullable;

/**
 * Puts variances that the data pull below 0 exactly at 0, and says so. At 0 the likelihood is flat
 * in the factor L by construction; whether 0 is right shows in its slope with the variance itself,
 * which must not be downhill.
 *
 * @source self1987, section 2
 */
final class BoundarySearch {
  private static final double NEARLY_ZERO = 0.02;
  private static final double SAME_VALUE = 1e-6;

  /** Natural logarithm of 100. */
  private static final double MUCH_SMALLER = Math.log(100);

  /** How a variance of one time is named that the data want at zero. */
  static final String SPREAD = "residual variance at time";

  private static final String OVER_TIME = "correlation over time";
  private static final String PERFECT =
      ": its effects are perfectly correlated, or one cannot be told apart";

  /** A standard deviation of this share of the largest is none. */
  private static final double NOTHING = 1e-5;

  private BoundarySearch() {}

  static NewtonMinimum.Point settle(
      NewtonMinimum.Point lowest, RestrictedLikelihood likelihood, List<String> boundary) {
    NewtonMinimum.Point best = lowest;
    CovarianceStructure structure = likelihood.structure();
    for (int set = 0; set < structure.effects().size(); set++) {
      RandomEffects effects = structure.effects().get(set);
      for (int row = 0; row < effects.size(); row++) {
        NewtonMinimum.Point without = withoutRow(best, likelihood, set, row);
        if (without != null) {
          best = without;
          boundary.add(name(effects, row));
        }
      }
      if (isSingular(structure.factor(best.position(), set))) {
        boundary.add(effects.label() + PERFECT);
      }
    }
    if (structure.time().isAtLimit(structure.timeParameters(best.position()))) {
      boundary.add(OVER_TIME + ": at the limit of what is possible");
    }
    for (int time = 0; time < structure.time().spreads(); time++) {
      if (vanishes(best, likelihood, time)) {
        boundary.add(spread(time, structure.time().spreads()));
      }
    }
    addUnstructured(structure.time(), structure.timeParameters(best.position()), boundary);
    return best;
  }

  /** Free variances that lie at zero beside the largest of them. */
  private static void addUnstructured(TimeCorrelation time, double[] free, List<String> boundary) {
    double[] sds = time.spreads() > 0 ? null : time.sdRatios(free);
    if (sds == null) {
      return;
    }
    double largest = Arrays.stream(sds).max().orElse(0);
    for (int i = 0; i < sds.length; i++) {
      if (sds[i] < NOTHING * largest) {
        boundary.add(spread(i, sds.length));
      }
    }
  }

  private static String spread(int time, int times) {
    return "%s %d of %d: best at zero, and taken as near to it as the search came"
        .formatted(SPREAD, time + 1, times);
  }

  /** Whether what is told is a variance of exactly 0, and no limit that was come near to. */
  static boolean isHeld(String told) {
    return !told.startsWith(SPREAD) && !told.startsWith(OVER_TIME) && !told.endsWith(PERFECT);
  }

  /**
   * Whether the data want no variance of its own at a time: with its standard deviation a hundred
   * times smaller the likelihood is not worse.
   */
  private static boolean vanishes(
      NewtonMinimum.Point best, RestrictedLikelihood likelihood, int time) {
    CovarianceStructure structure = likelihood.structure();
    double[] position = best.position().clone();
    int first = structure.timeOffset() + 1;
    if (time > 0) {
      position[first + time - 1] -= MUCH_SMALLER;
    } else {
      // All else is relative to the first time, and so grows where that shrinks.
      for (int i = 0; i < structure.timeOffset(); i++) {
        position[i] *= Math.exp(MUCH_SMALLER);
      }
      for (int k = 1; k < structure.time().spreads(); k++) {
        position[first + k - 1] += MUCH_SMALLER;
      }
    }
    // Where all values of a time are alike it grows beyond what numbers hold.
    double value = likelihood.at(position).value();
    return Double.isNaN(value) || value <= best.value() + SAME_VALUE;
  }

  private static String name(RandomEffects effects, int row) {
    return effects.size() == 1 && effects.effects().get(0).equals("(intercept)")
        ? effects.label()
        : effects.label() + ": " + effects.effects().get(row);
  }

  private static NewtonMinimum.@Nullable Point withoutRow(
      NewtonMinimum.Point best, RestrictedLikelihood likelihood, int set, int row) {
    CovarianceStructure structure = likelihood.structure();
    int first = structure.offset(set) + CovarianceStructure.entries(row);
    double[] position = best.position().clone();
    for (int j = first; j <= first + row; j++) {
      if (Math.abs(position[j]) > NEARLY_ZERO) {
        return null;
      }
      position[j] = 0;
    }
    NewtonMinimum.Point without = NewtonMinimum.from(position, likelihood, likelihood.flat());
    RestrictedLikelihood.State state = likelihood.state(without.position());
    if (state == null || without.value() > best.value() + SAME_VALUE) {
      return null;
    }
    double variance = state.squares() / likelihood.freedom();
    double slope =
        state.traces().gamma()[set][row][row] - state.falls().gamma()[set][row][row] / variance;
    return slope >= -1e-6 && without.position()[first + row] == 0 ? without : null;
  }

  private static boolean isSingular(double[][] factor) {
    if (factor.length == 1) {
      return false;
    }
    for (int i = 0; i < factor.length; i++) {
      double variance = 0;
      for (int j = 0; j <= i; j++) {
        variance += factor[i][j] * factor[i][j];
      }
      if (variance > 0 && factor[i][i] * factor[i][i] < 1e-8 * variance) {
        return true;
      }
    }
    return false;
  }
}
