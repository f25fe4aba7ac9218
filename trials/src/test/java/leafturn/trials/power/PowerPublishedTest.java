package leafturn.trials.power;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.power.DifferenceTest.Rejections;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * Power, sample sizes and detectable differences beside R's power.t.test, power.anova.test and
 * noncentral F (README.md of numbers_power). R stops its searches for a sample size at a relative
 * 1e-4 or so.
 */
class PowerPublishedTest {
  private static final double EXACT = 1e-9;
  private static final double SEARCHED = 1e-4;

  private final ReferenceCase numbers = new ReferenceCase("numbers_power");

  private static DifferenceTest test(double alpha, Rejections counted) {
    return new DifferenceTest(alpha, 2, counted);
  }

  private static Design pairs(double sdOfDifference) {
    PlotVariance half = PlotVariance.whole(sdOfDifference * sdOfDifference / 2);
    return Design.splitYards(half, Sampling.ONCE);
  }

  private static Design groups(int arms, double variance) {
    return Design.oneFactor(
        Layout.INDEPENDENT_GROUPS, arms, PlotVariance.whole(variance), Sampling.ONCE);
  }

  private static SizeAnswer answer(
      Design design,
      DifferenceTest test,
      double power,
      double difference,
      @Nullable Integer units) {
    return TrialSize.of(
        new SizeQuestion(design, null, test, false, power, difference, null, 0, units));
  }

  private static double power(Design design, DifferenceTest test, double delta, int units) {
    return requireNonNull(answer(design, test, 0.999, delta, units).at()).power();
  }

  @Test
  void powerOfPairsAndGroups() {
    for (JsonNode row : numbers.at("results/t_power")) {
      double alpha = row.get("alpha").asDouble();
      int n = row.get("n").asInt();
      double delta = row.get("delta").asDouble();
      DifferenceTest both = test(alpha, Rejections.BOTH_TAILS);
      DifferenceTest near = test(alpha, Rejections.NEAR_TAIL);
      assertThat(power(groups(2, 1), both, delta, n))
          .as(row.toString())
          .isCloseTo(row.get("two_sample_strict").asDouble(), within(EXACT));
      assertThat(power(groups(2, 1), near, delta, n))
          .as(row.toString())
          .isCloseTo(row.get("two_sample_not_strict").asDouble(), within(EXACT));
      assertThat(power(pairs(1), both, delta, n))
          .as(row.toString())
          .isCloseTo(row.get("paired_strict").asDouble(), within(EXACT));
    }
  }

  @Test
  void numbersOfPairsAndPlots() {
    DifferenceTest near = test(0.05, Rejections.NEAR_TAIL);
    for (JsonNode row : numbers.at("results/t_sample_size")) {
      double delta = row.get("delta").asDouble();
      double power = row.get("power").asDouble();
      double ofPairs = row.get("n_pairs").asDouble();
      double ofGroups = row.get("n_per_group").asDouble();
      assertThat(requireNonNull(answer(pairs(1), near, power, delta, null).forDifference()).exact())
          .isCloseTo(ofPairs, within(SEARCHED * ofPairs));
      assertThat(
              requireNonNull(answer(groups(2, 1), near, power, delta, null).forDifference())
                  .exact())
          .isCloseTo(ofGroups, within(SEARCHED * ofGroups));
      assertThat(requireNonNull(answer(pairs(1), near, power, delta, null).forDifference()).whole())
          .isEqualTo((int) Math.ceil(ofPairs));
    }
  }

  @Test
  void minimumDetectableDifferences() {
    DifferenceTest near = test(0.05, Rejections.NEAR_TAIL);
    for (JsonNode row : numbers.at("results/minimum_detectable_difference")) {
      int n = row.get("n").asInt();
      double power = row.get("power").asDouble();
      double ofPairs = row.get("mdd_pairs_in_sd_of_difference").asDouble();
      double ofGroups = row.get("mdd_two_sample_in_sd").asDouble();
      assertThat(requireNonNull(answer(pairs(1), near, power, 1, n).at()).detectable())
          .isCloseTo(ofPairs, within(SEARCHED * ofPairs));
      assertThat(requireNonNull(answer(groups(2, 1), near, power, 1, n).at()).detectableNearTail())
          .isCloseTo(ofGroups, within(SEARCHED * ofGroups));
    }
  }

  @Test
  void powerOfSeveralGroups() {
    for (JsonNode row : numbers.at("results/power_anova_test")) {
      int arms = row.get("groups").asInt();
      double between = row.get("between.var").asDouble();
      SizeQuestion question =
          new SizeQuestion(
              groups(arms, row.get("within.var").asDouble()),
              null,
              test(0.05, Rejections.BOTH_TAILS),
              true,
              0.8,
              Math.sqrt(2 * (arms - 1) * between),
              null,
              0,
              row.get("n").asInt());
      assertThat(requireNonNull(TrialSize.of(question).at()).power())
          .as(row.toString())
          .isCloseTo(row.get("power").asDouble(), within(EXACT));
    }
  }

  @Test
  void powerOfRandomisedBlocks() {
    for (JsonNode row : numbers.at("results/rcbd/values")) {
      int arms = row.get("t").asInt();
      Design design =
          Design.oneFactor(Layout.RANDOMISED_BLOCK, arms, PlotVariance.whole(1), Sampling.ONCE);
      SizeQuestion question =
          new SizeQuestion(
              design,
              null,
              test(0.05, Rejections.BOTH_TAILS),
              true,
              0.8,
              row.get("delta_over_sigma").asDouble(),
              null,
              0,
              row.get("b").asInt());
      SizeAnswer.AtUnits at = requireNonNull(TrialSize.of(question).at());
      assertThat(at.df()).isEqualTo(row.get("df2").asDouble());
      assertThat(at.power())
          .as(row.toString())
          .isCloseTo(row.get("power").asDouble(), within(EXACT));
    }
  }

  @Test
  void powerInBothStrataOfSplitPlots() {
    for (JsonNode row : numbers.at("results/split_plot/values")) {
      for (boolean second : new boolean[] {false, true}) {
        String stratum = second ? "sub" : "whole";
        Design design =
            new Design(
                Layout.SPLIT_PLOT,
                row.get("a").asInt(),
                row.get("b").asInt(),
                second,
                1,
                PlotVariance.whole(row.get("se").asDouble()),
                row.get("sw").asDouble(),
                0,
                Sampling.ONCE);
        int blocks = row.get("r").asInt();
        assertThat(design.varianceOfDifference(blocks))
            .isCloseTo(row.get("var_diff_" + stratum).asDouble(), within(1e-12));
        assertThat(design.degreesOfFreedom(blocks)).isEqualTo(row.get("df_" + stratum).asDouble());
        double power =
            power(design, test(0.05, Rejections.BOTH_TAILS), row.get("delta").asDouble(), blocks);
        String field = second ? "power_sub_pairwise" : "power_whole";
        assertThat(power).as(row.toString()).isCloseTo(row.get(field).asDouble(), within(EXACT));
      }
    }
  }

  @Test
  void splitYardsWithDatesAndCores() {
    for (JsonNode row : numbers.at("results/paired_yards_repeated/values")) {
      PlotVariance variance =
          new PlotVariance(
              row.get("s2_yt").asDouble(),
              row.get("s2_ytd").asDouble(),
              row.get("rho").asDouble(),
              row.get("s2_core").asDouble(),
              0);
      Design design =
          Design.splitYards(
              variance, new Sampling(row.get("dates").asInt(), row.get("sub").asInt(), 1, 1));
      assertThat(design.varianceOfDifference(1))
          .isCloseTo(row.get("var_diff_one_yard").asDouble(), within(1e-12));
      double power =
          power(
              design,
              test(0.05, Rejections.BOTH_TAILS),
              row.get("delta").asDouble(),
              row.get("yards").asInt());
      assertThat(power)
          .as(row.toString())
          .isCloseTo(row.get("power_two_sided").asDouble(), within(EXACT));
    }
  }

  @Test
  void pairsForRatios() {
    for (JsonNode row : numbers.at("results/log_ratio_pairs/values")) {
      double variance = LogScale.variance(row.get("cv").asDouble());
      assertThat(Math.sqrt(variance)).isCloseTo(row.get("sd_log").asDouble(), within(1e-12));
      Design design = Design.splitYards(PlotVariance.whole(variance), Sampling.ONCE);
      double pairs = row.get("pairs_80").asDouble();
      SizeAnswer answer =
          answer(
              design,
              test(0.05, Rejections.NEAR_TAIL),
              0.8,
              Math.log(row.get("ratio").asDouble()),
              null);
      assertThat(requireNonNull(answer.forDifference()).exact())
          .isCloseTo(pairs, within(SEARCHED * pairs));
    }
  }

  /** Values printed to nine digits in the notes on trials; see README.md of numbers_power. */
  @Test
  void oneSidedPowerIsThatOfTwiceTheLevel() {
    DifferenceTest one = new DifferenceTest(0.025, 1, Rejections.BOTH_TAILS);
    double near = power(groups(2, 1), test(0.05, Rejections.NEAR_TAIL), 1, 10);
    assertThat(power(groups(2, 1), one, 1, 10)).isCloseTo(near, within(1e-12));
    assertThat(near).isCloseTo(0.561984615, within(5e-10));
  }
}
