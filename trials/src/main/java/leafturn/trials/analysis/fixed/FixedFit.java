package leafturn.trials.analysis.fixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.numeric.Matrices;

/** A model whose fixed part was estimated: what tests, means and differences are made of. */
public interface FixedFit {
  /** What was asked for. */
  TrialModel model();

  /** The observations used. */
  ModelFrame frame();

  /** The fixed part in treatment coding. */
  FixedColumns columns();

  /** The basis of the fixed part. */
  ColumnBasis basis();

  /**
   * The estimate of a function of the coefficients.
   *
   * @param function weights of the basis' coefficients
   */
  double value(double[] function);

  /** The estimates of several functions. */
  default double[] values(double[][] functions) {
    double[] values = new double[functions.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = value(functions[i]);
    }
    return values;
  }

  /** Coefficients in treatment coding with standard errors from a covariance of the basis. */
  default List<Coefficient> coefficients(double[][] basisCovariance) {
    List<Coefficient> all = new ArrayList<>();
    for (int j = 0; j < columns().size(); j++) {
      String name = columns().name(j);
      double[] function = basis().coefficientOnBasis(j);
      if (function == null) {
        all.add(new Coefficient(name, Double.NaN, Double.NaN));
      } else {
        double variance = Matrices.form(function, basisCovariance, function);
        all.add(new Coefficient(name, value(function), Math.sqrt(variance)));
      }
    }
    return all;
  }
}
