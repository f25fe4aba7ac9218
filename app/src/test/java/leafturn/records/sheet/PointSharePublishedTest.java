package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of a point count and their intervals. */
class PointSharePublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "/checks/point-share.csv", numLinesToSkip = 1)
  void putsTheIntervalOfAPointCountWherePublishedTablesHaveIt(
      String limit,
      int hits,
      int points,
      double expected,
      double tolerance,
      String source,
      String status) {
    PointShare share = PointShare.of(hits, points);
    assertThat(limit.equals("low") ? share.lowFraction() : share.highFraction())
        .as("%s of %d in %d by %s (%s)", limit, hits, points, source, status)
        .isCloseTo(expected, within(tolerance));
  }

  @Test
  void countsTheCoversOfOneCountTogether() {
    Cover cover = new Cover(81, 10, 5, 4);
    assertThat(
            cover.grassShare().fraction()
                + cover.weedShare().fraction()
                + cover.mossShare().fraction()
                + cover.bareShare().fraction())
        .isCloseTo(1, within(1e-15));
    assertThat(cover.bareShare()).isEqualTo(PointShare.of(4, 100));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "-1, 10", "11, 10"})
  void refusesACountThatCannotBe(int hits, int points) {
    assertThatThrownBy(() -> PointShare.of(hits, points))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no more hits than points");
  }
}
