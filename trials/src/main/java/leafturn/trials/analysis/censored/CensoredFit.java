package leafturn.trials.analysis.censored;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.fixed.Coding;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.fixed.FixedFit;
import leafturn.trials.analysis.inference.Approximation;
import leafturn.trials.analysis.mixed.FitChecks;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * A model without random terms fitted to values of which some lie below their detection limit.
 * Estimates are judged by t and F on as many degrees of freedom as there are observations beyond
 * the coefficients, which is a little wider than the normal distribution.
 *
 * @param regression on the basis
 * @source tobin1958; degrees of freedom are common practice, no source
 */
public record CensoredFit(
    TrialModel model,
    ModelFrame frame,
    FixedColumns columns,
    ColumnBasis basis,
    CensoredRegression regression)
    implements FixedFit, Approximation {
  /** A coefficient of the basis is usually known to one standard deviation of the errors. */
  private static final double BOUNDLESS = 100;

  /**
   * Fits a model.
   *
   * @throws TrialFaultException where the data cannot carry it
   */
  public static CensoredFit of(TrialModel model, ModelFrame frame) {
    FixedColumns columns = new FixedColumns(model, frame, Coding.TREATMENT);
    ColumnBasis basis = new ColumnBasis(columns.rows());
    List<String> faults = FitChecks.ofFixed(model, frame, basis);
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
    CensoredRegression regression = CensoredRegression.of(frame.response(), basis.rows());
    double[] errors = regression.standardErrors();
    for (int k = 0; k < basis.rank(); k++) {
      if (!(errors[k] < BOUNDLESS * regression.scale())) {
        throw new TrialFaultException(
            "All values of %s in %s lie below detection, so its mean has no lower bound; compare the proportions above the limit, or leave that group out."
                .formatted(frame.response().name(), whollyBelow(model, frame)));
      }
    }
    return new CensoredFit(model, frame, columns, basis, regression);
  }

  /** The groups of which nothing lies above its limit: of one factor, or of all together. */
  private static String whollyBelow(TrialModel model, ModelFrame frame) {
    List<String> named = new ArrayList<>();
    for (String name : model.factors()) {
      Factor factor = frame.factor(name);
      for (int level = 0; level < factor.levels().size(); level++) {
        int own = level;
        boolean below =
            IntStream.range(0, frame.rows())
                .filter(row -> factor.codes()[row] == own)
                .allMatch(row -> frame.response().belowDetection()[row]);
        if (below) {
          named.add("%s %s".formatted(name, factor.levels().get(level)));
        }
      }
    }
    return named.isEmpty() ? "a group of several factors" : String.join(" and ", named);
  }

  @Override
  public double value(double[] function) {
    return Matrices.dot(function, regression.coefficients());
  }

  @Override
  public double[][] covariance() {
    double[][] covariance = new double[basis.rank()][];
    for (int k = 0; k < covariance.length; k++) {
      covariance[k] = Arrays.copyOf(regression.covariance()[k], covariance.length);
    }
    return covariance;
  }

  @Override
  public double degreesOfFreedom(double[] function) {
    return frame.rows() - basis.rank();
  }

  @Override
  public FTest test(double[][] functions) {
    double[][] spread =
        Matrices.product(Matrices.product(functions, covariance()), Matrices.transpose(functions));
    double[] values = values(functions);
    double wald = Matrices.form(values, Matrices.inverseOfSymmetric(spread), values);
    return new FTest(functions.length, frame.rows() - basis.rank(), wald / functions.length);
  }
}
