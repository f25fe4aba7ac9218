package leafturn.model.weather.hourly;

import java.time.LocalDate;
import leafturn.model.weather.Humidity;
import leafturn.model.weather.Radiation;
import leafturn.model.weather.ReferenceEvapotranspiration;
import leafturn.model.weather.Site;

/**
 * The air of yesterday, today and tomorrow by the hour, each value that of the middle of its hour.
 * Vapour pressure stays the same through a day; wind over the lawn is half that of an open station,
 * and by day twice that by night. Made once for a site and date and filled again for each possible
 * weather; not for several threads at once.
 */
final class AirHours {
  static final int DAYS = 3;
  static final int HOURS = 24 * DAYS;

  private static final double DAY_OVER_NIGHT_WIND = 2;

  /** Wind over a lawn among houses and hedges, of an open station's (our judgement). */
  private static final double SHELTER = 0.5;

  private static final double SUNSHINE_REFLECTED = 0.23;

  private enum Curve {
    BEFORE_SUNRISE,
    DAY,
    AFTER_SUNSET
  }

  final double[] temperatureC = new double[HOURS];
  final double[] humidityPercent = new double[HOURS];
  final double[] windMPerS = new double[HOURS];
  final double[] netRadiationMj = new double[HOURS];
  final double[] evaporationMm = new double[HOURS];
  final Daylight[] daylight = new Daylight[DAYS];

  private final Curve[] curve = new Curve[HOURS];
  private final double[] weight = new double[HOURS];
  private final double[] sunsetWeight = new double[DAYS];
  private final double gamma;

  AirHours(Site site, LocalDate today, SolarClock clock) {
    for (int day = 0; day < DAYS; day++) {
      daylight[day] = new Daylight(site, today.plusDays(day - 1), clock);
      double daylength = daylight[day].daylengthHours;
      sunsetWeight[day] = HourlyTemperature.dayFraction(daylength, daylength);
    }
    for (int hour = 0; hour < HOURS; hour++) {
      place(hour);
    }
    this.gamma =
        ReferenceEvapotranspiration.psychrometricConstantKPaPerC(
            ReferenceEvapotranspiration.atmosphericPressureKPa(site.elevationM()));
  }

  private void place(int hour) {
    int day = hour / 24;
    double time = hour % 24 + 0.5;
    Daylight sun = daylight[day];
    double minimumTime = sun.sunriseHour + HourlyTemperature.MINIMUM_LAG_HOURS;
    if (time < minimumTime) {
      double sunset = daylight[Math.max(0, day - 1)].sunsetHour - 24;
      curve[hour] = Curve.BEFORE_SUNRISE;
      weight[hour] =
          HourlyTemperature.nightFraction(Math.max(0, time - sunset), minimumTime - sunset);
    } else if (time <= sun.sunsetHour) {
      curve[hour] = Curve.DAY;
      weight[hour] = HourlyTemperature.dayFraction(time - sun.sunriseHour, sun.daylengthHours);
    } else {
      Daylight next = daylight[Math.min(DAYS - 1, day + 1)];
      double minimumNext = 24 + next.sunriseHour + HourlyTemperature.MINIMUM_LAG_HOURS;
      curve[hour] = Curve.AFTER_SUNSET;
      weight[hour] =
          HourlyTemperature.nightFraction(time - sun.sunsetHour, minimumNext - sun.sunsetHour);
    }
  }

  /** Fills the hours from three days of weather. */
  void fill(DayWeather[] days) {
    for (int day = 0; day < DAYS; day++) {
      fill(days, day);
    }
  }

  private void fill(DayWeather[] days, int day) {
    DayWeather.Air air = days[day].air();
    Daylight sun = daylight[day];
    double clearness = clearness(air.radiationMjPerM2(), sun.clearSkyMjPerM2);
    double sky = HourlyRadiation.sky(air.vapourPressureKPa(), clearness);
    double shortwave =
        (1 - SUNSHINE_REFLECTED) * Math.min(air.radiationMjPerM2(), sun.clearSkyMjPerM2);
    double dayShare = sun.daylengthHours / 24;
    double nightWind =
        SHELTER * air.windAt2mMPerS() / (DAY_OVER_NIGHT_WIND * dayShare + 1 - dayShare);
    for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
      temperatureC[hour] = temperatureC(days, day, hour);
      netRadiationMj[hour] =
          shortwave * sun.radiationShare[hour % 24]
              - HourlyRadiation.longwaveMj(temperatureC[hour], sky);
      double wind = curve[hour] == Curve.DAY ? DAY_OVER_NIGHT_WIND * nightWind : nightWind;
      windMPerS[hour] = Math.max(ReferenceEvapotranspiration.LEAST_WIND_M_PER_S, wind);
      moisten(hour, air.vapourPressureKPa());
    }
  }

  private void moisten(int hour, double vapourPressureKPa) {
    double saturationKPa = Humidity.saturationVapourPressureKPa(temperatureC[hour]);
    humidityPercent[hour] = Math.min(100, 100 * vapourPressureKPa / saturationKPa);
    evaporationMm[hour] =
        WetCanopy.evaporationMm(
            WetCanopy.slopeKPaPerC(temperatureC[hour], saturationKPa),
            Math.max(0, saturationKPa - vapourPressureKPa),
            windMPerS[hour],
            netRadiationMj[hour],
            gamma);
  }

  private double temperatureC(DayWeather[] days, int day, int hour) {
    DayWeather.Air air = days[day].air();
    return switch (curve[hour]) {
      case DAY -> between(air.minimumC(), air.maximumC(), weight[hour]);
      case BEFORE_SUNRISE ->
          between(air.minimumC(), sunsetC(days, Math.max(0, day - 1)), weight[hour]);
      case AFTER_SUNSET ->
          between(
              days[Math.min(DAYS - 1, day + 1)].air().minimumC(), sunsetC(days, day), weight[hour]);
    };
  }

  private double sunsetC(DayWeather[] days, int day) {
    DayWeather.Air air = days[day].air();
    return between(air.minimumC(), air.maximumC(), sunsetWeight[day]);
  }

  private static double between(double lowC, double highC, double share) {
    return lowC + (highC - lowC) * share;
  }

  private static double clearness(double globalMj, double clearSkyMj) {
    return Radiation.clearnessFraction(Math.min(60, globalMj), clearSkyMj);
  }
}
