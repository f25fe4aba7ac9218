package leafturn.trials.power;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference;
import leafturn.trials.power.DifferenceTest.Rejections;
import org.junit.jupiter.api.Test;

/** Equivalence from summaries and its exact power (README.md of numbers_tost). */
class EquivalencePublishedTest {
  private final ReferenceCase numbers = new ReferenceCase("numbers_tost");

  private static PairedDifference summary(JsonNode row) {
    double diff = row.get("diff").asDouble();
    double se = row.get("se").asDouble();
    int df = row.get("df").asInt();
    return new PairedDifference(new double[0], diff, Double.NaN, se, df, diff / se, Double.NaN);
  }

  @Test
  void twoOneSidedTestsFromSummaries() {
    for (JsonNode row : numbers.at("results/tost_from_summary")) {
      double df = row.get("df").asDouble();
      double diff = row.get("diff").asDouble();
      double se = row.get("se").asDouble();
      PairedDifference.Equivalence test =
          PairedDifference.Equivalence.of(diff, se, df, row.get("margin").asDouble());
      assertThat(test.lower()).isCloseTo(row.get("p_lower").asDouble(), within(1e-10));
      assertThat(test.upper()).isCloseTo(row.get("p_upper").asDouble(), within(1e-10));
      assertThat(test.p()).isCloseTo(row.get("p_tost").asDouble(), within(1e-10));
      double reach = se * Tails.tQuantileTwoSided(0.1, df);
      assertThat(diff - reach).isCloseTo(row.get("ci90_low").asDouble(), within(1e-9));
      assertThat(diff + reach).isCloseTo(row.get("ci90_high").asDouble(), within(1e-9));
    }
  }

  @Test
  void nonInferiorityFromSummaries() {
    for (JsonNode row : numbers.at("results/noninferiority")) {
      assertThat(summary(row).nonInferiorityP(row.get("margin").asDouble()))
          .isCloseTo(row.get("p_noninferior").asDouble(), within(1e-10));
      assertThat(summary(row).interval(0.9).lower())
          .isCloseTo(row.get("one_sided_lower95").asDouble(), within(1e-9));
    }
  }

  @Test
  void powerIsTheExactIntegral() {
    EquivalenceTest test = new EquivalenceTest(0.05);
    for (JsonNode row : numbers.at("results/tost_power_exact")) {
      int n = row.get("n").asInt();
      double sd = row.get("sd").asDouble();
      double paired = sd / Math.sqrt(n);
      double groups = sd * Math.sqrt(2.0 / n);
      double margin = row.get("margin").asDouble();
      double theta = row.get("theta").asDouble();
      assertThat(test.power(margin / paired, theta / paired, n - 1))
          .as(row.toString())
          .isCloseTo(row.get("paired").asDouble(), within(1e-8));
      assertThat(test.power(margin / groups, theta / groups, 2 * n - 2))
          .as(row.toString())
          .isCloseTo(row.get("two_sample").asDouble(), within(1e-8));
    }
  }

  @Test
  void unitsAndMarginsLeadBackToThePower() {
    Design design = Design.splitYards(PlotVariance.whole(0.125), Sampling.ONCE);
    SizeQuestion question =
        new SizeQuestion(
            design,
            null,
            new DifferenceTest(0.05, 2, Rejections.BOTH_TAILS),
            false,
            0.7952072667058987,
            null,
            0.5,
            0,
            10);
    SizeAnswer answer = TrialSize.of(question);
    assertThat(requireNonNull(answer.forEquivalence()).exact()).isCloseTo(10, within(1e-6));
    assertThat(requireNonNull(answer.forEquivalence()).whole()).isEqualTo(10);
    assertThat(requireNonNull(answer.at()).smallestMargin()).isCloseTo(0.5, within(1e-7));
    assertThat(requireNonNull(answer.at()).equivalencePower())
        .isCloseTo(0.7952072667058987, within(1e-8));
  }
}
