package leafturn.model.weather.hourly;

import leafturn.model.weather.DailyEvapotranspiration;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * A day's weather as far as the hours need it.
 *
 * @param air temperature, moisture, sun and wind
 * @param water rain and watering
 */
public record DayWeather(Air air, Water water) {

  /**
   * @param minimumC Tmin, °C
   * @param maximumC Tmax, °C, not below Tmin
   * @param vapourPressureKPa ea, kPa
   * @param radiationMjPerM2 global radiation, MJ/m2
   * @param windAt2mMPerS mean wind, m/s
   */
  public record Air(
      double minimumC,
      double maximumC,
      double vapourPressureKPa,
      double radiationMjPerM2,
      double windAt2mMPerS) {
    public Air {
      HourBounds.TEMPERATURE.checked(minimumC);
      HourBounds.TEMPERATURE.checked(maximumC);
      HourBounds.VAPOUR_PRESSURE.checked(vapourPressureKPa);
      HourBounds.WIND.checked(windAt2mMPerS);
      if (minimumC > maximumC || !(radiationMjPerM2 >= 0)) {
        throw new IllegalArgumentException(
            "a day needs minimum <= maximum temperature and radiation >= 0, but has %s to %s °C and %s MJ/m2"
                .formatted(minimumC, maximumC, radiationMjPerM2));
      }
    }
  }

  /**
   * @param rainMm rain, mm
   * @param rainTime when it fell
   * @param wateredMm watering, mm, taken to end at six in the morning (common practice)
   */
  public record Water(double rainMm, RainTime rainTime, double wateredMm) {
    public Water {
      HourBounds.WATER.checked(rainMm);
      HourBounds.WATER.checked(wateredMm);
    }

    /** Rain at an unknown hour. */
    public static Water rain(double rainMm) {
      return new Water(rainMm, RainTime.ANY_HOUR, 0);
    }
  }

  /**
   * A day of a record, what was not measured filled in by the FAO-56 rules for missing data; its
   * rain at an unknown hour.
   *
   * @param weather the record
   * @param site where it was measured
   * @param index day of the record, 0 for the first
   */
  public static DayWeather of(WeatherSeries weather, Site site, int index) {
    double radiation = DailyEvapotranspiration.of(weather, site, index).globalRadiationMjPerM2();
    return of(weather, site, index, radiation);
  }

  /**
   * The same where the day's radiation is known already.
   *
   * @param radiationMjPerM2 global radiation of the day, measured or filled in, MJ/m2
   */
  public static DayWeather of(
      WeatherSeries weather, Site site, int index, double radiationMjPerM2) {
    return new DayWeather(
        new Air(
            weather.value(Quantity.MINIMUM_C, index),
            weather.value(Quantity.MAXIMUM_C, index),
            DailyEvapotranspiration.vapourPressureKPa(weather, index),
            radiationMjPerM2,
            DailyEvapotranspiration.windAt2mMPerS(weather, site, index)),
        Water.rain(weather.value(Quantity.RAIN_MM, index)));
  }

  /** The same day with other water. */
  public DayWeather with(Water other) {
    return new DayWeather(air, other);
  }
}
