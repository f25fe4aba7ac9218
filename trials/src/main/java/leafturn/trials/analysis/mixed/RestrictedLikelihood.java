package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.Cholesky;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import org.jspecify.annotations.Nullable;

/**
 * Minus twice the restricted log likelihood, the residual variance s2 at its best value:
 *
 * <pre>(n - p) log s2 + log |V| + log |Q'V⁻¹Q|,   s2 = r'V⁻¹r / (n - p)</pre>
 *
 * with Q an orthonormal basis of the fixed part and r what its best coefficients leave. V falls
 * apart into independent blocks, and blocks of the same design share one factor.
 *
 * @source pattersonthompson1971, eq. 7; harville1977, section 4
 */
final class RestrictedLikelihood implements NewtonMinimum.Function {
  private final CovarianceStructure structure;
  private final List<Block> blocks;
  private final int observations;
  private final int directions;
  private final int freedom;
  private @Nullable State latest;

  /**
   * @param observations how many there are
   * @param directions rank of the fixed part
   */
  RestrictedLikelihood(
      CovarianceStructure structure, List<Block> blocks, int observations, int directions) {
    this.structure = structure;
    this.blocks = blocks;
    this.observations = observations;
    this.directions = directions;
    this.freedom = observations - directions;
  }

  CovarianceStructure structure() {
    return structure;
  }

  List<Block> blocks() {
    return blocks;
  }

  int directions() {
    return directions;
  }

  int observations() {
    return observations;
  }

  /** Observations less coefficients. */
  int freedom() {
    return freedom;
  }

  /**
   * One block at one point.
   *
   * @param weighted V⁻¹Q
   * @param rest V⁻¹r of each member, {@code [row * members + member]}
   */
  record Solved(BlockFactor factor, double[] weighted, double[] rest) {}

  /**
   * All that the likelihood knows at one point.
   *
   * @param solved of each pattern of blocks
   * @param covariance of the basis' coefficients, relative to the residual variance
   * @param coefficients of the basis, beyond those of least squares
   * @param squares r'V⁻¹r
   * @param logDeterminants log |V| + log |Q'V⁻¹Q|
   * @param traces slopes of the determinants
   * @param falls slopes of r'V⁻¹r, with the sign turned
   */
  record State(
      double[] theta,
      List<Solved> solved,
      double[][] covariance,
      double[] coefficients,
      double squares,
      double logDeterminants,
      Slopes traces,
      Slopes falls) {}

  @Override
  public NewtonMinimum.Point at(double[] theta) {
    State state = state(theta);
    if (state == null) {
      return new NewtonMinimum.Point(theta, Double.POSITIVE_INFINITY, new double[theta.length]);
    }
    double variance = state.squares / freedom;
    double value = freedom * Math.log(variance) + state.logDeterminants;
    return new NewtonMinimum.Point(theta, value, gradient(state, variance));
  }

  /** Whether one evaluation takes long. */
  private boolean isDear() {
    return blocks.stream().anyMatch(Block::isDear);
  }

  /** The slope at which a search may end: the value is then within its square of the lowest. */
  double flat() {
    return isDear() ? 1e-6 : 1e-8;
  }

  /** Where a factor is dear, the average information stands for the Hessian. */
  @Override
  public double[][] curvature(NewtonMinimum.Point point) {
    State state = isDear() ? state(point.position()) : null;
    return state == null
        ? NewtonMinimum.hessian(point, this, 1e-5)
        : new AverageInformation(this, state).matrix();
  }

  /** The slopes at a given residual variance. */
  double[] gradient(State state, double variance) {
    double[] traces = structure.chain(state.theta, state.traces);
    double[] falls = structure.chain(state.theta, state.falls);
    for (int i = 0; i < traces.length; i++) {
      traces[i] -= falls[i] / variance;
    }
    return traces;
  }

  /** Works through all blocks; null where V is not positive definite. */
  @Nullable State state(double[] theta) {
    State known = latest;
    if (known != null && known.theta == theta) {
      return known;
    }
    List<BlockFactor> factors = new ArrayList<>();
    List<double[]> solved = new ArrayList<>();
    double[] information = new double[directions * directions];
    double[] moments = new double[directions];
    double logDeterminant = 0;
    for (Block block : blocks) {
      BlockFactor factor = block.factor(structure, theta);
      if (factor == null) {
        return null;
      }
      logDeterminant += block.pattern().count() * factor.logDeterminant();
      double[] all = factor.solve(block.joined(), block.columns());
      block.addInformation(information, moments, all);
      factors.add(factor);
      solved.add(all);
    }
    if (!Cholesky.factor(information, directions)) {
      return null;
    }
    logDeterminant += Cholesky.logDeterminant(information, directions);
    latest = completed(theta, factors, solved, new Fixed(information, moments), logDeterminant);
    return latest;
  }

  /** The factor of Q'V⁻¹Q and Q'V⁻¹y. */
  private record Fixed(double[] factor, double[] moments) {}

  private State completed(
      double[] theta,
      List<BlockFactor> factors,
      List<double[]> solved,
      Fixed fixed,
      double logDeterminants) {
    double[][] covariance = square(Cholesky.inverse(fixed.factor, directions));
    double[] root = Cholesky.inverseOfFactor(fixed.factor, directions);
    double[] coefficients = Matrices.product(covariance, fixed.moments);
    double[][][] derivatives = structure.time().derivatives(structure.timeParameters(theta));
    Slopes traces = Slopes.none(structure);
    Slopes falls = Slopes.none(structure);
    List<Solved> all = new ArrayList<>();
    double squares = 0;
    for (int b = 0; b < blocks.size(); b++) {
      Block block = blocks.get(b);
      Pattern pattern = block.pattern();
      double[] weighted = block.weighted(solved.get(b));
      double[] rest = block.rest(solved.get(b), coefficients);
      squares += block.squares(rest, coefficients);
      factors.get(b).addTraces(traces, pattern.count());
      double[] known = known(weighted, root);
      pattern.addForms(traces, -pattern.count(), known, directions, derivatives);
      pattern.addForms(falls, 1, rest, pattern.count(), derivatives);
      all.add(new Solved(factors.get(b), weighted, rest));
    }
    return new State(theta, all, covariance, coefficients, squares, logDeterminants, traces, falls);
  }

  /**
   * V⁻¹Q R' with R'R the covariance of the coefficients, so that its products are the share of Q.
   */
  private double[] known(double[] weighted, double[] root) {
    double[] known = new double[weighted.length];
    for (int at = 0; at < weighted.length; at += directions) {
      for (int j = 0; j < directions; j++) {
        double sum = 0;
        for (int k = 0; k <= j; k++) {
          sum += root[j * directions + k] * weighted[at + k];
        }
        known[at + j] = sum;
      }
    }
    return known;
  }

  /** V⁻¹r and the diagonal of the projection, for each observation. */
  double[][] residualParts(State state) {
    double[][] parts = new double[observations][2];
    for (int b = 0; b < blocks.size(); b++) {
      Pattern pattern = blocks.get(b).pattern();
      Solved solved = state.solved.get(b);
      double[] diagonal = solved.factor.diagonal();
      double[] row = new double[directions];
      for (int i = 0; i < pattern.size(); i++) {
        System.arraycopy(solved.weighted, i * directions, row, 0, directions);
        double own = diagonal[i] - Matrices.form(row, state.covariance, row);
        for (int m = 0; m < pattern.count(); m++) {
          double[] part = parts[pattern.members().get(m)[i]];
          part[0] = solved.rest[i * pattern.count() + m];
          part[1] = own;
        }
      }
    }
    return parts;
  }

  private double[][] square(double[] flat) {
    double[][] square = new double[directions][directions];
    for (int i = 0; i < directions; i++) {
      System.arraycopy(flat, i * directions, square[i], 0, directions);
    }
    return square;
  }
}
