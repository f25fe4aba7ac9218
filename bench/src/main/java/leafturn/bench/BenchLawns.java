package leafturn.bench;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.Programme.Feeding;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** Lawns and weather for measurements: made from a seed, so that every run has the same. */
final class BenchLawns {
  static final Site SITE = Site.at(40.78, 40);
  private static final LocalDate FIRST = LocalDate.of(2012, 1, 1);

  private BenchLawns() {}

  /** Four years with seasons, a rainy day in three, wind round 4 m/s. */
  static WeatherSeries fourYears() {
    SplittableRandom random = new SplittableRandom(20120101);
    int days = 1461;
    double[] minimum = new double[days];
    double[] maximum = new double[days];
    double[] rain = new double[days];
    double[] wind = new double[days];
    for (int day = 0; day < days; day++) {
      double season = 12.5 - 12.5 * Math.cos(2 * Math.PI * (day - 20) / 365.25);
      double mean = season + 8 * (random.nextDouble() - 0.5);
      double range = 4 + 10 * random.nextDouble();
      minimum[day] = mean - range / 2;
      maximum[day] = mean + range / 2;
      rain[day] = random.nextDouble() < 0.32 ? -9 * Math.log(1 - random.nextDouble()) : 0;
      wind[day] = 1 + 6 * random.nextDouble();
    }
    return new WeatherSeries(
        FIRST,
        Map.of(
            Quantity.MINIMUM_C, minimum,
            Quantity.MAXIMUM_C, maximum,
            Quantity.RAIN_MM, rain,
            Quantity.WIND_M_PER_S, wind));
  }

  /** A tall fescue lawn, mown weekly, fed four times, clippings returned in this share. */
  static Lawn lawn(double returnedShare) {
    Soil soil =
        new Soil(
            new Soil.Water(0.25, 0.12, 0.45, 61), new Soil.Test(5, 15, 1.33, 45, 120, "Mehlich-3"));
    Programme.Mowing mowing =
        new Programme.Mowing(
            76,
            7,
            CalendarDay.on(MonthDay.of(4, 15)),
            CalendarDay.on(MonthDay.of(10, 31)),
            returnedShare);
    return new Lawn(
        SITE,
        new Lawn.Ground(Species.TALL_FESCUE, soil, 0, null, null),
        new Programme(mowing, List.of(quarter(110), quarter(150), quarter(245), quarter(280)), 0),
        0,
        Map.of());
  }

  private static Feeding quarter(int dayOfYear) {
    return new Feeding(CalendarDay.ofYear(dayOfYear), 3.675, 0, 0, 0);
  }
}
