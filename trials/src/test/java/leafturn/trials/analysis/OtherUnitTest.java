package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leafturn.trials.analysis.diagnostics.OtherUnit;
import org.junit.jupiter.api.Test;

/** Values of another unit in one column are told; values that only scatter are not. */
class OtherUnitTest {
  private static final List<Integer> LINES = List.of(2, 3, 4, 5, 6, 7);

  @Test
  void someThatAreAThousandTimesTheOthersAreTold() {
    assertThat(OtherUnit.sentence("y", new double[] {5.1, 5000, 6, 5200, 5.5, 4.9}, LINES))
        .isEqualTo(
            "2 of 6 values of y, the first on line 3 (5000), would lie with the others if divided by 1000: look for another unit or a decimal mark gone astray.");
    assertThat(OtherUnit.sentence("y", new double[] {510, 600, 5.2, 550, 490, 505}, LINES))
        .contains("1 of 6 values", "line 4 (5.20)", "multiplied by 100");
  }

  @Test
  void valuesThatLieTogetherOrAreFewAreNot() {
    assertThat(OtherUnit.sentence("y", new double[] {5, 50, 6, 20, 120, 9}, LINES)).isNull();
    assertThat(OtherUnit.sentence("y", new double[] {0, 0, Double.NaN, 0, -5, 500}, LINES))
        .isNull();
    assertThat(OtherUnit.sentence("y", new double[] {5, 5000, 6}, LINES)).isNull();
  }
}
