package leafturn.model.weather.hourly;

/**
 * Air temperature through the day from its two extremes. The grass hours use Parton and Logan's day
 * curve with a night curve of ours that meets the next minimum; theirs stops about 1 °C short of it
 * and steps down at sunrise, where dew is decided.
 */
public final class HourlyTemperature {
  /** a: lag of the maximum, h, of air at 1.5 m. */
  public static final double MAXIMUM_LAG_HOURS = 1.86;

  /** b: decay of the night, of air at 1.5 m. */
  public static final double NIGHT_DECAY = 2.20;

  /** c: lag of the minimum behind sunrise, h, of air at 1.5 m. */
  public static final double MINIMUM_LAG_HOURS = -0.17;

  private static final double NIGHT_END = Math.exp(-NIGHT_DECAY);

  private HourlyTemperature() {}

  /**
   * Share of the way from minimum to maximum by day: sin(π m / (Y + 2a)), m the hours since the
   * minimum, which comes c hours after sunrise.
   *
   * @param hoursSinceSunrise h, from c to Y
   * @param daylengthHours Y, h, 0 to 24
   * @return 0 at the minimum, 1 at the maximum
   * @throws IllegalArgumentException outside the ranges
   * @source parton1981, day curve with a = 1.86 h and c = -0.17 h (air at 1.5 m)
   */
  public static double dayFraction(double hoursSinceSunrise, double daylengthHours) {
    HourBounds.DAYLENGTH.checked(daylengthHours);
    if (!(hoursSinceSunrise >= MINIMUM_LAG_HOURS && hoursSinceSunrise <= daylengthHours)) {
      throw new IllegalArgumentException(
          "%s h after sunrise is not by day; the day runs from %s to %s h"
              .formatted(hoursSinceSunrise, MINIMUM_LAG_HOURS, daylengthHours));
    }
    double sinceMinimum = hoursSinceSunrise - MINIMUM_LAG_HOURS;
    return Math.sin(Math.PI * sinceMinimum / (daylengthHours + 2 * MAXIMUM_LAG_HOURS));
  }

  /**
   * Share of the way from the next minimum back to the temperature at sunset, as printed: exp(-b n
   * / Z). It does not reach 0 at sunrise.
   *
   * @param hoursSinceSunset n, h, 0 to 24
   * @param nightHours Z, h, above 0
   * @throws IllegalArgumentException outside the ranges
   * @source parton1981, night curve with b = 2.20 (air at 1.5 m)
   */
  public static double printedNightFraction(double hoursSinceSunset, double nightHours) {
    HourBounds.HOUR.checked(hoursSinceSunset);
    HourBounds.HOUR.checked(nightHours);
    return Math.exp(-NIGHT_DECAY * hoursSinceSunset / nightHours);
  }

  /**
   * The same, stretched to reach the minimum at its time: (exp(-b n / Z) - exp(-b)) / (1 - exp(-b))
   * with Z from sunset to the minimum.
   *
   * @param hoursSinceSunset n, h, 0 to Z
   * @param hoursToMinimum Z, h from sunset to the next minimum, above 0
   * @return 1 at sunset, 0 at the minimum
   * @throws IllegalArgumentException outside the ranges
   * @source our judgement
   */
  public static double nightFraction(double hoursSinceSunset, double hoursToMinimum) {
    return (printedNightFraction(hoursSinceSunset, hoursToMinimum) - NIGHT_END) / (1 - NIGHT_END);
  }

  /**
   * Share of the way from minimum to maximum on the rising limb of another curve: sin(π/2 (t - sr)
   * / (Hx - sr)), the maximum Hx 4 h before sunset.
   *
   * @param hoursSinceSunrise t - sr, h, 0 to Hx - sr
   * @param daylengthHours h, above 4
   * @throws IllegalArgumentException outside the ranges
   * @source cesaraccio2001, rise to the maximum
   */
  public static double sineRiseFraction(double hoursSinceSunrise, double daylengthHours) {
    HourBounds.DAYLENGTH.checked(daylengthHours);
    double rise = daylengthHours - 4;
    if (!(hoursSinceSunrise >= 0 && hoursSinceSunrise <= rise)) {
      throw new IllegalArgumentException(
          "%s h after sunrise is not on the rise, which lasts %s h"
              .formatted(hoursSinceSunrise, rise));
    }
    return Math.sin(Math.PI / 2 * hoursSinceSunrise / rise);
  }

  /**
   * Share of the way from minimum to maximum on any day of the year, without the sun: Γ = 0.44 -
   * 0.46 sin(ω t + 0.9) + 0.11 sin(2 ω t + 0.9), ω = π/12.
   *
   * @param solarHour t, h, 0 to 24
   * @throws IllegalArgumentException outside the range
   * @source campbell1998, diurnal function
   */
  public static double plainFraction(double solarHour) {
    double angle = Math.PI / 12 * HourBounds.HOUR.checked(solarHour);
    return 0.44 - 0.46 * Math.sin(angle + 0.9) + 0.11 * Math.sin(2 * angle + 0.9);
  }
}
