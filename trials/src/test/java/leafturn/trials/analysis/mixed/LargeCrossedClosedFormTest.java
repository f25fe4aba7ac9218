package leafturn.trials.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.api.Test;

/** Crossed terms of many levels, where the average information leads the search. */
class LargeCrossedClosedFormTest {
  private static final long SEED = 4711;

  /** Raters and yards met at random; {@code yardSd} 0 for yards that do not differ. */
  private static TrialTable table(int rows, int raters, int yards, double yardSd) {
    Random random = new Random(SEED);
    double[] ofRaters = effects(random, raters, 0.6);
    double[] ofYards = effects(random, yards, yardSd);
    List<List<String>> all = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      int rater = row < raters ? row : random.nextInt(raters);
      int yard = row < yards ? row : random.nextInt(yards);
      double value = 5 + ofRaters[rater] + ofYards[yard] + random.nextGaussian();
      String arm = random.nextBoolean() ? "a" : "b";
      all.add(List.of("r" + rater, "y" + yard, arm, String.valueOf(value)));
      lines.add(row + 2);
    }
    return new TrialTable(List.of("rater", "yard", "arm", "value"), all, lines);
  }

  private static double[] effects(Random random, int count, double sd) {
    return random.doubles(count).map(unused -> sd * random.nextGaussian()).toArray();
  }

  private static Models models() {
    return Models.of("value").factors("arm").fixed("arm").random("rater").random("yard");
  }

  @Test
  void theSearchByAverageInformationEndsWhereTheRowsSay() {
    TrialModel model = models().model();
    ModelFrame frame = ModelFrame.of(table(900, 260, 180, 0.8), model);
    MixedFit effects = MixedModel.fit(model, frame, false);
    MixedFit rows = MixedModel.fit(model, frame, true);
    assertThat(effects.likelihood().blocks()).anyMatch(Block::isDear);
    assertThat(effects.logLikelihood()).isCloseTo(rows.logLikelihood(), within(1e-8));
    for (int i = 0; i < 2; i++) {
      assertThat(effects.variances().get(i).variance())
          .isCloseTo(rows.variances().get(i).variance(), within(1e-6));
    }
  }

  @Test
  void aVarianceOfZeroIsFoundAndNamed() {
    TrialModel model = models().model();
    MixedFit fit = MixedModel.fit(model, ModelFrame.of(table(900, 260, 180, 0), model));
    assertThat(fit.variances().get(1).variance()).isLessThan(0.05);
    if (fit.variances().get(1).variance() == 0) {
      assertThat(fit.boundary()).contains("yard");
    } else {
      assertThat(fit.boundary()).isEmpty();
    }
  }

  @Test
  void whereKenwardAndRogerIsTooDearSatterthwaiteIsNamed() {
    TrialTable table = table(9000, 3000, 1000, 0.8);
    assertThatThrownBy(() -> TrialAnalysis.of(table, models().model()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("Use \"df\": \"satterthwaite\"");
    assertThatThrownBy(() -> TrialAnalysis.of(table, models().df(DegreesOfFreedom.DESIGN).model()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("Use \"df\": \"satterthwaite\"");
  }
}
