package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.records.Examples;
import org.junit.jupiter.api.Test;

/**
 * The layout of the example as it was first drawn. There is no source: a change here means that
 * trials already laid out cannot be drawn again, which must never be. Codes of bags were drawn in
 * another way before the first release, when a changed plan gave printed ones to other plots.
 */
class TrialLayPinTest {
  @Test
  void thePlanAndSeedOfTheExampleGiveThisLayoutForEver() throws Exception {
    String plan = Examples.file("split-yards.trial.json").toString();
    JsonNode report = Ran.of("trial", "lay", plan, "--json").json();
    assertThat(report.get("planSha256").asText())
        .isEqualTo("303bf41e32130f1d1d22839168d3530685160479111b1df884f8424ca73b883d");
    StringBuilder arms = new StringBuilder();
    report.get("plots").forEach(plot -> arms.append(plot.get("arm").asText().charAt(0)));
    assertThat(arms).hasToString("rccrrccrcrrccrrc");
    assertThat(report.at("/bags/0/code").asText()).isEqualTo("Y86KPY6");
    assertThat(report.at("/bags/63/code").asText()).isEqualTo("8Y3MN9D");
    assertThat(report.at("/cores/0").toString()).contains("\"xM\":21.73", "\"yM\":8.76");
    assertThat(report.at("/cores/479").toString()).contains("\"xM\":2.17", "\"yM\":3.06");
    assertThat(report.at("/walkingOrder/2/plots").toString()).isEqualTo("[\"B3-2\",\"B3-1\"]");
  }
}
