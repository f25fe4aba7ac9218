package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.data.TrialFaultException;
import org.jspecify.annotations.Nullable;

/**
 * Independent blocks of one design with their observations, and the way in which their covariance
 * is worked on: by rows where errors are correlated over time, by random effects where they are
 * not.
 *
 * @param joined the basis of the fixed part and the observations of each member, side by side,
 *     {@code [row * columns + column]}
 * @param cross null where the covariance is worked on by rows
 */
record Block(Pattern pattern, int directions, double[] joined, @Nullable CrossProducts cross) {
  /** Observations whose covariance is kept as one dense matrix. */
  private static final int MOST_ROWS = 4000;

  /** Effects that are kept as a dense matrix when the set with the most is eliminated. */
  private static final int MOST_EFFECTS = 4000;

  /** Rows times effects up to which how V⁻¹ moves is worked out. */
  private static final long MOST_PAIRS = 20_000_000;

  /** Beyond so many of them the Hessian is not taken by differences. */
  private static final int DEAR_EFFECTS = 150;

  /**
   * The blocks of a model.
   *
   * @param observed the observations less what least squares explains
   * @param byRows whether their covariance is worked on by rows
   * @throws TrialFaultException where they are too large
   */
  static List<Block> all(List<Pattern> patterns, double[] observed, boolean byRows) {
    List<Block> blocks = new ArrayList<>();
    for (Pattern pattern : patterns) {
      if (byRows && pattern.size() > MOST_ROWS) {
        throw new TrialFaultException(
            "%,d observations hang together and are correlated over time; up to %,d can be worked on at once. Average subsamples of a plot and date first, or leave out the term that joins the yards."
                .formatted(pattern.size(), MOST_ROWS));
      }
      CrossProducts cross = byRows ? null : new CrossProducts(checked(pattern));
      int directions = pattern.basis().length / pattern.size();
      blocks.add(new Block(pattern, directions, joined(pattern, directions, observed), cross));
    }
    return blocks;
  }

  private static Pattern checked(Pattern pattern) {
    int all = 0;
    int largest = 0;
    for (int set = 0; set < pattern.groups().length; set++) {
      int groups = Arrays.stream(pattern.groups()[set]).max().orElse(-1) + 1;
      int effects = groups * pattern.columns()[set].length;
      all += effects;
      largest = Math.max(largest, effects);
    }
    if (all - largest > MOST_EFFECTS) {
      throw new TrialFaultException(
          "%,d random effects hang together beside the %,d of the largest term; up to %,d can be worked on at once. Leave out a term, or average over one first."
              .formatted(all - largest, largest, MOST_EFFECTS));
    }
    return pattern;
  }

  private static double[] joined(Pattern pattern, int directions, double[] observed) {
    int columns = directions + pattern.count();
    double[] joined = new double[pattern.size() * columns];
    for (int i = 0; i < pattern.size(); i++) {
      System.arraycopy(pattern.basis(), i * directions, joined, i * columns, directions);
      for (int m = 0; m < pattern.count(); m++) {
        joined[i * columns + directions + m] = observed[pattern.members().get(m)[i]];
      }
    }
    return joined;
  }

  /** Columns of {@link #joined}. */
  int columns() {
    return directions + pattern.count();
  }

  /**
   * Whether how V⁻¹ moves with each variance can be worked out, which takes every pair of effects.
   */
  boolean allowsMoves() {
    return cross == null || (long) pattern.size() * cross.effects() <= MOST_PAIRS;
  }

  /** Whether a factor takes long. */
  boolean isDear() {
    return cross != null && cross.remaining() > DEAR_EFFECTS;
  }

  /** V at one point; null where it is not positive definite. */
  @Nullable BlockFactor factor(CovarianceStructure structure, double[] theta) {
    return cross == null
        ? RowFactor.of(pattern, structure, theta)
        : EffectFactor.of(cross, pattern.size(), structure, theta);
  }

  /** Adds Q'V⁻¹Q, its lower triangle, and Q'V⁻¹y of all members. */
  void addInformation(double[] information, double[] moments, double[] solved) {
    int columns = columns();
    for (int i = 0; i < pattern.size(); i++) {
      double sum = 0;
      for (int m = directions; m < columns; m++) {
        sum += solved[i * columns + m];
      }
      for (int j = 0; j < directions; j++) {
        double direction = joined[i * columns + j];
        moments[j] += direction * sum;
        double left = pattern.count() * direction;
        for (int k = 0; k <= j; k++) {
          information[j * directions + k] += left * solved[i * columns + k];
        }
      }
    }
  }

  /** V⁻¹Q. */
  double[] weighted(double[] solved) {
    double[] weighted = new double[pattern.size() * directions];
    for (int i = 0; i < pattern.size(); i++) {
      System.arraycopy(solved, i * columns(), weighted, i * directions, directions);
    }
    return weighted;
  }

  /** V⁻¹(y - Q c) of each member, {@code [row * members + member]}; x itself for V = 1. */
  double[] rest(double[] solved, double[] coefficients) {
    int count = pattern.count();
    int columns = columns();
    double[] rest = new double[pattern.size() * count];
    for (int i = 0; i < pattern.size(); i++) {
      double explained = 0;
      for (int j = 0; j < directions; j++) {
        explained += solved[i * columns + j] * coefficients[j];
      }
      for (int m = 0; m < count; m++) {
        rest[i * count + m] = solved[i * columns + directions + m] - explained;
      }
    }
    return rest;
  }

  /**
   * r'V⁻¹r over all members.
   *
   * @param rest V⁻¹r
   */
  double squares(double[] rest, double[] coefficients) {
    double[] left = rest(joined, coefficients);
    double squares = 0;
    for (int i = 0; i < rest.length; i++) {
      squares += left[i] * rest[i];
    }
    return squares;
  }
}
