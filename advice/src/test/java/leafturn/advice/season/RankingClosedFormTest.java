package leafturn.advice.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.Spread;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;

/** Which of some made-up programmes no other beats, and which comes nearest to the aims. */
final class RankingClosedFormTest {
  private static final SeasonPlan PLAN =
      plan(
          new double[] {20, 10}, // now
          new double[] {10, 20}, // the mirror of now
          new double[] {20, 12}, // beaten by now
          new double[] {14, 14},
          new double[] {14.1, 14.05}, // no difference that counts to the one before
          new double[] {30, 9});

  @Test
  void marksThoseNoOtherBeats() {
    Ranking ranking = Ranking.of(PLAN, weights(1, 1));

    assertThat(ranking.places().stream().map(Ranking.Place::unbeaten))
        .containsExactly(true, true, false, true, true, true);
    assertThat(ranking.unbeatenByDistance()).startsWith(0, 3, 4).hasSize(5);
  }

  @Test
  void comesNearestToTheAimsAsTheyAreWeighted() {
    assertThat(Ranking.of(PLAN, weights(1, 1)).best()).isZero();
    assertThat(Ranking.of(PLAN, weights(10, 1)).best()).isEqualTo(1);
    assertThat(Ranking.of(PLAN, weights(0, 1)).best()).isEqualTo(5);
    assertThat(Ranking.of(PLAN, weights(1, 1)).places().get(1).distance())
        .isCloseTo(0.5, within(1e-12));
  }

  @Test
  void oneAimLeavesItsBest() {
    assertThat(Ranking.of(PLAN, weights(0, 1)).unbeatenByDistance()).containsExactly(5);
  }

  @Test
  void belowAStepTheNumbersDecideAndBetweenEqualsTheUsualAims() {
    SeasonPlan plan =
        plan(
            new double[] {20, 10},
            new double[] {20, 9.95}, // less than a step of 0.2 mm better
            new double[] {5, 9.95}); // the same thatch, and less to carry
    assertThat(Ranking.alone(plan, PlanAim.THATCH).best()).isEqualTo(2);
    assertThat(Ranking.of(plan, weights(0, 1)).unbeatenByDistance()).containsExactly(2, 1, 0);
  }

  @Test
  void weightsMustBeWeights() {
    assertThatThrownBy(() -> weights(0, 0)).hasMessageContaining("give one at least");
    assertThatThrownBy(() -> weights(11, 1)).hasMessageContaining("from 0 to 10");
  }

  private static AimWeights weights(double carrying, double thatch) {
    return new AimWeights(Map.of(PlanAim.CARRYING, carrying, PlanAim.THATCH, thatch));
  }

  private static SeasonPlan plan(double[]... carriedAndThatch) {
    List<SeasonPlan.Result> results = new ArrayList<>();
    for (double[] each : carriedAndThatch) {
      results.add(
          new SeasonPlan.Result(
              new PlannedProgramme("made up", Origin.GIVEN, PlanExamples.fescue(5).programme()),
              outcome(each[0], each[1])));
    }
    return new SeasonPlan(
        results,
        new SeasonPlan.Basis(
            new PlanRequest.Draws(10, 1),
            "a third",
            Species.TALL_FESCUE,
            List.of(2012),
            List.of(),
            4,
            2,
            10,
            10,
            1));
  }

  private static ProgrammeOutcome outcome(double litresPerM2, double thatchMm) {
    Spread none = Spread.exactly(0);
    Spread thatch = Spread.exactly(thatchMm);
    return new ProgrammeOutcome(
        Spread.exactly(20),
        Spread.exactly(500),
        none,
        new ProgrammeOutcome.Work(null, Spread.exactly(litresPerM2), null, null),
        new ProgrammeOutcome.Kept(none, none, none),
        new ProgrammeOutcome.Feed(0, none),
        none,
        new ProgrammeOutcome.Thatch(thatch, thatch, thatch),
        new ProgrammeOutcome.Risks(none, none));
  }
}
