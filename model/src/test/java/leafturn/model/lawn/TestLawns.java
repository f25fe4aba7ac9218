package leafturn.model.lawn;

import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import leafturn.model.grass.Species;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;

/** Lawns for tests. */
final class TestLawns {
  private TestLawns() {}

  static final Soil LOAM =
      new Soil(
          new Soil.Water(0.25, 0.12, 0.45, 61), new Soil.Test(5, 15, 1.33, 45, 120, "Mehlich-3"));

  /** A lawn mown weekly in season and fed in four quarters. */
  static Lawn weekly(Species grass, double heightMm, double yearlyNGPerM2, double returned) {
    return new Lawn(
        Site.at(40.78, 40),
        new Lawn.Ground(grass, LOAM, 0, null, null),
        new Programme(
            new Programme.Mowing(
                heightMm,
                7,
                CalendarDay.on(MonthDay.of(4, 15)),
                CalendarDay.on(MonthDay.of(10, 31)),
                returned),
            quarters(yearlyNGPerM2),
            0),
        4,
        Map.of("mincut", 3.0));
  }

  static List<Programme.Feeding> quarters(double yearlyNGPerM2) {
    return List.of(
        fast(110, yearlyNGPerM2 / 4),
        fast(150, yearlyNGPerM2 / 4),
        fast(245, yearlyNGPerM2 / 4),
        fast(280, yearlyNGPerM2 / 4));
  }

  private static Programme.Feeding fast(int dayOfYear, double nitrogenGPerM2) {
    return new Programme.Feeding(CalendarDay.ofYear(dayOfYear), nitrogenGPerM2, 0, 0, 0);
  }
}
