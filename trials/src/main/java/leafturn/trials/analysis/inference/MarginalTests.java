package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.fixed.Coding;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.fixed.FixedFit;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Tests of each term beside all others (type III): that its coefficients are zero where levels are
 * coded as differences from their mean. A term whose hypothesis the data cannot state is reported
 * as not estimable.
 *
 * @source searle1971, section 8.2
 */
public final class MarginalTests {
  private final FixedFit fit;
  private final FixedColumns columns;
  private final ColumnBasis ownBasis;
  private final double[][] between;

  /** One term's test; NaN where it is not estimable. */
  public record Test(String term, double numeratorDf, double denominatorDf, double f, double p) {
    /** Whether the data can state the hypothesis. */
    public boolean isEstimable() {
      return !Double.isNaN(f);
    }
  }

  /** Prepares the hypotheses of a fit. */
  public MarginalTests(FixedFit fit) {
    this.fit = fit;
    this.columns = new FixedColumns(fit.model(), fit.frame(), Coding.SUM_TO_ZERO);
    this.ownBasis = new ColumnBasis(columns.rows());
    this.between = Matrices.product(Matrices.transpose(ownBasis.rows()), fit.basis().rows());
  }

  /** The test of every term of the fixed part. */
  public List<Test> all(Approximation approximation) {
    List<Test> tests = new ArrayList<>();
    for (int t = 0; t < fit.model().fixed().size(); t++) {
      String name = fit.model().fixed().get(t).toString();
      double[][] hypothesis = hypothesis(t);
      if (hypothesis.length == 0) {
        tests.add(new Test(name, Double.NaN, Double.NaN, Double.NaN, Double.NaN));
      } else {
        Approximation.FTest test = approximation.test(hypothesis);
        double p =
            test.denominatorDf() > 0
                ? Tails.fAbove(test.f(), test.numeratorDf(), test.denominatorDf())
                : Double.NaN;
        tests.add(new Test(name, test.numeratorDf(), test.denominatorDf(), test.f(), p));
      }
    }
    return tests;
  }

  /**
   * The hypothesis of a term as functions of the basis of the fit: all its coefficients if they can
   * be estimated; what can be estimated of them for a term that is part of no other; else none.
   */
  public double[][] hypothesis(int term) {
    if (fit.model().fixed().size() == 1 && fit.model().overTime() == null) {
      return fit.basis().inOrder(columns.columnsOf(term));
    }
    double[][] functions = functions(term);
    double[][] estimable = estimable(functions);
    if (estimable.length < functions.length && isPartOfAnother(fit.model().fixed().get(term))) {
      return new double[0][];
    }
    return onFit(estimable);
  }

  /**
   * The coefficients of a term. Which of the equivalent sets of functions stands for it changes
   * nothing but Satterthwaite's degrees of freedom of several functions; differences from the first
   * level for random terms (one after the other where there is one term alone), coefficients
   * themselves for correlated dates are what the reference results use.
   */
  private double[][] functions(int term) {
    if (fit.model().overTime() == null) {
      return columns.differences(term);
    }
    int[] own = columns.columnsOf(term);
    double[][] functions = new double[own.length][columns.size()];
    for (int i = 0; i < own.length; i++) {
      functions[i][own[i]] = 1;
    }
    return functions;
  }

  private boolean isPartOfAnother(Term term) {
    return fit.model().fixed().stream()
        .anyMatch(
            other ->
                other.variables().size() > term.variables().size()
                    && other.variables().containsAll(term.variables()));
  }

  /** The combinations of functions that the null combinations of columns do not touch. */
  private double[][] estimable(double[][] functions) {
    List<double[]> nulls = ownBasis.nullCombinations();
    if (nulls.isEmpty()) {
      return functions;
    }
    double[][] touched =
        Matrices.product(functions, Matrices.transpose(nulls.toArray(double[][]::new)));
    EigenDecompositionSymmetric eigen =
        Matrices.eigen(Matrices.product(touched, Matrices.transpose(touched)));
    List<double[]> untouched = new ArrayList<>();
    for (int k = 0; k < functions.length; k++) {
      if (Math.abs(eigen.getEigenvalue(k)) < 1e-10) {
        double[] weights = eigen.getEigenvector(k).toArray();
        untouched.add(Matrices.product(Matrices.transpose(functions), weights));
      }
    }
    return untouched.toArray(double[][]::new);
  }

  private double[][] onFit(double[][] functions) {
    double[][] onFit = new double[functions.length][];
    for (int i = 0; i < functions.length; i++) {
      double[] own = ownBasis.onBasis(functions[i]);
      if (own == null) {
        return new double[0][];
      }
      onFit[i] = Matrices.product(Matrices.transpose(between), own);
    }
    return onFit;
  }
}
