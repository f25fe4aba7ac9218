package leafturn.trials.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import leafturn.trials.design.Plans;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialLawn;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Halves whose areas can be worked out by hand, and equality on any shape. */
class HalvesClosedFormTest {
  private static final double GUARD_M = 1;

  private static Surface surface(Geometry turf, Geometry... beds) {
    TrialLawn lawn = Plans.lawn("lawn", turf, List.of(beds), null);
    return Surface.of(lawn, PlotRule.USUAL);
  }

  private static void areEqual(Halves halves, double areaM2) {
    double first = halves.first().plot().getArea();
    double second = halves.second().plot().getArea();
    assertThat(first).isCloseTo(areaM2, within(1e-6));
    assertThat(second).isCloseTo(areaM2, within(1e-6));
  }

  @Test
  void aRectangleIsHalvedAtAnyBearing() {
    Surface surface = surface(Plans.rectangle(0, 0, 20, 10));
    areEqual(Halves.of(surface, 0.0, GUARD_M), (20 - 1) * 10 / 2.0);
    areEqual(Halves.of(surface, 90.0, GUARD_M), 20 * (10 - 1) / 2.0);
    // At 45 degrees the strip crosses both long sides: it cuts 10 sqrt(2) by 1 m.
    areEqual(Halves.of(surface, 45.0, GUARD_M), (200 - 10 * Math.sqrt(2)) / 2);
  }

  @Test
  void theMeasuredPartKeepsItsDistances() {
    Halves halves = Halves.of(surface(Plans.rectangle(0, 0, 20, 10)), 0.0, GUARD_M);
    assertThat(halves.first().measured().getArea()).isCloseTo(8.5 * 8, within(1e-6));
    assertThat(halves.second().measured().getArea()).isCloseTo(8.5 * 8, within(1e-6));
  }

  @Test
  void anLShapeIsHalvedByArea() {
    // 24 x 9 and, at its western end, 10 x 9 more: 306 m2. Cut by a line to the north: west of
    // x = 10 lie 180, so with a strip of 1 m the cut stands where 18 a = 9 (24 - a - 1) + 9
    // (10-a-1).
    Surface surface = surface(Plans.polygon(0, 0, 24, 0, 24, 9, 10, 9, 10, 18, 0, 18));
    double a = (9 * 23 + 9 * 9) / 36.0;
    areEqual(Halves.of(surface, 0.0, GUARD_M), 18 * a);
  }

  @Test
  void holesAndBedsAreNoTurf() {
    Geometry hole = Plans.rectangle(2, 2, 4, 6);
    Geometry turf = Plans.rectangle(0, 0, 20, 10).difference(hole);
    // 176 m2; the strip lies clear of the hole: (x - .5) 10 - 24 = (20 - x - .5) 10.
    areEqual(Halves.of(surface(turf), 0.0, GUARD_M), (176 - 10) / 2.0);
    areEqual(Halves.of(surface(Plans.rectangle(0, 0, 20, 10), hole), 0.0, GUARD_M), 83);
  }

  @Test
  void theBestBearingKeepsTheHalvesTogetherAndNearEachOther() {
    Halves halves = Halves.of(surface(Plans.rectangle(0, 0, 30, 12)), null, 0.5);
    assertThat(halves.frame().bearingDeg()).isEqualTo(90);
    assertThat(halves.first().plot().getCentroid().getY()).isGreaterThan(6);
  }

  /**
   * A cut on the diagonal would bring these halves nearer and leave a wedge that is hard to mow.
   */
  @Test
  void aCutAlongASideIsPreferred() {
    Surface shape = surface(Plans.polygon(0, 0, 40, 0, 40, 20, 20, 20, 20, 40, 0, 40));
    Halves halves = Halves.of(shape, null, 0.5);
    assertThat(halves.frame().bearingDeg()).isIn(0.0, 90.0);
    // 20 m to the west lie 800 m2 of 1200: 40 a = 40 (20 - a - .5) + 400.
    areEqual(halves, 40 * (40 * 19.5 + 400) / 80.0);
  }

  @Test
  void halvesAreEqualToAThousandthOnAnyShape() {
    SplittableRandom random = new SplittableRandom(20260401);
    for (int i = 0; i < 100; i++) {
      int corners = 3 + random.nextInt(9);
      double[] coordinates = new double[2 * corners];
      for (int corner = 0; corner < corners; corner++) {
        double angle = 2 * Math.PI * corner / corners;
        double radius = 8 + 12 * random.nextDouble();
        coordinates[2 * corner] = radius * Math.cos(angle);
        coordinates[2 * corner + 1] = radius * Math.sin(angle);
      }
      Geometry turf = Plans.polygon(coordinates).difference(Plans.rectangle(-2, -2, 3, 3));
      Double bearing = i % 4 == 0 ? null : Double.valueOf(180 * random.nextDouble());
      Halves halves = Halves.of(surface(turf), bearing, 0.53);
      double first = halves.first().plot().getArea();
      double second = halves.second().plot().getArea();
      assertThat(Math.abs(first - second) / (first + second))
          .as("shape %d, bearing %s", i, bearing)
          .isLessThan(1e-6);
    }
  }
}
