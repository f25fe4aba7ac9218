package leafturn.trials.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.ReferenceCase;
import org.junit.jupiter.api.Test;

/** Cores, composites and duplicates (README.md of numbers_sampling). */
class SamplingPublishedTest {
  private final ReferenceCase numbers = new ReferenceCase("numbers_sampling");

  @Test
  void coresForARelativeError() {
    for (JsonNode row : numbers.at("results/cores")) {
      double cv = row.get("cv").asDouble();
      double error = row.get("rel_error").asDouble();
      double normal = row.get("n_normal_95").asDouble();
      assertThat(Sampling.coresByNormal(cv, error, 0.95)).isCloseTo(normal, within(1e-10 * normal));
      assertThat(Sampling.cores(cv, error, 0.95))
          .as(row.toString())
          .isEqualTo(row.get("n_t_95").asInt());
    }
  }

  @Test
  void varianceOfPlotMeans() {
    for (JsonNode row : numbers.at("results/plot_mean_variance/values")) {
      Sampling sampling =
          new Sampling(
              1,
              row.get("cores").asInt(),
              row.get("composites").asInt(),
              row.get("lab_duplicates").asInt());
      double own =
          sampling.varianceOfPlotMean(
              row.get("s2_plot").asDouble(),
              row.get("s2_core").asDouble(),
              row.get("s2_lab").asDouble());
      assertThat(own).isCloseTo(row.get("var_plot_mean").asDouble(), within(1e-15));
      PlotVariance variance =
          new PlotVariance(
              row.get("s2_plot").asDouble(),
              0,
              0,
              row.get("s2_core").asDouble(),
              row.get("s2_lab").asDouble());
      assertThat(variance.ofSeasonMean(sampling)).isCloseTo(own, within(1e-15));
    }
  }

  @Test
  void coefficientOfVariationOfALogarithm() {
    double variance = numbers.number("results/lognormal_back_transform/var_log");
    double cv = numbers.number("results/lognormal_back_transform/cv");
    assertThat(LogScale.cv(variance)).isCloseTo(cv, within(1e-12));
    assertThat(LogScale.variance(cv)).isCloseTo(variance, within(1e-12));
  }
}
