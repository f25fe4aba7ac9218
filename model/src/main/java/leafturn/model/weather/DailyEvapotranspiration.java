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
    double extraterrestrial =
        Radiation.extraterrestrialMjPerM2(site.latitudeDeg(), weather.dayAt(index).getDayOfYear());
    double clearSky = Radiation.clearSkyMjPerM2(extraterrestrial, site.elevationM());
    boolean radiationMeasured = measured(weather, Quantity.RADIATION_MJ_PER_M2, index);
    double radiation =
        radiationMeasured
            ? weather.value(Quantity.RADIATION_MJ_PER_M2, index)
            : Math.min(clearSky, radiationFromTemperature(weather, index, extraterrestrial));
    double clearness = Radiation.clearnessFraction(radiation, clearSky);
    return new DailyEvapotranspiration(
        Math.max(0, combinationMm(weather, site, index, radiation, clearness)),
        radiation,
        radiationMeasured ? RadiationRoute.MEASURED : RadiationRoute.TEMPERATURE_RANGE,
        humidityRoute(weather, index),
        windRoute(weather, site, index));
  }

  /**
   * True when neither radiation nor humidity was measured: evapotranspiration is then an estimate
   * from two temperatures, about 0.7 mm a day off, and is never to be shown as a measurement.
   */
  public boolean restsOnTemperatureAlone() {
    return radiationRoute == RadiationRoute.TEMPERATURE_RANGE
        && humidityRoute == HumidityRoute.MINIMUM_TEMPERATURE;
  }

  private static double radiationFromTemperature(
      WeatherSeries weather, int index, double extraterrestrialMjPerM2) {
    return Radiation.fromTemperatureRangeMjPerM2(
        weather.value(Quantity.MINIMUM_C, index),
        weather.value(Quantity.MAXIMUM_C, index),
        extraterrestrialMjPerM2,
        Radiation.INLAND_COEFFICIENT);
  }

  private static double combinationMm(
      WeatherSeries weather,
      Site site,
      int index,
      double globalRadiationMjPerM2,
      double clearnessFraction) {
    double minimumC = weather.value(Quantity.MINIMUM_C, index);
    double maximumC = weather.value(Quantity.MAXIMUM_C, index);
    double vapourPressure = vapourPressureKPa(weather, index);
    double netRadiation =
        ReferenceEvapotranspiration.netRadiationMjPerM2(
            Radiation.netShortwaveMjPerM2(globalRadiationMjPerM2),
            Radiation.netLongwaveMjPerM2(minimumC, maximumC, vapourPressure, clearnessFraction));
    return ReferenceEvapotranspiration.combinationMm(
        new ReferenceEvapotranspiration.Day(
            (minimumC + maximumC) / 2,
            netRadiation,
            ReferenceEvapotranspiration.dailySoilHeatFluxMjPerM2(),
            windAt2mMPerS(weather, site, index),
            Humidity.meanSaturationVapourPressureKPa(minimumC, maximumC),
            vapourPressure,
            ReferenceEvapotranspiration.psychrometricConstantKPaPerC(
                ReferenceEvapotranspiration.atmosphericPressureKPa(site.elevationM()))));
  }

  /** Where the vapour pressure of a day of a record comes from. */
  public static HumidityRoute humidityRoute(WeatherSeries weather, int index) {
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

  /**
   * Actual vapour pressure of a day of a record, kPa, from what was measured: dew point, RHmax and
   * RHmin, RHmax, else Tdew = Tmin.
   *
   * @param weather the record
   * @param index day of the record, 0 for the first
   * @source fao56, eq. 14, 17, 18 and 48
   */
  public static double vapourPressureKPa(WeatherSeries weather, int index) {
    double minimumC = weather.value(Quantity.MINIMUM_C, index);
    double humidityMaximum = weather.value(Quantity.HUMIDITY_MAXIMUM_PERCENT, index);
    return switch (humidityRoute(weather, index)) {
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

  /**
   * Wind at 2 m on a day of a record, m/s: as measured, at least 0.5; 2 where it was not measured.
   *
   * @param weather the record
   * @param site where it was measured
   * @param index day of the record, 0 for the first
   * @source fao56, eq. 47
   */
  public static double windAt2mMPerS(WeatherSeries weather, Site site, int index) {
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
