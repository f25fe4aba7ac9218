package leafturn.records.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leafturn.records.SourceText;
import leafturn.records.shape.LocalGrid.LonLat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The grid against closed forms of the ellipsoid of revolution. */
class LocalGridClosedFormTest {
  /** WGS84: its half axis in m and its flattening are its definition. */
  private static final double A = 6_378_137;

  private static final double F = 1 / 298.257223563;
  private static final double E2 = F * (2 - F);

  /** Area between the equator and a latitude for one radian of longitude, m². */
  private static double zoneM2(double latitudeDeg) {
    double e = Math.sqrt(E2);
    double s = Math.sin(Math.toRadians(latitudeDeg));
    double b2 = A * A * (1 - E2);
    return b2 / 2 * (s / (1 - E2 * s * s) + Math.log((1 + e * s) / (1 - e * s)) / (2 * e));
  }

  private static double cellM2(double southDeg, double widthDeg) {
    return Math.toRadians(widthDeg) * (zoneM2(southDeg + widthDeg) - zoneM2(southDeg));
  }

  /** Radius of curvature along the meridian, m. */
  private static double meridianRadiusM(double latitudeDeg) {
    double s = Math.sin(Math.toRadians(latitudeDeg));
    return A * (1 - E2) / Math.pow(1 - E2 * s * s, 1.5);
  }

  /** Radius of the parallel, m. */
  private static double parallelRadiusM(double latitudeDeg) {
    double s = Math.sin(Math.toRadians(latitudeDeg));
    return A / Math.sqrt(1 - E2 * s * s) * Math.cos(Math.toRadians(latitudeDeg));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-84, -33.3, -0.0005, 0, 12, 40.78, 51.5, 60, 75, 84.5})
  void aCellOfAThousandthOfADegreeHasItsTrueArea(double southDeg) {
    double expected = cellM2(southDeg, 0.001);
    assertThat(cell(-74, southDeg, 0.001).areaM2())
        .isCloseTo(expected, within(1e-5 * expected + 0.05));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-40, 12, 40.78, 60})
  void theAreaIsStillTrueOverAKilometre(double southDeg) {
    double expected = cellM2(southDeg, 0.008);
    assertThat(cell(170, southDeg, 0.008).areaM2()).isCloseTo(expected, within(1e-5 * expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-60, 0, 30, 45, 60, 80})
  void shortLinesHaveTheirTrueLength(double latitudeDeg) {
    LocalGrid grid = new LocalGrid(new Anchor(25, latitudeDeg));
    double step = 1e-4;
    double[] north = grid.onGrid(new LonLat(25, latitudeDeg + step));
    double[] east = grid.onGrid(new LonLat(25 + step, latitudeDeg));
    double middle = latitudeDeg + step / 2;
    assertThat(north[1]).isCloseTo(meridianRadiusM(middle) * Math.toRadians(step), within(1e-5));
    assertThat(north[0]).isCloseTo(0, within(1e-6));
    assertThat(east[0])
        .isCloseTo(parallelRadiusM(latitudeDeg) * Math.toRadians(step), within(1e-5));
  }

  @Test
  void tenKilometresAwayLengthsAreTrueToTwoMillionths() {
    LocalGrid grid = new LocalGrid(new Anchor(25, 45));
    LonLat here = grid.onEarth(new Corner(10_000, 0));
    double step = 1e-3;
    double[] from = grid.onGrid(here);
    double[] to = grid.onGrid(new LonLat(here.longitudeDeg(), here.latitudeDeg() + step));
    double expected = meridianRadiusM(here.latitudeDeg() + step / 2) * Math.toRadians(step);
    assertThat(Math.hypot(to[0] - from[0], to[1] - from[1]) / expected)
        .isCloseTo(1 + 10_000. * 10_000 / (2 * 6.378e6 * 6.378e6), within(2e-8));
  }

  @Test
  void thereAndBackIsTheSamePlace() {
    for (double latitude = -84; latitude <= 84; latitude += 7) {
      LocalGrid grid = new LocalGrid(new Anchor(-179.5, latitude));
      Corner corner = new Corner(-9_876.543, 9_999.999);
      double[] back = grid.onGrid(grid.onEarth(corner));
      assertThat(new Corner(back[0], back[1])).isEqualTo(corner);
    }
  }

  private static Outline cell(double westDeg, double southDeg, double widthDeg) {
    String text =
        "{\"type\":\"Polygon\",\"coordinates\":[[[%1$s,%2$s],[%3$s,%2$s],[%3$s,%4$s],[%1$s,%4$s]]]}"
            .formatted(westDeg, southDeg, westDeg + widthDeg, southDeg + widthDeg);
    List<NamedOutline> outlines = GeoJsonFile.read(new SourceText("cell", text));
    return outlines.get(0).outline();
  }
}
