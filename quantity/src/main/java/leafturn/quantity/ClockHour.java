package leafturn.quantity;

/** Whole hours of the clock as a reader writes them. */
public final class ClockHour {
  private static final int NOON = 12;
  private static final int DAY = 24;

  private ClockHour() {}

  /**
   * "18" for readers of metric units, "6 pm" or "noon" for those of US units.
   *
   * @param hour 0 to 24
   * @throws IllegalArgumentException outside the range
   */
  public static String shown(int hour, Units units) {
    if (hour < 0 || hour > DAY) {
      throw new IllegalArgumentException("the hour is " + hour + ", but must lie from 0 to 24");
    }
    if (units != Units.US) {
      return Integer.toString(hour);
    }
    if (hour == NOON) {
      return "noon";
    }
    int shown = hour % NOON == 0 ? NOON : hour % NOON;
    return shown + (hour % DAY < NOON ? " am" : " pm");
  }
}
