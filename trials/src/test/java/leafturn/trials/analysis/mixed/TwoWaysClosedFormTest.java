package leafturn.trials.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import leafturn.trials.analysis.Cases;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The likelihood worked on by rows and by random effects is one and the same: value, slopes,
 * covariances and how they move agree at the fit and away from it.
 */
class TwoWaysClosedFormTest {
  private static final double SAME = 1e-8;

  /** A model and its data. */
  record Given(String name, TrialTable table, Models models) {
    @Override
    public String toString() {
      return name;
    }

    MixedFit fit(boolean byRows) {
      TrialModel model = models.model();
      return MixedModel.fit(model, ModelFrame.of(table, model), byRows);
    }
  }

  static Stream<Given> given() {
    RandomTerm days = new RandomTerm(List.of("Subject"), List.of("Days"), true, true);
    RandomTerm machines = new RandomTerm(List.of("Worker"), List.of("Machine"), true, true);
    return Stream.of(
        new Given(
            "crossed",
            Cases.table("penicillin"),
            Models.of("diameter").random("plate").random("sample")),
        new Given("split plots", Cases.table("oats_missing"), Cases.oats()),
        new Given(
            "a term at zero",
            Cases.table("oats_as_stripplot"),
            Cases.oats().random("Block", "nitro")),
        new Given(
            "slopes",
            Cases.table("sleepstudy"),
            Models.of("Reaction").covariates("Days").fixed("Days").random(days)),
        new Given(
            "several effects",
            Cases.table("machines"),
            Models.of("score").factors("Machine").fixed("Machine").random(machines)),
        new Given("a season", Cases.table("speed_synthetic"), season()));
  }

  private static Models season() {
    return Models.of("logK")
        .factors("trt", "date")
        .fixed("trt", "date", "trt*date")
        .random("yard")
        .random("yard", "trt")
        .random("yard", "date")
        .random("yard", "trt", "date");
  }

  @ParameterizedTest
  @MethodSource("given")
  void theFitsAgree(Given given) {
    MixedFit rows = given.fit(true);
    MixedFit effects = given.fit(false);
    assertThat(effects.logLikelihood()).isCloseTo(rows.logLikelihood(), within(SAME));
    assertThat(effects.boundary()).isEqualTo(rows.boundary());
    double residual = rows.residualVariance();
    for (int i = 0; i < rows.variances().size(); i++) {
      assertThat(effects.variances().get(i).variance())
          .isCloseTo(rows.variances().get(i).variance(), within(1e-6 * residual));
    }
  }

  @ParameterizedTest
  @MethodSource("given")
  void theLikelihoodsAgreeAwayFromTheFit(Given given) {
    RestrictedLikelihood rows = given.fit(true).likelihood();
    RestrictedLikelihood effects = given.fit(false).likelihood();
    double[] theta = new double[rows.structure().parameters()];
    for (double value : new double[] {0, 1e-7, 0.3, 1.7, 40}) {
      for (int i = 0; i < theta.length; i++) {
        theta[i] = value * (1 + 0.1 * i);
      }
      RestrictedLikelihood.State one = state(rows, theta);
      RestrictedLikelihood.State other = state(effects, theta);
      assertThat(other.logDeterminants()).isCloseTo(one.logDeterminants(), within(SAME));
      assertThat(other.squares()).isCloseTo(one.squares(), within(SAME * one.squares()));
      double[] slopes = rows.gradient(one, 0.7);
      double[] others = effects.gradient(other, 0.7);
      for (int i = 0; i < slopes.length; i++) {
        assertThat(others[i]).isCloseTo(slopes[i], within(SAME * (1 + Math.abs(slopes[i]))));
      }
      alike(flat(one.traces().gamma()), flat(other.traces().gamma()), 1e-7);
      alike(one.covariance(), other.covariance(), SAME);
      alike(rows.residualParts(one), effects.residualParts(other), SAME);
    }
  }

  @ParameterizedTest
  @MethodSource("given")
  void whatTheDataKnowOfTheVariancesAgrees(Given given) {
    VarianceInformation rows = given.fit(true).varianceInformation();
    VarianceInformation effects = given.fit(false).varianceInformation();
    alike(rows.uncertainty(), effects.uncertainty(), 1e-5);
    for (int i = 0; i < rows.first().length; i++) {
      alike(rows.first()[i], effects.first()[i], 1e-5);
      for (int j = 0; j < rows.first().length; j++) {
        alike(rows.second()[i][j], effects.second()[i][j], 1e-5);
      }
    }
  }

  private static RestrictedLikelihood.State state(RestrictedLikelihood of, double[] theta) {
    RestrictedLikelihood.State state = of.state(theta.clone());
    if (state == null) {
      throw new AssertionError("no likelihood");
    }
    return state;
  }

  private static double[][] flat(double[][][] of) {
    return Stream.of(of).flatMap(Stream::of).toArray(double[][]::new);
  }

  /** Elements agree beside the largest. */
  private static void alike(double[][] one, double[][] other, double tolerance) {
    double largest = 0;
    for (double[] row : one) {
      for (double value : row) {
        largest = Math.max(largest, Math.abs(value));
      }
    }
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < one[i].length; j++) {
        assertThat(other[i][j]).isCloseTo(one[i][j], within(tolerance * largest));
      }
    }
  }
}
