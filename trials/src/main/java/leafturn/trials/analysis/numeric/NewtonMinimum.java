package leafturn.trials.analysis.numeric;

import java.util.Arrays;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.jspecify.annotations.Nullable;

/**
 * Newton's method for a smooth function whose gradient is known. The Hessian is the difference of
 * gradients, brought up to date by each step as long as steps gain well; where it is not positive
 * its curvatures are taken by size, so that every step goes downhill, and steps are shortened until
 * the function falls enough.
 *
 * @source nocedal2006, algorithm 3.2 and section 3.4
 */
public final class NewtonMinimum {
  private static final int MOST_STEPS = 200;
  private static final double LONGEST_STEP = 3;
  private static final double ENOUGH_DECREASE = 1e-4;

  /** A step that leaves more than this share of the slope asks for a fresh Hessian. */
  private static final double SLOW_GAIN = 0.4;

  /** A function of several variables with its gradient. */
  public interface Function {
    /** The value and the gradient at a point; the value is infinite where there is none. */
    Point at(double[] position);

    /** The Hessian, or what is near it, at a point of the function. */
    default double[][] curvature(Point point) {
      return hessian(point, this, 1e-5);
    }
  }

  /** The function at one position. */
  public record Point(double[] position, double value, double[] gradient) {
    /** The largest slope. */
    public double gradientSize() {
      double size = 0;
      for (double slope : gradient) {
        size = Math.max(size, Math.abs(slope));
      }
      return size;
    }
  }

  private NewtonMinimum() {}

  /**
   * Goes downhill from a starting point.
   *
   * @param gradientTolerance the largest slope at which the search ends
   * @return the lowest point found
   */
  public static Point from(double[] start, Function function, double gradientTolerance) {
    Point best = function.at(start);
    int stalled = 0;
    double[][] hessian = null;
    for (int step = 0; step < MOST_STEPS && best.gradientSize() > gradientTolerance; step++) {
      if (hessian == null) {
        hessian = function.curvature(best);
      }
      Point next = downhill(best, direction(best, hessian), function);
      hessian = updated(hessian, best, next);
      boolean gains = next.value() < best.value() - 1e-13 * (1 + Math.abs(best.value()));
      boolean flatter = next.gradientSize() < 0.5 * best.gradientSize();
      stalled = gains || flatter ? 0 : stalled + 1;
      best = next;
      if (stalled > 2) {
        break;
      }
    }
    return best;
  }

  /**
   * The Hessian by central differences of the gradient.
   *
   * @param relativeStep step for a coordinate of size 1 or less
   */
  public static double[][] hessian(Point at, Function function, double relativeStep) {
    int size = at.position().length;
    double[][] hessian = new double[size][size];
    for (int i = 0; i < size; i++) {
      double step = relativeStep * Math.max(1, Math.abs(at.position()[i]));
      double[] above = function.at(moved(at.position(), i, step)).gradient();
      double[] below = function.at(moved(at.position(), i, -step)).gradient();
      for (int j = 0; j < size; j++) {
        hessian[i][j] = (above[j] - below[j]) / (2 * step);
      }
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        hessian[i][j] = (hessian[i][j] + hessian[j][i]) / 2;
        hessian[j][i] = hessian[i][j];
      }
    }
    return hessian;
  }

  /**
   * The Hessian after a step, from what the step has shown of it; null where that is too little, so
   * that it has to be taken anew.
   *
   * @source nocedal2006, eq. 6.19
   */
  private static double @Nullable [][] updated(double[][] hessian, Point from, Point to) {
    int size = hessian.length;
    double[] step = new double[size];
    double[] change = new double[size];
    for (int i = 0; i < size; i++) {
      step[i] = to.position()[i] - from.position()[i];
      change[i] = to.gradient()[i] - from.gradient()[i];
    }
    double[] expected = Matrices.product(hessian, step);
    double along = Matrices.dot(step, change);
    double before = Matrices.dot(step, expected);
    boolean gains = to.gradientSize() < SLOW_GAIN * from.gradientSize();
    if (!gains || !(along > 0) || !(before > 0)) {
      return null;
    }
    double[][] updated = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        updated[i][j] =
            hessian[i][j] - expected[i] * expected[j] / before + change[i] * change[j] / along;
      }
    }
    return updated;
  }

  private static double[] moved(double[] position, int coordinate, double step) {
    double[] moved = position.clone();
    moved[coordinate] += step;
    return moved;
  }

  private static double[] direction(Point at, double[][] hessian) {
    int size = hessian.length;
    double[] direction = new double[size];
    EigenDecompositionSymmetric eigen = Matrices.eigen(hessian);
    double largest = 0;
    for (int k = 0; k < size; k++) {
      largest = Math.max(largest, Math.abs(eigen.getEigenvalue(k)));
    }
    for (int k = 0; k < size; k++) {
      double[] vector = eigen.getEigenvector(k).toArray();
      double curvature = Math.max(Math.abs(eigen.getEigenvalue(k)), 1e-8 * largest + 1e-12);
      double along = -Matrices.dot(vector, at.gradient()) / curvature;
      for (int i = 0; i < size; i++) {
        direction[i] += along * vector[i];
      }
    }
    double length = Arrays.stream(direction).map(Math::abs).max().orElse(0);
    double longest = LONGEST_STEP * Math.max(1, largestOf(at.position()));
    if (length > longest) {
      Arrays.setAll(direction, i -> direction[i] * longest / length);
    }
    return direction;
  }

  private static double largestOf(double[] values) {
    return Arrays.stream(values).map(Math::abs).max().orElse(0);
  }

  private static Point downhill(Point from, double[] direction, Function function) {
    double slope = Matrices.dot(direction, from.gradient());
    for (double share = 1; share > 1e-10; share /= 2) {
      double[] position = from.position().clone();
      for (int i = 0; i < position.length; i++) {
        position[i] += share * direction[i];
      }
      Point next = function.at(position);
      double noise = 1e-13 * (1 + Math.abs(from.value()));
      if (next.value() <= from.value() + ENOUGH_DECREASE * share * slope + noise) {
        return next;
      }
    }
    return from;
  }
}
