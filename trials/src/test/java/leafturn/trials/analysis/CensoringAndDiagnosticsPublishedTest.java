package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.censored.CensoredRegression;
import leafturn.trials.analysis.data.Response;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.diagnostics.DeletionResiduals;
import leafturn.trials.analysis.diagnostics.Grubbs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Censored values beside survival::survreg, and residuals beside rstudent, as the cases say. */
class CensoringAndDiagnosticsPublishedTest {
  private final ReferenceCase numbers = new ReferenceCase("numbers_censoring");

  private Response response(boolean log) {
    double[] values = numbers.numbers("results/value");
    boolean[] below = new boolean[values.length];
    for (int i = 0; i < values.length; i++) {
      below[i] = numbers.at("results/censored/" + i).asBoolean();
      values[i] = log ? Math.log(values[i]) : values[i];
    }
    return new Response("weight", values, below);
  }

  private double[][] byGroup() {
    double[][] rows = new double[30][3];
    for (int i = 0; i < 30; i++) {
      String group = numbers.at("results/group/" + i).asText();
      rows[i] = new double[] {1, group.equals("trt1") ? 1 : 0, group.equals("trt2") ? 1 : 0};
    }
    return rows;
  }

  @Test
  void aLognormalRegressionIsTheReferences() {
    CensoredRegression own = CensoredRegression.of(response(true), byGroup());
    compare(own, "lognormal_by_group");
    double jacobian = 0;
    Response response = response(true);
    for (int i = 0; i < 30; i++) {
      jacobian += response.belowDetection()[i] ? 0 : response.values()[i];
    }
    assertThat(own.logLikelihood() - jacobian)
        .isCloseTo(numbers.number("results/lognormal_by_group/logLik"), within(1e-6));
  }

  @Test
  void aNormalRegressionIsTheReferences() {
    CensoredRegression own = CensoredRegression.of(response(false), byGroup());
    compare(own, "normal_by_group");
    assertThat(own.logLikelihood())
        .isCloseTo(numbers.number("results/normal_by_group/logLik"), within(1e-6));
  }

  private void compare(CensoredRegression own, String path) {
    JsonNode coefficients = numbers.at("results/" + path + "/coefficients");
    int next = 0;
    for (JsonNode expected : coefficients) {
      assertThat(own.coefficients()[next++]).isCloseTo(expected.asDouble(), within(1e-6));
    }
    assertThat(own.scale()).isCloseTo(numbers.number("results/" + path + "/scale"), within(1e-6));
    double[] errors = numbers.numbers("results/" + path + "/se");
    assertThat(own.standardErrors()).containsExactly(errors, within(1e-5));
  }

  @Test
  void moreThanSeventyPercentAreRefused() {
    boolean[] below = {true, true, true, false};
    Response response = new Response("p", new double[] {2, 2, 2, 5}, below);
    double[][] rows = {{1}, {1}, {1}, {1}};
    assertThatThrownBy(() -> CensoredRegression.of(response, rows))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("70 %");
  }

  @Test
  void deletionResidualsAreTheReferences() {
    ReferenceCase plants = new ReferenceCase("plantgrowth");
    DeletionResiduals own =
        DeletionResiduals.of(
            Cases.fit(plants.table(), Models.of("weight").factors("group").fixed("group")));
    double[] expected = plants.numbers("results/diagnostics/externally_studentized");
    assertThat(own.values()).containsExactly(expected, within(1e-9));
    assertThat(own.sentences()).isEmpty();
  }

  @Test
  void anObservationThatLiesApartIsNamedAndStaysIn() {
    String csv = "arm,y\na,1\na,1.2\na,0.9\na,1.1\na,9\nb,2\nb,2.1\nb,1.9\nb,2.2\nb,1.8\n";
    TrialAnalysis analysis =
        TrialAnalysis.of(
            ReferenceCase.table(csv), Models.of("y").factors("arm").fixed("arm").model());
    assertThat(analysis.warnings())
        .anySatisfy(warning -> assertThat(warning).contains("Line 6 lies apart", "stays in"));
    assertThat(analysis.fit().frame().rows()).isEqualTo(10);
  }

  @ParameterizedTest
  @CsvSource({"6, 1.887145", "10, 2.289954", "20, 2.708246"})
  void grubbsLimitsAreTheReferences(int values, double expected) {
    assertThat(Grubbs.critical(values, 0.05)).isCloseTo(expected, within(5e-7));
  }
}
