package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.OverTime.Correlation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Correlated dates beside nlme (gls and lme, REML), as the cases' README.md files say. */
class TimeCorrelationPublishedTest {
  /** Parameters stop where nlme's optimiser stopped. */
  private static final double PARAMETERS = 1e-5;

  /** A model and where its results stand. */
  record Check(String name, String path, Models models) {
    @Override
    public String toString() {
      return name + " " + path;
    }

    MixedFit fit() {
      return Cases.fit(Cases.table(name), models);
    }

    JsonNode at(String field) {
      return new ReferenceCase(name).at("results/" + path + "/" + field);
    }
  }

  static Stream<Check> checks() {
    return Stream.of(
        growth("gls_cs", Correlation.COMPOUND_SYMMETRY),
        growth("gls_ar1", Correlation.AR1),
        growth("gls_ar1_heterogeneous", Correlation.HETEROGENEOUS_AR1),
        new Check(
            "orthodont",
            "gls_ar1_linear",
            Cases.growth().overTime(Correlation.AR1, "occ", "Subject")),
        new Check(
            "orthodont",
            "lme_intercept_ar1",
            Cases.growthByAge().random("Subject").overTime(Correlation.AR1, "age", "Subject")),
        new Check("sleepstudy", "gls_ar1", sleep().overTime(Correlation.AR1, "Days", "Subject")),
        new Check(
            "sleepstudy",
            "gls_cs",
            sleep().overTime(Correlation.COMPOUND_SYMMETRY, "Days", "Subject")),
        new Check(
            "sleepstudy",
            "lme_ar1",
            Cases.sleepMeans().overTime(Correlation.AR1, "Days", "Subject")),
        new Check(
            "bodyweight", "gls_car1", Cases.weights().overTime(Correlation.CAR1, "Time", "Rat")),
        new Check(
            "bodyweight",
            "lme_car1",
            Cases.weights().random("Rat").overTime(Correlation.CAR1, "Time", "Rat")));
  }

  private static Models sleep() {
    return Models.of("Reaction").covariates("Days").fixed("Days");
  }

  private static Check growth(String path, Correlation correlation) {
    return new Check(
        "orthodont", path, Cases.growthByAge().overTime(correlation, "age", "Subject"));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void likelihoodAndCorrelationAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    assertThat(fit.logLikelihood()).isCloseTo(check.at("logLik").asDouble(), within(1e-6));
    double rho = check.at("correlation_parameters/values/0").asDouble();
    assertThat(Objects.requireNonNull(fit.rho())).isCloseTo(rho, within(PARAMETERS));
    double sigma = check.at("sigma").asDouble();
    assertThat(Math.sqrt(fit.residualVariance())).isCloseTo(sigma, within(PARAMETERS * sigma));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void coefficientsAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    List<Double> errors = new ArrayList<>();
    fit.coefficients(fit.basisCovariance()).forEach(own -> errors.add(own.se()));
    List<Double> expected = new ArrayList<>();
    check.at("coefficients").forEach(node -> expected.add(node.get("Std.Error").asDouble()));
    errors.sort(null);
    expected.sort(null);
    assertThat(errors).hasSameSizeAs(expected);
    for (int i = 0; i < errors.size(); i++) {
      double value = expected.get(i);
      assertThat(errors.get(i)).isCloseTo(value, within(PARAMETERS * value));
    }
  }

  @Test
  void anUnstructuredCovarianceIsTheReferences() {
    Check check = growth("gls_unstructured", Correlation.UNSTRUCTURED);
    MixedFit fit = check.fit();
    assertThat(fit.logLikelihood()).isCloseTo(check.at("logLik").asDouble(), within(1e-6));
    double[][] correlation = fit.timeCorrelation();
    int next = 0;
    for (int i = 0; i < 4; i++) {
      for (int j = i + 1; j < 4; j++) {
        double expected = check.at("correlation_parameters/values/" + next++).asDouble();
        assertThat(correlation[i][j]).isCloseTo(expected, within(PARAMETERS));
      }
    }
    double[] ratios = Objects.requireNonNull(fit.sdRatios());
    JsonNode expected = check.at("variance_function/values");
    assertThat(ratios[1]).isCloseTo(expected.get("10").asDouble(), within(PARAMETERS));
    assertThat(ratios[2]).isCloseTo(expected.get("12").asDouble(), within(PARAMETERS));
    assertThat(ratios[3]).isCloseTo(expected.get("14").asDouble(), within(PARAMETERS));
  }

  @Test
  void heterogeneousVariancesAreTheReferences() {
    Check check = growth("gls_ar1_heterogeneous", Correlation.HETEROGENEOUS_AR1);
    double[] ratios = Objects.requireNonNull(check.fit().sdRatios());
    JsonNode expected = check.at("variance_function/values");
    assertThat(ratios[1]).isCloseTo(expected.get("10").asDouble(), within(PARAMETERS));
    assertThat(ratios[2]).isCloseTo(expected.get("12").asDouble(), within(PARAMETERS));
    assertThat(ratios[3]).isCloseTo(expected.get("14").asDouble(), within(PARAMETERS));
  }

  @Test
  void independentErrorsAreLeastSquares() {
    MixedFit fit = Cases.fit(Cases.table("orthodont"), Cases.growthByAge());
    JsonNode expected = new ReferenceCase("orthodont").at("results/gls_independent");
    assertThat(fit.logLikelihood()).isCloseTo(expected.get("logLik").asDouble(), within(1e-9));
    assertThat(Math.sqrt(fit.residualVariance()))
        .isCloseTo(expected.get("sigma").asDouble(), within(1e-12));
  }
}
