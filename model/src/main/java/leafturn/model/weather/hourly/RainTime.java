package leafturn.model.weather.hourly;

/**
 * The part of a day in which its rain fell or will fall, on the same clock as the hours asked for.
 * A daily record does not say when; without more, any hour is as likely as another.
 *
 * @param earliestStart hour before which it did not begin, 0 to 24
 * @param latestEnd hour by which it had ended, after {@code earliestStart}, at most 24
 */
public record RainTime(double earliestStart, double latestEnd) {
  /** Nothing is known. */
  public static final RainTime ANY_HOUR = new RainTime(0, 24);

  private static final RainTime MORNING = new RainTime(5, 12);

  public RainTime {
    if (!(earliestStart >= 0 && latestEnd > earliestStart && latestEnd <= 24)) {
      throw new IllegalArgumentException(
          "rain between hour %s and %s, but its hours must rise within 0 to 24"
              .formatted(earliestStart, latestEnd));
    }
  }

  /** "Rain this morning": between 5 and 12 o'clock. */
  public static RainTime morning() {
    return MORNING;
  }

  /**
   * Rain that was seen to end.
   *
   * @param hour above 0, at most 24
   */
  public static RainTime ended(double hour) {
    return new RainTime(Math.max(0, hour - Showers.LONGEST_HOURS), hour);
  }
}
