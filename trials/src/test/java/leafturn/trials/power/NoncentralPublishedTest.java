package leafturn.trials.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.ReferenceCase;
import org.junit.jupiter.api.Test;

/** Noncentral t and F beside R's pt and pf (README.md of numbers_distributions). */
class NoncentralPublishedTest {
  private final ReferenceCase numbers = new ReferenceCase("numbers_distributions");

  @Test
  void noncentralT() {
    for (JsonNode row : numbers.at("results/noncentral_t_cdf")) {
      double above =
          Noncentral.tAbove(
              row.get("q").asDouble(), row.get("df").asDouble(), row.get("ncp").asDouble());
      assertThat(1 - above).as(row.toString()).isCloseTo(row.get("cdf").asDouble(), within(1e-9));
    }
  }

  @Test
  void noncentralF() {
    for (JsonNode row : numbers.at("results/noncentral_F_cdf")) {
      double above =
          Noncentral.fAbove(
              row.get("q").asDouble(),
              row.get("df1").asDouble(),
              row.get("df2").asDouble(),
              row.get("ncp").asDouble());
      assertThat(1 - above).as(row.toString()).isCloseTo(row.get("cdf").asDouble(), within(1e-9));
    }
  }
}
