package leafturn.model.weather.hourly;

import java.time.LocalDate;
import leafturn.model.weather.Radiation;
import leafturn.model.weather.Site;

/**
 * Sun of one day at a site by the hours of its clock: all that does not depend on the weather.
 * Where it does not rise or does not set, temperature follows a day of 1 or 23 hours.
 */
final class Daylight {
  private static final double SHORTEST_HOURS = 1;

  final double sunriseHour;
  final double sunsetHour;
  final double daylengthHours;
  final double clearSkyMjPerM2;
  final double[] radiationShare = new double[24];

  Daylight(Site site, LocalDate day, SolarClock clock) {
    int dayOfYear = day.getDayOfYear();
    double hours = Radiation.daylengthHours(site.latitudeDeg(), dayOfYear);
    this.daylengthHours = Math.max(SHORTEST_HOURS, Math.min(24 - SHORTEST_HOURS, hours));
    double noon = 12 - clock.hoursAhead();
    this.sunriseHour = noon - daylengthHours / 2;
    this.sunsetHour = noon + daylengthHours / 2;
    double top = Radiation.extraterrestrialMjPerM2(site.latitudeDeg(), dayOfYear);
    this.clearSkyMjPerM2 = Radiation.clearSkyMjPerM2(top, site.elevationM());
    for (int hour = 0; hour < 24 && top > 0; hour++) {
      double from = hour + clock.hoursAhead();
      double sum = 0;
      for (int turn = -24;
          turn <= 24;
          turn += 24) { // the sun of the days beside it, near the poles
        sum +=
            HourlyRadiation.extraterrestrialMjPerM2(
                site.latitudeDeg(), dayOfYear, from + turn, from + turn + 1);
      }
      radiationShare[hour] = sum / top;
    }
  }
}
