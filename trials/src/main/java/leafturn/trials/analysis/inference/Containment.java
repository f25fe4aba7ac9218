package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.fixed.Coding;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.RandomEffects;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * Degrees of freedom of the design: a term that does not vary within the groups of a random term is
 * judged by those groups, on as many degrees of freedom as they add to all terms they do not
 * contain; the smallest counts if there are several. The rest of the terms have those of the
 * residual. In a balanced design these are the degrees of freedom of its strata.
 *
 * @source common practice, no source
 */
public final class Containment implements Approximation {
  /** Rows times columns of random terms that are compared. */
  private static final long MOST_CELLS = 20_000_000;

  private final MixedFit fit;
  private final double[][] covariance;
  private final FixedColumns columns;
  private final ColumnBasis ownBasis;
  private final double[][] between;
  private final Map<Integer, Double> freedomOfTerm = new LinkedHashMap<>();

  /** Works out the degrees of freedom of every term of a fit. */
  public Containment(MixedFit fit) {
    this.fit = fit;
    this.covariance = fit.basisCovariance();
    this.columns = new FixedColumns(fit.model(), fit.frame(), Coding.SUM_TO_ZERO);
    double[][] rows = columns.rows();
    this.ownBasis = new ColumnBasis(rows);
    this.between = Matrices.product(Matrices.transpose(ownBasis.rows()), fit.basis().rows());
    checkSize(fit);
    List<double[][]> strata = new ArrayList<>();
    for (RandomEffects set : sets()) {
      strata.add(indicators(set));
    }
    Strata found = new Strata(Matrices.transpose(rows), strata, fit.frame().rows());
    for (int term = -1; term < fit.model().fixed().size(); term++) {
      int[] own = columns.columnsOf(term);
      if (own.length > 0) {
        freedomOfTerm.put(term, found.freedom(own));
      }
    }
  }

  private void checkSize(MixedFit fit) {
    long effects = sets().stream().mapToLong(set -> (long) set.groupCount() * set.size()).sum();
    if (effects * fit.frame().rows() > MOST_CELLS) {
      throw new TrialFaultException(
          "df is design, which compares the columns of all random terms; %,d columns over %,d observations are too many. Use \"df\": \"satterthwaite\"."
              .formatted(effects, fit.frame().rows()));
    }
  }

  private List<RandomEffects> sets() {
    List<RandomEffects> sets = new ArrayList<>(RandomEffects.of(fit.model(), fit.frame()));
    OverTime overTime = fit.model().overTime();
    if (overTime != null) {
      RandomTerm unit = RandomTerm.mean(overTime.unit().toArray(String[]::new));
      sets.addAll(RandomEffects.of(fit.model(), fit.frame(), unit));
    }
    return sets;
  }

  private static double[][] indicators(RandomEffects set) {
    double[][] indicators = new double[set.groupCount() * set.size()][set.groups().length];
    for (int k = 0; k < set.size(); k++) {
      for (int i = 0; i < set.groups().length; i++) {
        indicators[k * set.groupCount() + set.groups()[i]][i] = set.columns()[k][i];
      }
    }
    return indicators;
  }

  /** Degrees of freedom of a term, from 0; -1 for the mean. */
  public double freedomOf(int term) {
    return freedomOfTerm.getOrDefault(term, 0.0);
  }

  @Override
  public double[][] covariance() {
    return covariance;
  }

  @Override
  public double degreesOfFreedom(double[] function) {
    return freedom(new double[][] {function});
  }

  @Override
  public FTest test(double[][] functions) {
    double[][] spread =
        Matrices.product(Matrices.product(functions, covariance), Matrices.transpose(functions));
    double[] values = fit.values(functions);
    double wald = Matrices.form(values, Matrices.inverseOfSymmetric(spread), values);
    return new FTest(functions.length, freedom(functions), wald / functions.length);
  }

  /** The smallest of the terms that the functions touch. */
  private double freedom(double[][] functions) {
    double freedom = Double.POSITIVE_INFINITY;
    for (double[] function : functions) {
      double[] onColumns = ownBasis.onColumns(Matrices.product(between, function));
      double largest = Arrays.stream(onColumns).map(Math::abs).max().orElse(0);
      for (int j = 0; j < onColumns.length; j++) {
        if (Math.abs(onColumns[j]) > 1e-9 * largest) {
          freedom = Math.min(freedom, freedomOf(columns.termOf(j)));
        }
      }
    }
    return freedom;
  }
}
