package leafturn.trials.analysis.ordinal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import org.junit.jupiter.api.Test;

/**
 * Ratings of a plot that hardly change from date to date, so that plots differ widely. Reference:
 * own numerical integration on a fixed grid of 801 to 6,001 points, maximised without gradients;
 * the log likelihood at the maximum is integrated anew here.
 */
class SteadyRatingsClosedFormTest {
  /** A word for each plot, treatments c and r in turn, a digit for each date; classes from 5. */
  private static final String[] STEADY =
      ("7777 8988 5555 6666 5555 8888 7777 6666 6666 6667 6666 8888 7778 8888 6666 6666")
          .split(" ");

  private static final String[] FAIRLY_STEADY =
      ("7787 5655 6666 7787 5565 6667 5555 8889 7877 8777 7666 7777 6666 7666 6556 8777")
          .split(" ");

  private static OrdinalAnalysis analysed(String[] plots) {
    List<List<String>> rows = new ArrayList<>();
    for (int plot = 0; plot < plots.length; plot++) {
      for (char rating : plots[plot].toCharArray()) {
        rows.add(List.of("plot " + plot, plot % 2 == 0 ? "c" : "r", Character.toString(rating)));
      }
    }
    List<Integer> lines = IntStream.range(2, rows.size() + 2).boxed().toList();
    Models model = Models.of("rating").ordinal().factors("plot", "practice").fixed("practice");
    TrialTable table = new TrialTable(List.of("plot", "practice", "rating"), rows, lines);
    return OrdinalAnalysis.of(table, model.random("plot").model());
  }

  private static double below(double logit) {
    return 1 / (1 + Math.exp(-logit));
  }

  /** By the trapezoidal rule on a grid of u from -9 to 9 that is the same for every plot. */
  private static double integrated(String[] plots, double[] at) {
    double step = 18.0 / 6000;
    double log = 0;
    for (int plot = 0; plot < plots.length; plot++) {
      double sum = 0;
      for (int k = 0; k <= 6000; k++) {
        double u = -9 + k * step;
        double likelihood = Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI);
        double eta = (plot % 2 == 0 ? 0 : at[4]) + at[5] * u;
        for (char rating : plots[plot].toCharArray()) {
          int own = rating - '5';
          double upTo = own == 4 ? 1 : below(at[own] - eta);
          likelihood *= upTo - (own == 0 ? 0 : below(at[own - 1] - eta));
        }
        sum += likelihood * step;
      }
      log += Math.log(sum);
    }
    return log;
  }

  private static double[] position(OrdinalAnalysis own) {
    double[] at = new double[6];
    for (int k = 0; k < 5; k++) {
      at[k] = own.coefficients().get(k).estimate();
    }
    at[5] = own.randomSd();
    return at;
  }

  private static void isTheMaximum(OrdinalAnalysis own, String[] plots) {
    double[] at = position(own);
    double highest = integrated(plots, at);
    assertThat(own.logLikelihood()).isCloseTo(highest, within(1e-8));
    for (int k = 0; k < at.length; k++) {
      for (double share : new double[] {0.99, 1.01}) {
        double[] beside = at.clone();
        beside[k] *= share;
        assertThat(integrated(plots, beside)).as("%d times %s", k, share).isLessThan(highest);
      }
    }
  }

  @Test
  void plotsOfOneRatingEach() {
    OrdinalAnalysis own = analysed(STEADY);
    isTheMaximum(own, STEADY);
    assertThat(own.logLikelihood()).isCloseTo(-34.33, within(0.005));
    assertThat(own.tests().get(0).chiSquared()).isCloseTo(4.0, within(0.05));
    assertThat(own.tests().get(0).p()).isCloseTo(0.045, within(0.0005));
    assertThat(own.warnings()).isEmpty();
  }

  @Test
  void fairlySteadyRatings() {
    OrdinalAnalysis own = analysed(FAIRLY_STEADY);
    isTheMaximum(own, FAIRLY_STEADY);
    assertThat(own.logLikelihood()).isCloseTo(-58.45, within(0.005));
    assertThat(own.tests().get(0).chiSquared()).isCloseTo(3.32, within(0.005));
    assertThat(own.tests().get(0).p()).isCloseTo(0.068, within(0.0006));
    assertThat(own.randomSd() * own.randomSd()).isCloseTo(17.8, within(0.05));
    assertThat(own.coefficients()).allSatisfy(known -> assertThat(known.se()).isPositive());
  }

  @Test
  void varianceWithoutBoundIsRefused() {
    String[] neverChange = "5555 6666 6666 7777 5555 7777".split(" ");
    assertThatThrownBy(() -> analysed(neverChange))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("has no finite estimate");
  }
}
