package leafturn.records.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leafturn.records.shape.LocalGrid.LonLat;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Lengths of degrees on the WGS84 ellipsoid, measured piece by piece on our grids. */
class DegreeLengthsPublishedTest {
  private static final int PIECES = 20;

  @ParameterizedTest
  @CsvFileSource(resources = "/checks/degree-lengths.csv", numLinesToSkip = 1)
  void isAsLongAsPublished(
      String along,
      double latitudeDeg,
      double expected,
      double tolerance,
      String source,
      String status) {
    double actual = along.equals("meridian") ? meridianM(latitudeDeg) : parallelM(latitudeDeg);
    assertThat(actual)
        .as("%s at %s by %s (%s)", along, latitudeDeg, source, status)
        .isCloseTo(expected, within(tolerance));
  }

  /** From half a degree below a latitude to half a degree above. */
  private static double meridianM(double latitudeDeg) {
    double step = 1.0 / PIECES;
    double sum = 0;
    for (int piece = 0; piece < PIECES; piece++) {
      double from = latitudeDeg - 0.5 + piece * step;
      sum += new LocalGrid(new Anchor(7, from)).onGrid(new LonLat(7, from + step))[1];
    }
    return sum;
  }

  private static double parallelM(double latitudeDeg) {
    double step = 1.0 / (PIECES * PIECES);
    LocalGrid grid = new LocalGrid(new Anchor(7, latitudeDeg));
    double[] to = grid.onGrid(new LonLat(7 + step, latitudeDeg));
    return PIECES * PIECES * Math.hypot(to[0], to[1]);
  }
}
