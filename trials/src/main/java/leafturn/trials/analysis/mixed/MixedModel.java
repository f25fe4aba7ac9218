package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
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
import leafturn.trials.analysis.numeric.NewtonMinimum;

/** From data to a fitted linear mixed model by restricted maximum likelihood. */
public final class MixedModel {
  /** A residual sd of this share of the range of all values is what rounding leaves of none. */
  private static final double NOTHING_LEFT = 1e-6;

  private MixedModel() {}

  /** The fixed part and what least squares makes of it. */
  record Design(FixedColumns columns, double[][] rows, ColumnBasis basis, double[][] onBasis) {
    static Design of(TrialModel model, ModelFrame frame) {
      FixedColumns columns = new FixedColumns(model, frame, Coding.TREATMENT);
      if (columns.size() == 0) {
        throw new TrialFaultException(
            "The fixed part is empty: leave \"intercept\" true, or name a term.");
      }
      FitChecks.size(columns.size(), frame.rows());
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
    return fit(model, frame, model.overTime() != null);
  }

  /** Fits a model, its covariance worked on by rows or by random effects. */
  static MixedFit fit(TrialModel model, ModelFrame frame, boolean byRows) {
    Design design = Design.of(model, frame);
    List<RandomEffects> effects = RandomEffects.of(model, frame);
    FitChecks.check(model, frame, design.basis(), effects);
    LeastSquares least = LeastSquares.of(design, frame.response().values());
    CovarianceStructure structure = new CovarianceStructure(effects, time(model, frame));
    List<Block> blocks =
        Block.all(patterns(model, frame, design, effects), least.scaledRest(), byRows);
    RestrictedLikelihood likelihood =
        new RestrictedLikelihood(structure, blocks, frame.rows(), design.basis().rank());
    List<String> boundary = new ArrayList<>();
    NewtonMinimum.Point best = BoundarySearch.settle(lowest(likelihood), likelihood, boundary);
    RestrictedLikelihood.State state = Objects.requireNonNull(likelihood.state(best.position()));
    List<String> warnings = new ArrayList<>(frame.notes());
    if (best.gradientSize() > 1e-3) {
      if (structure.time().spreads() > 0) {
        throw new TrialFaultException(
            "The search for the variances found no end: the values of some time hardly scatter beside those of the others, so that no variance of its own can be found for each; take one for all times, as ar1 or compound-symmetry have.");
      }
      warnings.add(
          "The search for the variances ended before the likelihood was flat; take them as rough.");
    }
    MixedFit.Estimates estimates =
        least.estimates(design, state, likelihood.freedom(), boundary, warnings);
    checkRest(frame, effects, estimates.residualVariance());
    return new MixedFit(model, frame, design, likelihood, state, estimates);
  }

  /** Without an error of its own nothing is judged: what the search then finds is rounding. */
  private static void checkRest(
      ModelFrame frame, List<RandomEffects> effects, double residualVariance) {
    DoubleSummaryStatistics values = Arrays.stream(frame.response().values()).summaryStatistics();
    double range = values.getMax() - values.getMin();
    if (!effects.isEmpty() && Math.sqrt(residualVariance) < NOTHING_LEFT * range) {
      throw new TrialFaultException(
          "The model fits every value of %s exactly, so that no error is left to judge differences by; look whether values were copied or reckoned from one another."
              .formatted(frame.response().name()));
    }
  }

  private static TimeCorrelation time(TrialModel model, ModelFrame frame) {
    OverTime overTime = model.overTime();
    return overTime == null ? TimeCorrelation.NONE : TimeCorrelation.of(overTime, frame.times());
  }

  private static List<Pattern> patterns(
      TrialModel model, ModelFrame frame, Design design, List<RandomEffects> effects) {
    OverTime overTime = model.overTime();
    int[] units =
        overTime == null
            ? IntStream.range(0, frame.rows()).toArray()
            : RandomEffects.groups(overTime.unit(), frame);
    int[] positions = overTime == null ? new int[frame.rows()] : frame.times().positions();
    return new Patterns(design.rows(), design.onBasis(), effects, units, positions).find();
  }

  private static NewtonMinimum.Point lowest(RestrictedLikelihood likelihood) {
    NewtonMinimum.Point best = null;
    for (double[] start : likelihood.structure().starts()) {
      NewtonMinimum.Point found = NewtonMinimum.from(start, likelihood, likelihood.flat());
      if (best == null || found.value() < best.value()) {
        best = found;
      }
    }
    return Objects.requireNonNull(best);
  }
}
