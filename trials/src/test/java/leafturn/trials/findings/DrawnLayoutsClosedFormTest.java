package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.findings.TrialFacts.Randomisation;
import leafturn.trials.findings.TrialFacts.Sides;
import leafturn.trials.power.Layout;
import leafturn.trials.power.PlotVariance;
import leafturn.trials.power.Sampling;
import org.junit.jupiter.api.Test;

/** The tests by drawn layouts beside counts by hand and by going through every layout. */
class DrawnLayoutsClosedFormTest {
  private final List<Plot> plots = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();

  private void plot(String unit, String arm, double value) {
    plots.add(Plot.of(unit + " " + arm + " " + plots.size(), unit, arm));
    values.add(value);
  }

  private RandomisationTest test(Design design, Sides sides, List<List<String>> together) {
    TrialFacts facts =
        new TrialFacts(
            "Linden Street",
            "",
            design,
            "practice",
            "unit",
            List.of(new Contrast("a", "b")),
            1,
            1,
            true,
            Double.NaN,
            new Randomisation(7L, sides, List.of(), List.of(), together),
            PlanRecord.NONE);
    double[] seasons = values.stream().mapToDouble(Double::doubleValue).toArray();
    double[][] table = values.stream().map(value -> new double[] {value}).toArray(double[][]::new);
    SeasonTable season =
        new SeasonTable(
            plots, List.of("season"), new double[1], table, plots.size(), 0, Double.NaN);
    return Objects.requireNonNull(RandomisationTest.of(facts, season, seasons));
  }

  /** Differences 1, 2, 4, -0.5 of blocks: 6.5 is reached by 2 of 16 patterns and their mirrors. */
  @Test
  void blocksOfThreeArmsSwapTheTwoThatAreCompared() {
    double[] differences = {1, 2, 4, -0.5};
    for (int block = 0; block < 4; block++) {
      plot("block " + block, "a", 10 * block + differences[block]);
      plot("block " + block, "b", 10 * block);
      plot("block " + block, "c", 100 * block);
    }
    RandomisationTest drawn = test(Design.UNITS, Sides.FREE, List.of());
    assertThat(drawn.p()).isEqualTo(4.0 / 16);
    assertThat(drawn.layouts()).isEqualTo(16);
    assertThat(drawn.smallestP()).isEqualTo(2.0 / 16);
    assertThat(drawn.sampled()).isFalse();
  }

  /** Whole plots differ by 3, 1 and 2 (means over their parts): only all alike reach 6. */
  @Test
  void aSplitPlotSwapsWholePlots() {
    double[] differences = {3, 1, 2};
    for (int block = 0; block < 3; block++) {
      for (int part = 0; part < 2; part++) {
        plot("block " + block, "a", block + differences[block] + (part == 0 ? 5 : -5));
        plot("block " + block, "b", block + (part == 0 ? 1 : -1));
      }
    }
    RandomisationTest drawn = test(Design.SPLIT_PLOT, Sides.FREE, List.of());
    assertThat(drawn.p()).isEqualTo(2.0 / 8);
    assertThat(drawn.smallestP()).isEqualTo(2.0 / 8);
  }

  /**
   * Pairs 1 and 2 share a coin, pair 3 has its own: sums 1 - 4 = -3 and 1, of which |-2| is least.
   */
  @Test
  void pairsLaidAsAbbaTurnTogether() {
    double[] differences = {1, -4, 1};
    for (int pair = 0; pair < 3; pair++) {
      plot("pair " + pair, "a", differences[pair]);
      plot("pair " + pair, "b", 0);
    }
    List<List<String>> together = List.of(List.of("pair 0", "pair 1"));
    RandomisationTest drawn = test(Design.UNITS, Sides.FREE, together);
    assertThat(drawn.layouts()).isEqualTo(4);
    assertThat(drawn.p()).isEqualTo(1);
    assertThat(drawn.smallestP()).isEqualTo(0.5);
  }

  /** 30 coins are too many: beside the binomial chance of at least 21 of 30 or at most 9. */
  @Test
  void aSampleComesNearTheExactChance() {
    for (int unit = 0; unit < 30; unit++) {
      plot("unit " + unit, "a", unit < 21 ? 1 : -1);
      plot("unit " + unit, "b", 0);
    }
    double term = Math.pow(2, -30);
    double exact = 0;
    for (int k = 0; k <= 9; k++) {
      exact += 2 * term;
      term *= (30.0 - k) / (k + 1);
    }
    RandomisationTest drawn = test(Design.UNITS, Sides.FREE, List.of());
    assertThat(drawn.sampled()).isTrue();
    assertThat(drawn.smallestP()).isEqualTo(1e-5);
    assertThat(drawn.p()).isCloseTo(exact, within(4 * Math.sqrt(exact / 1e5)));
    assertThat(test(Design.UNITS, Sides.FREE, List.of()).p()).isEqualTo(drawn.p());
  }

  @Test
  void latinSquaresBesideEverySquareThatCouldBeDrawn() {
    for (int size = 3; size <= 4; size++) {
      plots.clear();
      values.clear();
      double[][] ground = new double[size][size];
      for (int row = 0; row < size; row++) {
        for (int column = 0; column < size; column++) {
          String arm = "abcde".substring((row + column) % size).substring(0, 1);
          ground[row][column] = Math.sin(7 * row + 3 * column * column) + (arm.equals("a") ? 1 : 0);
          plots.add(
              new Plot(
                  row + "/" + column,
                  "lawn",
                  arm,
                  null,
                  Integer.toString(row + 1),
                  Integer.toString(column + 1)));
          values.add(ground[row][column]);
        }
      }
      RandomisationTest drawn = test(Design.LATIN_SQUARE, Sides.OTHER, List.of());
      assertThat(drawn.p()).as("size %d", size).isCloseTo(share(ground), within(1e-12));
      assertThat(drawn.p()).isGreaterThanOrEqualTo(drawn.smallestP());
      assertThat(drawn.smallestP())
          .as("as the size of a trial tells it")
          .isEqualTo(
              leafturn.trials.power.Design.oneFactor(
                      Layout.LATIN_SQUARE, size, PlotVariance.whole(1), Sampling.ONCE)
                  .smallestP(1),
              within(1e-15));
    }
  }

  /**
   * From one arm's place to the other's goes a permutation of the columns: in two of five cases a
   * round of six (120 of them), in two two rounds of three (40), in one three of two (15).
   */
  @Test
  void placesInASquareOfSixAreNotAllAsLikely() {
    for (int cell = 0; cell < 36; cell++) {
      String arm = "abcdef".substring((cell / 6 + cell % 6) % 6).substring(0, 1);
      String row = Integer.toString(cell / 6 + 1);
      plots.add(new Plot("p" + cell, "lawn", arm, null, row, Integer.toString(cell % 6 + 1)));
      values.add(Math.sin(cell * cell));
    }
    RandomisationTest drawn = test(Design.LATIN_SQUARE, Sides.OTHER, List.of());
    assertThat(drawn.layouts()).isEqualTo(720 * (120 + 40 + 15));
    assertThat(drawn.smallestP()).isCloseTo(2 * 0.4 / (720 * 120), within(1e-15));
  }

  /** The share of all distinct squares, rows, columns and letters in every order. */
  private static double share(double[][] ground) {
    int size = ground.length;
    List<int[]> orders = new ArrayList<>();
    orders(new ArrayList<>(), size, orders);
    Set<String> met = new HashSet<>();
    double bound = Math.abs(difference(ground, orders.get(0), orders.get(0), 0, 1)) - 1e-12;
    int extreme = 0;
    for (int[] rows : orders) {
      for (int[] columns : orders) {
        for (int[] letters : orders) {
          StringBuilder square = new StringBuilder();
          for (int cell = 0; cell < size * size; cell++) {
            square.append(letters[(rows[cell / size] + columns[cell % size]) % size]);
          }
          if (met.add(square.toString())) {
            int a = IntStream.range(0, size).filter(k -> letters[k] == 0).findFirst().orElseThrow();
            int b = IntStream.range(0, size).filter(k -> letters[k] == 1).findFirst().orElseThrow();
            extreme += Math.abs(difference(ground, rows, columns, a, b)) >= bound ? 1 : 0;
          }
        }
      }
    }
    return (double) extreme / met.size();
  }

  private static double difference(double[][] ground, int[] rows, int[] columns, int a, int b) {
    int size = ground.length;
    double sum = 0;
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        int letter = (rows[row] + columns[column]) % size;
        sum += letter == a ? ground[row][column] : letter == b ? -ground[row][column] : 0;
      }
    }
    return sum / size;
  }

  private static void orders(List<Integer> begun, int size, List<int[]> all) {
    if (begun.size() == size) {
      all.add(begun.stream().mapToInt(Integer::intValue).toArray());
      return;
    }
    for (int next = 0; next < size; next++) {
      if (!begun.contains(next)) {
        begun.add(next);
        orders(begun, size, all);
        begun.remove(begun.size() - 1);
      }
    }
  }
}
