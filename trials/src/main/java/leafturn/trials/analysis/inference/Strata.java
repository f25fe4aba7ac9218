package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.numeric.Matrices;

/** Which random terms contain which columns, and what each adds to the rank of the design. */
final class Strata {
  private final double[][] fixed;
  private final List<double[][]> strata;
  private final List<ColumnBasis> bases = new ArrayList<>();
  private final int rows;

  /**
   * @param fixed columns of the fixed part, {@code [column][row]}
   * @param strata columns of each random term, {@code [column][row]}
   */
  Strata(double[][] fixed, List<double[][]> strata, int rows) {
    this.fixed = fixed;
    this.strata = strata;
    this.rows = rows;
    strata.forEach(stratum -> bases.add(new ColumnBasis(Matrices.transpose(stratum))));
  }

  /** Degrees of freedom on which columns of the fixed part are judged. */
  double freedom(int[] columns) {
    double freedom = Double.POSITIVE_INFINITY;
    for (int s = 0; s < strata.size(); s++) {
      int stratum = s;
      if (Arrays.stream(columns).allMatch(column -> contains(stratum, fixed[column]))) {
        freedom = Math.min(freedom, added(s));
      }
    }
    return Double.isInfinite(freedom) ? rows - rank(strata) : freedom;
  }

  /** What a random term adds to the rank of the fixed part and of the terms not above it. */
  private int added(int stratum) {
    List<double[][]> others = new ArrayList<>();
    for (int s = 0; s < strata.size(); s++) {
      if (s != stratum && !isAbove(s, stratum)) {
        others.add(strata.get(s));
      }
    }
    int without = rank(others);
    others.add(strata.get(stratum));
    return rank(others) - without;
  }

  private boolean isAbove(int upper, int lower) {
    return Arrays.stream(strata.get(lower)).allMatch(column -> contains(upper, column));
  }

  private boolean contains(int stratum, double[] column) {
    return bases.get(stratum).spans(column);
  }

  private int rank(List<double[][]> others) {
    List<double[]> all = new ArrayList<>(Arrays.asList(fixed));
    others.forEach(stratum -> all.addAll(Arrays.asList(stratum)));
    return new ColumnBasis(Matrices.transpose(all.toArray(double[][]::new))).rank();
  }
}
