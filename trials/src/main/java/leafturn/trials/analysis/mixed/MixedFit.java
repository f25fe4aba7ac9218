package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.fixed.FixedFit;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Matrices;
import org.jspecify.annotations.Nullable;

/** A fitted linear mixed model. */
public final class MixedFit implements FixedFit {
  private final TrialModel model;
  private final ModelFrame frame;
  private final FixedColumns columns;
  private final ColumnBasis basis;
  private final RestrictedLikelihood likelihood;
  private final RestrictedLikelihood.State state;
  private final Estimates estimates;
  private @Nullable VarianceInformation information;

  /**
   * What was estimated, in the unit of the response.
   *
   * @param coefficients of the orthonormal basis of the fixed part, beyond those of the constant
   * @param constant coefficients of a level that was taken off all observations
   * @param scale what the response was divided by while fitting
   * @param residualVariance at the first time where variances differ
   * @param boundary terms held at zero, and correlations at their limit
   * @param warnings what a reader should know
   */
  record Estimates(
      double[] coefficients,
      double[] constant,
      double scale,
      double residualVariance,
      List<String> boundary,
      List<String> warnings) {}

  /** One element of the covariance of random effects; {@code effect2} is null for a variance. */
  public record Variance(
      List<String> within, String effect, @Nullable String effect2, double variance) {}

  MixedFit(
      TrialModel model,
      ModelFrame frame,
      MixedModel.Design design,
      RestrictedLikelihood likelihood,
      RestrictedLikelihood.State state,
      Estimates estimates) {
    this.model = model;
    this.frame = frame;
    this.columns = design.columns();
    this.basis = design.basis();
    this.likelihood = likelihood;
    this.state = state;
    this.estimates = estimates;
  }

  @Override
  public TrialModel model() {
    return model;
  }

  @Override
  public ModelFrame frame() {
    return frame;
  }

  @Override
  public FixedColumns columns() {
    return columns;
  }

  @Override
  public ColumnBasis basis() {
    return basis;
  }

  @Override
  public double value(double[] function) {
    double fromConstant = Matrices.dot(function, estimates.constant);
    double sizes =
        Matrices.dot(function, function) * Matrices.dot(estimates.constant, estimates.constant);
    boolean isDifference = Math.abs(fromConstant) < 1e-12 * Math.sqrt(sizes);
    return Matrices.dot(function, estimates.coefficients) + (isDifference ? 0 : fromConstant);
  }

  /** Covariance of the basis' coefficients, before any correction for small samples. */
  public double[][] basisCovariance() {
    double[][] covariance = new double[basis.rank()][basis.rank()];
    Matrices.add(covariance, estimates.residualVariance, state.covariance());
    return covariance;
  }

  /** The residual variance; at the first time where variances differ. */
  public double residualVariance() {
    return estimates.residualVariance;
  }

  /** Terms held at zero and correlations at their limit. */
  public List<String> boundary() {
    return estimates.boundary;
  }

  /**
   * Whether an entry of {@link #boundary()} is a variance held at exactly 0; else it is a limit
   * that the search came near to.
   */
  public static boolean isHeld(String boundary) {
    return BoundarySearch.isHeld(boundary);
  }

  /** Whether the errors of some time are best without any variance. */
  public boolean hasTimeWithoutError() {
    return estimates.boundary.stream().anyMatch(each -> each.startsWith(BoundarySearch.SPREAD));
  }

  /** What a reader should know of the fit. */
  public List<String> warnings() {
    return estimates.warnings;
  }

  /** Observations less independent coefficients. */
  public int residualFreedom() {
    return likelihood.freedom();
  }

  /**
   * The restricted log likelihood in treatment coding, with all constants but half log |X'X|.
   *
   * @source harville1977, eq. 4.1
   */
  public double logLikelihood() {
    int freedom = likelihood.freedom();
    double scaled = state.squares() / freedom;
    double variance = Math.log(scaled) + 2 * Math.log(estimates.scale);
    return -0.5
        * (freedom * (Math.log(2 * Math.PI) + variance + 1)
            + state.logDeterminants()
            + 2 * basis.logDeterminant());
  }

  /** Variances and covariances of the random effects. */
  public List<Variance> variances() {
    List<Variance> all = new ArrayList<>();
    List<RandomEffects> sets = likelihood.structure().effects();
    for (int t = 0; t < sets.size(); t++) {
      RandomEffects set = sets.get(t);
      double[][] gamma = likelihood.structure().gamma(state.theta(), t);
      for (int a = 0; a < set.size(); a++) {
        for (int b = 0; b <= a; b++) {
          double scale = set.scales()[a] * set.scales()[b];
          String other = a == b ? null : set.effects().get(a);
          String effect = a == b ? set.effects().get(a) : set.effects().get(b);
          double variance = estimates.residualVariance * gamma[a][b] / scale;
          all.add(new Variance(set.within(), effect, other, variance));
        }
      }
    }
    return all;
  }

  /** Whether the random effects are few enough to look at every pair of them. */
  public boolean hasVarianceInformation() {
    return likelihood.blocks().stream().allMatch(Block::allowsMoves);
  }

  /**
   * How well the data know the variances.
   *
   * @throws TrialFaultException where there are too many random effects
   */
  public VarianceInformation varianceInformation() {
    if (!hasVarianceInformation()) {
      throw new TrialFaultException(
          "df is kenward-roger, which looks at every pair of the random effects that hang together; over %,d observations these are too many. Use \"df\": \"satterthwaite\"."
              .formatted(frame.rows()));
    }
    VarianceInformation known = information;
    if (known == null) {
      known = VarianceInformation.of(this);
      information = known;
    }
    return known;
  }

  /** The sets of random effects. */
  public List<RandomEffects> randomEffects() {
    return likelihood.structure().effects();
  }

  /**
   * The covariance of the effects of a set as they are scaled, relative to the residual variance.
   */
  public double[][] relativeCovariance(int set) {
    return likelihood.structure().gamma(state.theta(), set);
  }

  /**
   * What each observation says beside all others: V⁻¹r and the diagonal of V⁻¹ - V⁻¹QΦQ'V⁻¹, both
   * at a residual variance of 1.
   *
   * @return {@code [row][2]}, in the unit of the response
   */
  public double[][] residualParts() {
    double[][] parts = likelihood.residualParts(state);
    for (double[] part : parts) {
      part[0] *= estimates.scale;
    }
    return parts;
  }

  /** The correlation over time; null for independent errors. */
  public @Nullable Double rho() {
    return likelihood.structure().time().rho(timeParameters());
  }

  /** The correlations between times; empty for independent errors. */
  public double[][] timeCorrelation() {
    double[][] matrix = likelihood.structure().time().covariance(timeParameters());
    double[][] correlation = new double[matrix.length][matrix.length];
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j < matrix.length; j++) {
        correlation[i][j] = matrix[i][j] / Math.sqrt(matrix[i][i] * matrix[j][j]);
      }
    }
    return correlation;
  }

  /** Standard deviations relative to the first time; null where they are equal. */
  public double @Nullable [] sdRatios() {
    return likelihood.structure().time().sdRatios(timeParameters());
  }

  private double[] timeParameters() {
    return likelihood.structure().timeParameters(state.theta());
  }

  RestrictedLikelihood likelihood() {
    return likelihood;
  }

  RestrictedLikelihood.State state() {
    return state;
  }

  /** The residual variance in the scale in which the likelihood works. */
  double scaledVariance() {
    return state.squares() / likelihood.freedom();
  }

  double scale() {
    return estimates.scale;
  }
}
