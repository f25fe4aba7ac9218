package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.Randomisation;
import org.junit.jupiter.api.Test;

/** A Latin square against its analysis of variance, also where its columns do not differ. */
class SquareClosedFormTest {
  private static final int SIZE = 4;

  private static double[][] values(long seed, double columns) {
    Random random = new Random(seed);
    double[][] values = new double[SIZE][SIZE];
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        int arm = (row + column) % SIZE;
        values[row][column] = 5 + row + columns * column + 0.3 * arm + 0.5 * random.nextGaussian();
      }
    }
    return values;
  }

  private static Findings findings(double[][] values) {
    List<Plot> plots = new ArrayList<>();
    List<PlotReading> readings = new ArrayList<>();
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        String code = "P" + row + column;
        String arm = "arm " + (row + column) % SIZE;
        plots.add(new Plot(code, "park", arm, null, "" + row, "" + column));
        readings.add(new PlotReading(code, "day 1", 1, values[row][column], false));
      }
    }
    TrialFacts facts =
        Yards.facts(
            Design.LATIN_SQUARE, new Contrast("arm 1", "arm 0"), 1, true, Randomisation.free(1L));
    return Findings.of(
        facts, plots, List.of(Yards.outcome(1.0, true)), Map.of("quality", readings));
  }

  /** Variance of the error by the sums of squares. */
  private static double error(double[][] values) {
    double[] rows = new double[SIZE];
    double[] columns = new double[SIZE];
    double[] arms = new double[SIZE];
    double mean = 0;
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        double share = values[row][column] / SIZE;
        rows[row] += share;
        columns[column] += share;
        arms[(row + column) % SIZE] += share;
        mean += share / SIZE;
      }
    }
    double squares = 0;
    for (int row = 0; row < SIZE; row++) {
      for (int column = 0; column < SIZE; column++) {
        double rest =
            values[row][column] - rows[row] - columns[column] - arms[(row + column) % SIZE];
        squares += (rest + 2 * mean) * (rest + 2 * mean);
      }
    }
    return squares / ((SIZE - 1) * (SIZE - 2));
  }

  @Test
  void rowsAndColumnsStayInTheModelHoweverLittleTheyDiffer() {
    for (double columns : new double[] {0, 0.4}) {
      for (long seed = 1; seed <= 5; seed++) {
        double[][] values = values(seed, columns);
        Effect effect = findings(values).outcomes().get(0).effects().get(0);
        assertThat(effect.estimated().df()).isCloseTo(6, within(1e-6));
        assertThat(effect.estimated().se())
            .isCloseTo(Math.sqrt(2 * error(values) / SIZE), within(1e-6));
      }
    }
  }
}
