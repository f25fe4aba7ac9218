package leafturn.model.weather.hourly;

import java.time.LocalDate;
import java.time.LocalTime;
import leafturn.model.weather.Site;

/**
 * How far the sun is ahead of the clock on a day.
 *
 * @param hoursAhead solar time less clock time, h; 0 where hours are in solar time
 * @param clock true when hours are on the clock of the site's time zone, summer time included;
 *     false when longitude or zone is not known and hours are in solar time, noon at the sun's
 *     highest
 */
public record SolarClock(double hoursAhead, boolean clock) {
  private static final double DEGREES_PER_HOUR = 15;
  private static final double SECONDS_PER_HOUR = 3600;

  /** The clock of a site at noon of a day. */
  public static SolarClock of(Site site, LocalDate day) {
    Double longitudeDeg = site.longitudeDeg();
    if (longitudeDeg == null || site.timeZone() == null) {
      return new SolarClock(0, false);
    }
    double clockHours =
        site.timeZone().getRules().getOffset(day.atTime(LocalTime.NOON)).getTotalSeconds()
            / SECONDS_PER_HOUR;
    double sunHours = longitudeDeg / DEGREES_PER_HOUR + equationOfTimeHours(day.getDayOfYear());
    double ahead = (sunHours - clockHours) % 24;
    return new SolarClock(ahead > 12 ? ahead - 24 : ahead < -12 ? ahead + 24 : ahead, true);
  }

  /**
   * Solar time less mean time, h: 0.1645 sin 2b - 0.1255 cos b - 0.025 sin b, b = 2π (J - 81)/364.
   *
   * @param dayOfYear J, 1 to 366
   * @return -0.24 to 0.28
   * @source fao56, eq. 32 and 33, from memory
   */
  public static double equationOfTimeHours(int dayOfYear) {
    double angle = 2 * Math.PI * (dayOfYear - 81) / 364;
    return 0.1645 * Math.sin(2 * angle) - 0.1255 * Math.cos(angle) - 0.025 * Math.sin(angle);
  }
}
