package leafturn.model.weather;

import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Reference evapotranspiration and global radiation of one day of a series, from whatever was
 * measured, and by which routes the rest was filled in.
 *
 * @param referenceMm ET0, mm, never negative
 * @param globalRadiationMjPerM2 Rs, MJ/m2
 * @param radiationRoute where the radiation comes from
 * @param humidityRoute where the vapour pressure comes from
 * @param windRoute where the wind comes from
 */
public record DailyEvapotranspiration(
    double referenceMm,
    double globalRadiationMjPerM2,
    RadiationRoute radiationRoute,
    HumidityRoute humidityRoute,
    WindRoute windRoute) {

  /** Where a day's global radiation comes from. */
  public enum RadiationRoute {
    /** Measured. */
    MEASURED,
    /** From the temperature range (FAO-56 eq. 50, inland), at most that of a cloudless day. */
    TEMPERATURE_RANGE
  }

  /** Where a day's vapour pressure comes from, the most reliable first. */
  public enum HumidityRoute {
    /** Dew point (eq. 14). */
    DEW_POINT,
    /** Highest and lowest relative humidity (eq. 17). */
    HUMIDITY_EXTREMES,
    /** Highest relative humidity alone (eq. 18). */
    HUMIDITY_MAXIMUM,
    /** The minimum temperature taken as dew point (eq. 48); too moist for an arid site. */
    MINIMUM_TEMPERATURE
  }

  /** Where a day's wind at 2 m comes from. */
  public enum WindRoute {
    /** Measured at 2 m. */
    MEASURED_AT_2_M,
    /** Measured at another height and brought to 2 m (eq. 47). */
    BROUGHT_TO_2_M,
    /** Not measured; 2 m/s assumed. */
    ASSUMED
  }

  /**
   * Works out one day by the FAO-56 rules for missing data: radiation as measured, else from the
   * temperature range; vapour pressure from dew point, RHmax and RHmin, RHmax, else Tdew = Tmin;
   * wind at 2 m, else 2 m/s, and at least 0.5 m/s; soil heat flux 0; evapotranspiration at least 0.
   *
   * @param weather the series
   * @param site where it was measured
   * @param index day of the series, 0 for the first
   */
  public static DailyEvapotranspiration of(WeatherSeries weather, Site site, int index) {
    double minimumC = weather.value(Quantity.MINIMUM_C, index);
    double maximumC = weather.value(Quantity.MAXIMUM_C, index);
    double extraterrestrial =
        Radiation.extraterrestrialMjPerM2(site.latitudeDeg(), weather.dayAt(index).getDayOfYear());
    double clearSky = Radiation.clearSkyMjPerM2(extraterrestrial, site.elevationM());

    double measuredRadiation = weather.value(Quantity.RADIATION_MJ_PER_M2, index);
    boolean radiationMeasured = !Double.isNaN(measuredRadiation);
    double radiation =
        radiationMeasured
            ? measuredRadiation
            : Math.min(
                clearSky,
                Radiation.fromTemperatureRangeMjPerM2(
                    minimumC, maximumC, extraterrestrial, Radiation.INLAND_COEFFICIENT));
    HumidityRoute humidityRoute = humidityRoute(weather, index);
    double vapourPressure = vapourPressureKPa(humidityRoute, weather, index);
    double netRadiation =
        Radiation.netShortwaveMjPerM2(radiation)
            - Radiation.netLongwaveMjPerM2(
                minimumC,
                maximumC,
                vapourPressure,
                Radiation.clearnessFraction(radiation, clearSky));
    double reference =
        ReferenceEvapotranspiration.combinationMm(
            new ReferenceEvapotranspiration.Day(
                (minimumC + maximumC) / 2,
                netRadiation,
                ReferenceEvapotranspiration.dailySoilHeatFluxMjPerM2(),
                windAt2mMPerS(weather, site, index),
                Humidity.meanSaturationVapourPressureKPa(minimumC, maximumC),
                vapourPressure,
                ReferenceEvapotranspiration.psychrometricConstantKPaPerC(
                    ReferenceEvapotranspiration.atmosphericPressureKPa(site.elevationM()))));
    return new DailyEvapotranspiration(
        Math.max(0, reference),
        radiation,
        radiationMeasured ? RadiationRoute.MEASURED : RadiationRoute.TEMPERATURE_RANGE,
        humidityRoute,
        windRoute(weather, site, index));
  }

  /**
   * True when neither radiation nor humidity was measured, so that ET0 is no better than a guess
   * from two temperatures (about 0.7 mm a day off).
   */
  public boolean restsOnTemperatureAlone() {
    return radiationRoute == RadiationRoute.TEMPERATURE_RANGE
        && humidityRoute == HumidityRoute.MINIMUM_TEMPERATURE;
  }

  private static HumidityRoute humidityRoute(WeatherSeries weather, int index) {
    if (measured(weather, Quantity.DEW_POINT_C, index)) {
      return HumidityRoute.DEW_POINT;
    }
    if (!measured(weather, Quantity.HUMIDITY_MAXIMUM_PERCENT, index)) {
      return HumidityRoute.MINIMUM_TEMPERATURE;
    }
    return measured(weather, Quantity.HUMIDITY_MINIMUM_PERCENT, index)
        ? HumidityRoute.HUMIDITY_EXTREMES
        : HumidityRoute.HUMIDITY_MAXIMUM;
  }

  private static double vapourPressureKPa(HumidityRoute route, WeatherSeries weather, int index) {
    double minimumC = weather.value(Quantity.MINIMUM_C, index);
    double humidityMaximum = weather.value(Quantity.HUMIDITY_MAXIMUM_PERCENT, index);
    return switch (route) {
      case DEW_POINT -> Humidity.fromDewPointKPa(weather.value(Quantity.DEW_POINT_C, index));
      case HUMIDITY_EXTREMES ->
          Humidity.fromHumidityExtremesKPa(
              minimumC,
              weather.value(Quantity.MAXIMUM_C, index),
              humidityMaximum,
              weather.value(Quantity.HUMIDITY_MINIMUM_PERCENT, index));
      case HUMIDITY_MAXIMUM -> Humidity.fromMaximumHumidityKPa(minimumC, humidityMaximum);
      case MINIMUM_TEMPERATURE -> Humidity.fromDewPointKPa(minimumC);
    };
  }

  private static WindRoute windRoute(WeatherSeries weather, Site site, int index) {
    if (!measured(weather, Quantity.WIND_M_PER_S, index)) {
      return WindRoute.ASSUMED;
    }
    return site.windHeightM() == 2 ? WindRoute.MEASURED_AT_2_M : WindRoute.BROUGHT_TO_2_M;
  }

  private static double windAt2mMPerS(WeatherSeries weather, Site site, int index) {
    if (windRoute(weather, site, index) == WindRoute.ASSUMED) {
      return ReferenceEvapotranspiration.MISSING_WIND_M_PER_S;
    }
    double wind = weather.value(Quantity.WIND_M_PER_S, index);
    return Math.max(
        ReferenceEvapotranspiration.LEAST_WIND_M_PER_S,
        ReferenceEvapotranspiration.windAt2mMPerS(wind, site.windHeightM()));
  }

  private static boolean measured(WeatherSeries weather, Quantity quantity, int index) {
    return !Double.isNaN(weather.value(quantity, index));
  }
}
