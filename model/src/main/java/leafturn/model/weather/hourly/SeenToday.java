package leafturn.model.weather.hourly;

/**
 * What someone saw on the lawn today, which outweighs the reckoning. Hours are on the same clock as
 * those asked for; NaN where nobody looked.
 *
 * @param dryAt hour at which leaves were dry to the hand
 * @param wetAt hour at which they were wet
 * @param frostAt hour at which frost lay on the ground
 * @param thawedAt hour at which none lay
 */
public record SeenToday(double dryAt, double wetAt, double frostAt, double thawedAt) {
  /** Nobody looked. */
  public static final SeenToday NOTHING =
      new SeenToday(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  public SeenToday {
    for (double hour : new double[] {dryAt, wetAt, frostAt, thawedAt}) {
      if (hour < 0 || hour >= 24) {
        throw new IllegalArgumentException(
            "something was seen at hour %s, but hours lie from 0 to below 24".formatted(hour));
      }
    }
  }

  /** Index of an hour of today among hours that begin yesterday; -1 where nobody looked. */
  static int index(double hour) {
    return Double.isNaN(hour) ? -1 : 24 + (int) hour;
  }
}
