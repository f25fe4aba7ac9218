package leafturn.trials.analysis.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import leafturn.trials.analysis.data.TrialFaultException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A factor times itself is the matrix, and an inverse times the matrix is 1. */
class FactorsClosedFormTest {
  @Test
  void aMatrixWhoseEigenvaluesAreNotFoundIsRefusedInASentence() {
    double[][] lost = {{1, Double.NaN, 0}, {Double.NaN, 1, 1}, {0, 1, 1}};
    assertThatThrownBy(() -> Matrices.eigen(lost))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("lie too far apart");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5, 31, 32, 33, 36, 63, 70, 97})
  void aLargeFactorSolvesInvertsAndHasTheDeterminant(int order) {
    double[][] a = positive(order);
    double[] flat = new double[order * order];
    double[][] copy = new double[order][];
    for (int i = 0; i < order; i++) {
      copy[i] = a[i].clone();
      System.arraycopy(a[i], 0, flat, i * order, order);
    }
    UpperFactor factor = Objects.requireNonNull(UpperFactor.of(copy));
    assertThat(Cholesky.factor(flat, order)).isTrue();
    assertThat(factor.logDeterminant())
        .isCloseTo(Cholesky.logDeterminant(flat, order), within(1e-10 * order));
    double[][] inverse = factor.inverse();
    double[] small = Cholesky.inverse(flat, order);
    for (int i = 0; i < order; i++) {
      for (int j = 0; j <= i; j++) {
        assertThat(inverse[i][j]).isCloseTo(small[i * order + j], within(1e-10));
      }
    }
    double[] x = new double[2 * order];
    for (int i = 0; i < order; i++) {
      for (int j = 0; j < order; j++) {
        x[2 * i] += a[i][j] * (j + 1);
        x[2 * i + 1] -= a[i][j];
      }
    }
    factor.solve(x, 2);
    for (int i = 0; i < order; i++) {
      assertThat(x[2 * i]).isCloseTo(i + 1, within(1e-9 * order));
      assertThat(x[2 * i + 1]).isCloseTo(-1, within(1e-9));
    }
  }

  @Test
  void aMatrixThatIsNotPositiveDefiniteHasNoFactor() {
    assertThat(UpperFactor.of(new double[][] {{1, 2}, {2, 1}})).isNull();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7})
  void aSmallInverseTimesItsMatrixIsOne(int order) {
    double[][] a = positive(order);
    double[] inverse = new double[order * order];
    for (int i = 0; i < order; i++) {
      System.arraycopy(a[order - 1 - i], 0, inverse, i * order, order);
    }
    double determinant = SmallInverse.invert(inverse, order);
    assertThat(Math.abs(determinant)).isPositive();
    for (int i = 0; i < order; i++) {
      for (int j = 0; j < order; j++) {
        double sum = 0;
        for (int k = 0; k < order; k++) {
          sum += inverse[i * order + k] * a[order - 1 - k][j];
        }
        assertThat(sum).isCloseTo(i == j ? 1 : 0, within(1e-10));
      }
    }
  }

  @Test
  void aMatrixWithoutInverseHasTheDeterminantZero() {
    assertThat(SmallInverse.invert(new double[] {1, 2, 2, 4}, 2)).isZero();
  }

  private static double[][] positive(int order) {
    Random random = new Random(order);
    double[][] root = new double[order][order];
    for (double[] row : root) {
      for (int j = 0; j < order; j++) {
        row[j] = random.nextGaussian();
      }
    }
    double[][] a = Matrices.product(root, Matrices.transpose(root));
    for (int i = 0; i < order; i++) {
      a[i][i] += 1;
    }
    return a;
  }
}
