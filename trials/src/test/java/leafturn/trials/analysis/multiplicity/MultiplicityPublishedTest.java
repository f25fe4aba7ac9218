package leafturn.trials.analysis.multiplicity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.numeric.ScaleMixture;
import leafturn.trials.analysis.numeric.Tails;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Joint distributions and adjusted p values beside the cases numbers_*, made with R 4.2.2. */
class MultiplicityPublishedTest {
  private final ReferenceCase numbers = new ReferenceCase("numbers_multiplicity");
  private final ReferenceCase distributions = new ReferenceCase("numbers_distributions");

  @ParameterizedTest
  @ValueSource(strings = {"a", "b", "c", "d"})
  void adjustedPValuesAreTheReferences(String set) {
    double[] p = numbers.numbers("results/p_adjust/" + set + "/input");
    compare(set, "sidak", AdjustedP::sidak, p);
    compare(set, "bonferroni", AdjustedP::bonferroni, p);
    compare(set, "holm", AdjustedP::holm, p);
    compare(set, "hommel", AdjustedP::hommel, p);
    compare(set, "BH", AdjustedP::benjaminiHochberg, p);
  }

  private void compare(String set, String name, UnaryOperator<double[]> method, double[] p) {
    double[] expected = numbers.numbers("results/p_adjust/" + set + "/" + name);
    assertThat(method.apply(p)).as(name).containsExactly(expected, within(1e-12));
  }

  @Test
  void studentizedRangesAreTheReferences() {
    for (JsonNode row : distributions.at("results/studentized_range_sf")) {
      double expected = row.get("sf").asDouble();
      double own = StudentizedRange.above(row.get("q").asDouble(), row.get("k").asInt(), df(row));
      assertThat(own).as("%s", row).isCloseTo(expected, within(1e-9));
    }
  }

  @Test
  void theRangeOfTwoMeansIsTheirDifference() {
    for (double df : new double[] {1, 2, 5, 8, 12.5, 40, 300}) {
      for (double t : new double[] {0.5, 1.5, 2.5, 4, 94}) {
        double exact = Tails.tBeyond(t, df);
        assertThat(StudentizedRange.above(t * Math.sqrt(2), 2, df))
            .isCloseTo(exact, within(1e-12 * exact));
      }
    }
  }

  /**
   * Three means or more with few degrees of freedom, beside the same double integral by fine
   * trapezoids; panels of a fixed width give 0 for some of these.
   */
  @Test
  void largeRangesWithFewDegreesOfFreedomAreTheirIntegral() {
    for (double df : new double[] {2, 3, 5, 8}) {
      for (int means : new int[] {3, 6}) {
        for (double q : new double[] {4, 20, 84}) {
          double exact = ScaleMixture.mean(q, df, width -> rangeBeyond(width, means));
          assertThat(StudentizedRange.above(q, means, df))
              .as("%s %s %s", q, means, df)
              .isCloseTo(exact, within(0.0101 * exact));
          assertThat(StudentizedRange.above(q, means, df))
              .isGreaterThan(Tails.tBeyond(q / Math.sqrt(2), df));
        }
      }
    }
  }

  private static double rangeBeyond(double width, int means) {
    double step = 0.05;
    double sum = 0;
    for (double z = -9; z <= 9 + width; z += step) {
      double inside = Tails.normalBelow(z) - Tails.normalBelow(z - width);
      sum += Math.exp(-z * z / 2) * Math.pow(inside, means - 1);
    }
    return Math.max(0, 1 - means * step / Math.sqrt(2 * Math.PI) * sum);
  }

  @Test
  void quantilesOfTheStudentizedRangeAreTheReferences() {
    for (JsonNode row : distributions.at("results/studentized_range_quantile")) {
      double expected = row.get("q").asDouble();
      double own =
          StudentizedRange.quantile(1 - row.get("p").asDouble(), row.get("k").asInt(), df(row));
      assertThat(own).as("%s", row).isCloseTo(expected, within(1e-6 * expected));
    }
  }

  @Test
  void dunnettsCriticalValuesAreTheReferences() {
    for (JsonNode row : distributions.at("results/dunnett_critical")) {
      double[] loadings = new double[row.get("k").asInt()];
      Arrays.fill(loadings, Math.sqrt(0.5));
      double expected = row.get("two_sided_0.95").asDouble();
      assertThat(LargestT.ofLoadings(loadings).quantile(0.05, df(row)))
          .as("%s", row)
          .isCloseTo(expected, within(2e-7));
    }
  }

  @Test
  void dunnettsPValuesAreTheReferences() {
    for (JsonNode row : distributions.at("results/dunnett_p_values")) {
      double[] loadings = new double[row.get("k").asInt()];
      Arrays.fill(loadings, Math.sqrt(0.5));
      double expected = row.get("p_two_sided").asDouble();
      assertThat(LargestT.ofLoadings(loadings).above(row.get("t").asDouble(), df(row)))
          .as("%s", row)
          .isCloseTo(expected, within(1e-8));
    }
  }

  @Test
  void simultaneousDatesAreTheReferences() {
    for (JsonNode row : numbers.at("results/mvt_quantiles/values")) {
      double[] neighbours = new double[row.get("dates").asInt() - 1];
      if (df(row) != 9) {
        continue; // one family of degrees of freedom is enough for the recursion
      }
      Arrays.fill(neighbours, row.get("rho").asDouble());
      double expected = row.get("quantile").asDouble();
      assertThat(LargestT.ofDates(neighbours).quantile(0.05, df(row)))
          .as("%s", row)
          .isCloseTo(expected, within(1e-6 * expected));
    }
  }

  @Test
  void theLatticeAgreesWithTheExactWay() {
    int dates = 5;
    double[][] correlation = new double[dates][dates];
    for (int i = 0; i < dates; i++) {
      for (int j = 0; j < dates; j++) {
        correlation[i][j] = Math.pow(0.6, Math.abs(i - j));
      }
    }
    double[] neighbours = new double[dates - 1];
    Arrays.fill(neighbours, 0.6);
    assertThat(LargestT.of(correlation).above(2.5, 12))
        .isCloseTo(LargestT.ofDates(neighbours).above(2.5, 12), within(2e-4));
  }

  @Test
  void lettersShowExactlyWhatDiffers() {
    for (JsonNode set : numbers.at("results/letters")) {
      int n = set.get("n").asInt();
      boolean[][] differ = new boolean[n][n];
      for (JsonNode pair : set.get("significant_pairs")) {
        differ[pair.get(0).asInt() - 1][pair.get(1).asInt() - 1] = true;
      }
      List<String> letters = Letters.of(differ);
      assertSharedExactly(letters, differ);
      List<String> expected = new ArrayList<>();
      set.get("letters").forEach(node -> expected.add(node.asText()));
      assertThat(sizes(letters)).isEqualTo(sizes(expected));
    }
  }

  private static List<Integer> sizes(List<String> letters) {
    return letters.stream().map(String::length).toList();
  }

  static void assertSharedExactly(List<String> letters, boolean[][] differ) {
    for (int i = 0; i < differ.length; i++) {
      for (int j = i + 1; j < differ.length; j++) {
        String other = letters.get(j);
        boolean share = letters.get(i).chars().anyMatch(letter -> other.indexOf(letter) >= 0);
        assertThat(share).as("%d and %d of %s", i, j, letters).isEqualTo(!differ[i][j]);
      }
    }
  }

  private static double df(JsonNode row) {
    String text = row.get("df").asText();
    return text.startsWith("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
  }
}
