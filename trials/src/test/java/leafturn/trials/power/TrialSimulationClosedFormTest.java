package leafturn.trials.power;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.power.DifferenceTest.Rejections;
import org.junit.jupiter.api.Test;

/** Simulated power beside the formulas, where there are formulas. */
class TrialSimulationClosedFormTest {
  private static final PlotVariance SEASON = new PlotVariance(0.05, 0.1, 0.5, 0.3, 0);
  private static final Sampling DATES = new Sampling(6, 3, 1, 1);

  private static SizeQuestion question(Design design, boolean any, double difference, int units) {
    return new SizeQuestion(
        design,
        null,
        new DifferenceTest(0.05, 2, Rejections.BOTH_TAILS),
        any,
        0.8,
        difference,
        null,
        0,
        units);
  }

  private static SimulatedPower simulated(SizeQuestion question, int trials, int threads) {
    return TrialSimulation.of(
        new SimulationQuestion(question, Surroundings.blocks(0.2), false, null, trials, 20260401),
        threads,
        done -> {});
  }

  /** Within four Monte Carlo standard errors, which chance leaves once in 16,000. */
  private static void assertThatSimulationAgrees(SizeQuestion question, int trials) {
    double exact = requireNonNull(TrialSize.of(question).at()).power();
    SimulatedPower.Share found = requireNonNull(simulated(question, trials, 2).found());
    double error = Math.sqrt(exact * (1 - exact) / trials);
    assertThat(Math.abs(found.share() - exact) / error)
        .as("%s simulated, %s by formula", found.share(), exact)
        .isLessThan(4);
  }

  @Test
  void splitYards() {
    assertThatSimulationAgrees(question(Design.splitYards(SEASON, DATES), false, 0.3, 10), 20_000);
  }

  @Test
  void equivalenceOfSplitYards() {
    SizeQuestion question =
        new SizeQuestion(
            Design.splitYards(SEASON, DATES),
            null,
            new DifferenceTest(0.05, 2, Rejections.BOTH_TAILS),
            false,
            0.8,
            null,
            0.4,
            0.1,
            12);
    double exact = requireNonNull(TrialSize.of(question).at()).equivalencePower();
    SimulatedPower.Share within = requireNonNull(simulated(question, 20_000, 2).equivalent());
    assertThat(Math.abs(within.share() - exact) / within.error()).isLessThan(4);
  }

  @Test
  void randomisedBlocksOfThreeArms() {
    Design design =
        Design.oneFactor(Layout.RANDOMISED_BLOCK, 3, PlotVariance.whole(1), Sampling.ONCE);
    assertThatSimulationAgrees(question(design, true, 1.5, 6), 1000);
    assertThatSimulationAgrees(question(design, false, 1.5, 6), 1000);
  }

  @Test
  void latinSquares() {
    Design design = Design.oneFactor(Layout.LATIN_SQUARE, 4, PlotVariance.whole(1), Sampling.ONCE);
    assertThatSimulationAgrees(question(design, true, 2, 1), 1000);
  }

  @Test
  void bothStrataOfSplitPlotsAndStrips() {
    for (boolean second : new boolean[] {false, true}) {
      Design split =
          new Design(
              Layout.SPLIT_PLOT, 2, 3, second, 1, PlotVariance.whole(1), 0.5, 0, Sampling.ONCE);
      assertThatSimulationAgrees(question(split, second, 1.5, 5), 1000);
      Design strips =
          new Design(
              Layout.STRIP_PLOT, 2, 2, second, 1, PlotVariance.whole(1), 0.5, 1, Sampling.ONCE);
      assertThatSimulationAgrees(question(strips, false, 1.5, 6), 1000);
    }
  }

  @Test
  void theAnswerDoesNotDependOnThreads() {
    SizeQuestion question = question(Design.splitYards(SEASON, DATES), false, 0.3, 8);
    SimulatedPower one = simulated(question, 1000, 1);
    assertThat(simulated(question, 1000, 2)).isEqualTo(one);
    assertThat(simulated(question, 1000, 3)).isEqualTo(one);
  }

  @Test
  void moreYardsCannotReplaceYears() {
    PlotVariance half = PlotVariance.whole(0.02);
    Design design = new Design(Layout.YARDS_AND_YEARS, 2, 1, false, 3, half, 0, 0, Sampling.ONCE);
    Surroundings around = new Surroundings(0.1, 0, 0.1, 0.05, 0.05, 0.02);
    double[] power = new double[2];
    for (int i = 0; i < 2; i++) {
      SizeQuestion question = question(design, false, 0.4, i == 0 ? 5 : 12);
      SimulationQuestion years = new SimulationQuestion(question, around, false, null, 400, 7);
      power[i] = requireNonNull(TrialSimulation.of(years, 2, done -> {}).found()).share();
    }
    double yearsAlone =
        new DifferenceTest(0.05, 2, Rejections.BOTH_TAILS).power(0.4 / Math.sqrt(2 * 0.05 / 3), 2);
    assertThat(power[1]).isLessThan(yearsAlone + 0.1);
    assertThat(power[1] - power[0]).isLessThan(0.15);
  }

  @Test
  void aModelOfOnesOwnIsFittedToEveryReading() {
    SizeQuestion question = question(Design.splitYards(SEASON, DATES), false, 0.3, 10);
    SimulationQuestion.MixedAnalysis analysis =
        new SimulationQuestion.MixedAnalysis(model("practice", "date"), "practice", false);
    SimulationQuestion simulation =
        new SimulationQuestion(question, Surroundings.blocks(0.2), true, analysis, 200, 3);
    double exact = requireNonNull(TrialSize.of(question).at()).power();
    SimulatedPower.Share found =
        requireNonNull(TrialSimulation.of(simulation, 2, done -> {}).found());
    assertThat(Math.abs(found.share() - exact) / found.error()).isLessThan(4);
  }

  @Test
  void aModelThatDoesNotFitTheDesignSaysSo() {
    SizeQuestion question = question(Design.splitYards(SEASON, DATES), false, 0.3, 10);
    SimulationQuestion.MixedAnalysis analysis =
        new SimulationQuestion.MixedAnalysis(model("practise", "date"), "practise", false);
    SimulationQuestion simulation =
        new SimulationQuestion(question, Surroundings.blocks(0.2), true, analysis, 200, 3);
    assertThatThrownBy(() -> TrialSimulation.of(simulation, 2, done -> {}))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("practise");
  }

  private static TrialModel model(String practice, String date) {
    return new TrialModel(
        "potassium",
        TrialModel.Scale.LOG,
        List.of(practice, date),
        List.of(),
        List.of(Term.of(practice), Term.of(date), Term.of(practice + "*" + date)),
        true,
        List.of(
            RandomTerm.mean("yard"),
            RandomTerm.mean("yard", practice),
            RandomTerm.mean("yard", date)),
        null,
        DegreesOfFreedom.KENWARD_ROGER,
        null,
        Map.of());
  }
}
