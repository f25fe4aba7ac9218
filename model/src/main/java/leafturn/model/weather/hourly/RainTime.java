package leafturn.model.weather.hourly;

/**
 * When a day's rain fell or will fall, on the same clock as the hours asked for. A daily record
 * does not say; without more, any hour is as likely as another.
 *
 * @param earliestStart hour before which it did not begin, 0 to below 24
 * @param earliestEnd hour before which it did not end, from {@code earliestStart} on
 * @param latestEnd hour by which it had ended, from {@code earliestEnd} on, above {@code
 *     earliestStart}, at most 24
 */
public record RainTime(double earliestStart, double earliestEnd, double latestEnd) {
  /** Nothing is known. */
  public static final RainTime ANY_HOUR = new RainTime(0, 0, 24);

  public RainTime {
    boolean rising = earliestStart <= earliestEnd && earliestEnd <= latestEnd;
    if (!(rising && earliestStart >= 0 && earliestStart < latestEnd && latestEnd <= 24)) {
      throw new IllegalArgumentException(
          "rain from hour %s on that ended between hour %s and %s, but its hours must rise within 0 to 24"
              .formatted(earliestStart, earliestEnd, latestEnd));
    }
  }

  /**
   * Rain that was seen to end.
   *
   * @param hour above 0, at most 24
   */
  public static RainTime ended(double hour) {
    return new RainTime(0, hour, hour);
  }

  /**
   * Rain that had not begun.
   *
   * @param hour 0 to below 24
   */
  public static RainTime after(double hour) {
    return new RainTime(hour, hour, 24);
  }
}
