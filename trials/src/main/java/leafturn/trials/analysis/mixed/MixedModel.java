package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.fixed.Coding;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;

/** From data to a fitted linear mixed model by restricted maximum likelihood. */
public final class MixedModel {
  private static final double FLAT = 1e-8;

  /** Observations whose covariance is kept as one dense matrix. */
  private static final int LARGEST_BLOCK = 4000;

  private MixedModel() {}

  /** The fixed part and what least squares makes of it. */
  record Design(FixedColumns columns, double[][] rows, ColumnBasis basis, double[][] onBasis) {
    static Design of(TrialModel model, ModelFrame frame) {
      FixedColumns columns = new FixedColumns(model, frame, Coding.TREATMENT);
      if (columns.size() == 0) {
        throw new TrialFaultException(
            "The fixed part is empty: leave \"intercept\" true, or name a term.");
      }
      double[][] rows = columns.rows();
      ColumnBasis basis = new ColumnBasis(rows);
      return new Design(columns, rows, basis, basis.rows());
    }
  }

  /**
   * Fits a model to observations.
   *
   * @throws TrialFaultException where the data cannot carry the model, saying why
   * @source harville1977, section 4
   */
  public static MixedFit fit(TrialModel model, ModelFrame frame) {
    List<String> warnings = new ArrayList<>(frame.notes());
    Design design = Design.of(model, frame);
    List<RandomEffects> effects = RandomEffects.of(model, frame);
    FitChecks.check(model, frame, design.basis(), effects);
    double level = level(design, frame.response().values());
    double[] least = new double[design.basis().rank()];
    double[] rest = leastSquares(design, frame.response().values(), level, least);
    double scale = sizeOf(rest, frame.response().values());
    Arrays.setAll(rest, i -> rest[i] / scale);
    RestrictedLikelihood likelihood = likelihood(model, frame, design, effects, rest);
    List<String> boundary = new ArrayList<>();
    NewtonMinimum.Point best = BoundarySearch.settle(lowest(likelihood), likelihood, boundary);
    RestrictedLikelihood.State state = Objects.requireNonNull(likelihood.state(best.position()));
    if (best.gradientSize() > 1e-3) {
      warnings.add(
          "The search for the variances ended before the likelihood was flat; take them as rough.");
    }
    double[] coefficients = new double[least.length];
    Arrays.setAll(coefficients, k -> least[k] + scale * state.coefficients()[k]);
    double variance = scale * scale * state.squares() / likelihood.freedom();
    return new MixedFit(
        model,
        frame,
        design,
        likelihood,
        state,
        new MixedFit.Estimates(
            coefficients, constant(design, level), scale, variance, boundary, warnings));
  }

  private static RestrictedLikelihood likelihood(
      TrialModel model,
      ModelFrame frame,
      Design design,
      List<RandomEffects> effects,
      double[] rest) {
    OverTime overTime = model.overTime();
    TimeCorrelation time =
        overTime == null ? TimeCorrelation.NONE : TimeCorrelation.of(overTime, frame.times());
    int[] units =
        overTime == null
            ? IntStream.range(0, frame.rows()).toArray()
            : RandomEffects.groups(overTime.unit(), frame);
    int[] positions = overTime == null ? new int[frame.rows()] : frame.times().positions();
    List<Pattern> patterns =
        new Patterns(design.rows(), design.onBasis(), effects, units, positions).find();
    checkBlocks(patterns);
    CovarianceStructure structure = new CovarianceStructure(effects, time);
    return new RestrictedLikelihood(structure, patterns, rest, design.basis().rank());
  }

  private static void checkBlocks(List<Pattern> patterns) {
    int largest = patterns.stream().mapToInt(Pattern::size).max().orElse(0);
    if (largest > LARGEST_BLOCK) {
      throw new TrialFaultException(
          "%,d observations hang together through their random terms; up to %,d can be worked on at once. Average subsamples of a plot and date first, or leave out the term that joins the yards."
              .formatted(largest, LARGEST_BLOCK));
    }
  }

  private static NewtonMinimum.Point lowest(RestrictedLikelihood likelihood) {
    NewtonMinimum.Point best = null;
    for (double[] start : likelihood.structure().starts()) {
      NewtonMinimum.Point found = NewtonMinimum.from(start, likelihood, FLAT);
      if (best == null || found.value() < best.value()) {
        best = found;
      }
    }
    return Objects.requireNonNull(best);
  }

  /**
   * A level that is taken off all observations before anything else, so that a large mean costs no
   * digits: exact where the values are close to each other. 0 where the fixed part has no mean.
   */
  private static double level(Design design, double[] observed) {
    double[] ones = new double[observed.length];
    Arrays.fill(ones, 1);
    return design.basis().spans(ones) ? observed[0] : 0;
  }

  /** The level as coefficients of the basis. */
  private static double[] constant(Design design, double level) {
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
  private static double[] leastSquares(
      Design design, double[] observed, double level, double[] coefficients) {
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
