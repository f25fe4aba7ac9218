package leafturn.model.lawn;

import java.time.LocalDate;
import java.util.Map;
import java.util.SplittableRandom;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** Weather made from random numbers. */
final class RandomWeather {
  private RandomWeather() {}

  /** Years with seasons of a mild, moist climate. */
  static WeatherSeries mild(long seed, LocalDate first, int days) {
    return make(new SplittableRandom(seed), first, days, 12, 12, 4, 0.32, 9);
  }

  /** Any climate there is, with heat, frost, storms and droughts beyond the usual. */
  static WeatherSeries any(SplittableRandom random, int days) {
    LocalDate first = LocalDate.of(2011, 1, 1).plusDays(random.nextInt(1500));
    return make(
        random,
        first,
        days,
        random.nextDouble(-5, 28),
        random.nextDouble(0, 20),
        random.nextDouble(1, 12),
        random.nextInt(4) == 0 ? 0.01 : random.nextDouble(),
        random.nextInt(4) == 0 ? 90 : random.nextDouble(1, 20));
  }

  private static WeatherSeries make(
      SplittableRandom random,
      LocalDate first,
      int days,
      double yearC,
      double swingC,
      double noiseC,
      double wetShare,
      double wetMm) {
    double[] minimum = new double[days];
    double[] maximum = new double[days];
    double[] rain = new double[days];
    double[] wind = new double[days];
    for (int day = 0; day < days; day++) {
      int dayOfYear = first.plusDays(day).getDayOfYear();
      double season = yearC - swingC * Math.cos(2 * Math.PI * (dayOfYear - 20) / 365.25);
      double mean = Math.min(45, season + noiseC * (2 * random.nextDouble() - 1));
      double range = 14 * random.nextDouble();
      minimum[day] = mean - range / 2;
      maximum[day] = mean + range / 2;
      rain[day] = random.nextDouble() < wetShare ? -wetMm * Math.log(1 - random.nextDouble()) : 0;
      wind[day] = random.nextInt(20) == 0 ? Double.NaN : 12 * random.nextDouble();
    }
    return new WeatherSeries(
        first,
        Map.of(
            Quantity.MINIMUM_C, minimum,
            Quantity.MAXIMUM_C, maximum,
            Quantity.RAIN_MM, rain,
            Quantity.WIND_M_PER_S, wind));
  }
}
