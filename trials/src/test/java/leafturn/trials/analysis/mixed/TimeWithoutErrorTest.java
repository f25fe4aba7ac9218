package leafturn.trials.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import org.junit.jupiter.api.Test;

/** Errors with a variance for each date, of which one is best without any. */
class TimeWithoutErrorTest {
  private static final List<String> COLUMNS = List.of("block", "practice", "date", "y");

  /**
   * @param sds of what each date adds to a plot
   */
  private static MixedFit fit(double... sds) {
    Random random = new Random(20260401);
    List<List<String>> rows = new ArrayList<>();
    for (int block = 1; block <= 12; block++) {
      double ground = 20 * random.nextGaussian();
      for (String arm : List.of("a", "b")) {
        double plot = ground + 8 * random.nextGaussian();
        for (int date = 0; date < sds.length; date++) {
          double y = 100 + plot + sds[date] * random.nextGaussian();
          rows.add(List.of("" + block, arm, "d" + date, Double.toString(y)));
        }
      }
    }
    return fit(rows);
  }

  private static MixedFit fit(List<List<String>> rows) {
    TrialModel model =
        new TrialModel(
            "y",
            TrialModel.Scale.IDENTITY,
            List.of("practice", "date"),
            List.of(),
            List.of(Term.of("practice"), Term.of("date")),
            true,
            List.of(RandomTerm.mean("block"), RandomTerm.mean("block", "practice")),
            new OverTime(
                List.of("block", "practice"), "date", OverTime.Correlation.HETEROGENEOUS_AR1),
            DegreesOfFreedom.KENWARD_ROGER,
            null,
            Map.of());
    List<Integer> lines = IntStream.rangeClosed(2, rows.size() + 1).boxed().toList();
    return MixedModel.fit(model, ModelFrame.of(new TrialTable(COLUMNS, rows, lines), model));
  }

  @Test
  void aDateWithoutErrorIsListedAtTheBoundary() {
    assertThat(fit(0, 5, 5, 5).boundary())
        .anyMatch(each -> each.startsWith("residual variance at time 1 of 4: best at zero"));
    assertThat(fit(5, 5, 0, 5).boundary())
        .anyMatch(each -> each.startsWith("residual variance at time 3 of 4: best at zero"));
    assertThat(fit(5, 5, 0, 5).hasTimeWithoutError()).isTrue();
  }

  /** Values that are all alike on a date make the likelihood grow without end. */
  @Test
  void aDateOnWhichAllValuesAreAlikeIsRefused() {
    List<List<String>> rows = new ArrayList<>();
    Random random = new Random(7);
    for (int block = 1; block <= 8; block++) {
      for (String arm : List.of("a", "b")) {
        for (int date = 0; date < 4; date++) {
          double y = date == 1 ? (arm.equals("a") ? 6.0 : 6.2) : 6 + random.nextGaussian();
          rows.add(List.of("" + block, arm, "d" + date, Double.toString(y)));
        }
      }
    }
    assertThatThrownBy(() -> fit(rows))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("hardly scatter");
  }

  /** However small its share, an error that the data show is none at zero. */
  @Test
  void aDateWithASmallErrorKeepsIt() {
    MixedFit fit = fit(6, 5, 1, 7);
    assertThat(fit.boundary()).noneMatch(each -> each.contains("at time"));
    assertThat(fit.hasTimeWithoutError()).isFalse();
  }
}
