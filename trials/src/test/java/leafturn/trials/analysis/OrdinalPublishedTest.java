package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.ordinal.OrdinalAnalysis;
import org.junit.jupiter.api.Test;

/** Turf ratings beside ordinal::clm and clmm, as the README.md of karcher_turfgrass says. */
class OrdinalPublishedTest {
  private final ReferenceCase turf = new ReferenceCase("karcher_turfgrass");

  private static Models ratings() {
    return Models.of("rating")
        .ordinal()
        .factors("manage", "nitro", "week")
        .levels("rating", Cases.TURF_CLASSES.toArray(String[]::new))
        .fixed("manage", "nitro", "week");
  }

  @Test
  void likelihoodAndCoefficientsAreTheReferences() {
    OrdinalAnalysis own = OrdinalAnalysis.of(turf.table(), ratings().model());
    assertThat(own.logLikelihood()).isCloseTo(turf.number("results/clm/logLik"), within(1e-6));
    JsonNode expected = turf.at("results/clm/coefficients");
    assertThat(own.coefficients()).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      double se = expected.get(i).get("Std. Error").asDouble();
      double estimate = expected.get(i).get("Estimate").asDouble();
      String term = expected.get(i).get("term").asText();
      assertThat(own.coefficients().get(i).estimate()).as(term).isCloseTo(estimate, within(1e-5));
      assertThat(own.coefficients().get(i).se()).as(term).isCloseTo(se, within(1e-4 * se));
    }
  }

  @Test
  void testsOfTermsAreTheReferences() {
    OrdinalAnalysis own = OrdinalAnalysis.of(turf.table(), ratings().model());
    double manage = turf.number("results/lr_manage/1/LR.stat");
    double nitro = turf.number("results/lr_nitro/1/LR.stat");
    assertThat(own.tests().get(0).chiSquared()).isCloseTo(manage, within(1e-5));
    assertThat(own.tests().get(0).df()).isEqualTo(3);
    assertThat(own.tests().get(1).chiSquared()).isCloseTo(nitro, within(1e-5));
  }

  @Test
  void aRandomPlotIsHeldAtZero() {
    Models withPlots = ratings().random("rep", "manage", "nitro");
    OrdinalAnalysis own = OrdinalAnalysis.of(turf.table(), withPlots.model());
    assertThat(own.logLikelihood())
        .isCloseTo(turf.number("results/clmm_agq10/logLik"), within(1e-6));
    assertThat(own.randomSd()).isZero();
    assertThat(own.warnings()).anySatisfy(warning -> assertThat(warning).contains("held at zero"));
  }
}
