package leafturn.trials.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.api.Test;

/** A free covariance of dates, of which two say nearly the same or one nearly nothing. */
class UnstructuredLimitTest {
  private static MixedFit fit(double ownSd, double thirdSd) {
    Random random = new Random(20260504);
    List<List<String>> rows = new ArrayList<>();
    for (int plot = 1; plot <= 20; plot++) {
      double first = 100 * random.nextGaussian();
      double[] y = {
        first, first + ownSd * random.nextGaussian(), thirdSd * random.nextGaussian(),
      };
      for (int date = 0; date < y.length; date++) {
        rows.add(List.of("" + plot, "d" + date, Double.toString(y[date])));
      }
    }
    TrialModel model =
        new TrialModel(
            "y",
            TrialModel.Scale.IDENTITY,
            List.of("date"),
            List.of(),
            List.of(Term.of("date")),
            true,
            List.of(),
            new OverTime(List.of("plot"), "date", OverTime.Correlation.UNSTRUCTURED),
            DegreesOfFreedom.KENWARD_ROGER,
            null,
            Map.of());
    List<Integer> lines = IntStream.rangeClosed(2, rows.size() + 1).boxed().toList();
    return MixedModel.fit(
        model, ModelFrame.of(new TrialTable(List.of("plot", "date", "y"), rows, lines), model));
  }

  @Test
  void datesThatSayTheSameAreToldAsALimitAndNotAsHeld() {
    assertThat(fit(50, 80).boundary()).isEmpty();
    assertThat(fit(1e-3, 80).boundary())
        .singleElement()
        .asString()
        .startsWith("correlation over time: at the limit");
    assertThat(fit(1e-3, 80).boundary()).noneMatch(MixedFit::isHeld);
  }

  @Test
  void aDateWithoutVarianceIsNamed() {
    assertThat(fit(50, 1e-4).boundary())
        .singleElement()
        .asString()
        .startsWith("residual variance at time 3 of 3: best at zero");
  }
}
