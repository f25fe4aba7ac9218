package leafturn.trials.analysis.censored;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
        throw new TrialFaultException(boundless(model, frame));
      }
    }
    return new CensoredFit(model, frame, columns, basis, regression);
  }

  private static String boundless(TrialModel model, ModelFrame frame) {
    List<String> groups = new ArrayList<>();
    model.factors().forEach(factor -> groups.addAll(whollyBelow(frame, List.of(factor))));
    if (groups.isEmpty()) {
      groups.addAll(whollyBelow(frame, model.factors()));
    }
    boolean several = groups.size() > 1;
    return "All values of %s in %s lie below detection, so %s no lower bound; compare the proportions above the limit, or leave %s out."
        .formatted(
            frame.response().name(),
            groups.isEmpty() ? "a group" : String.join(" and ", groups),
            several ? "their means have" : "its mean has",
            several ? "those groups" : "that group");
  }

  /** The groups by these factors of which nothing lies above its limit. */
  private static List<String> whollyBelow(ModelFrame frame, List<String> factors) {
    Map<String, Boolean> below = new LinkedHashMap<>();
    for (int row = 0; row < frame.rows(); row++) {
      List<String> levels = new ArrayList<>();
      for (String name : factors) {
        Factor factor = frame.factor(name);
        levels.add("%s %s".formatted(name, factor.levels().get(factor.codes()[row])));
      }
      String group = String.join(" with ", levels);
      below.merge(group, frame.response().belowDetection()[row], Boolean::logicalAnd);
    }
    return below.keySet().stream().filter(group -> Boolean.TRUE.equals(below.get(group))).toList();
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
