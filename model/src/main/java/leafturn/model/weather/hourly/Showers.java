package leafturn.model.weather.hourly;

/** Spreads a day's rain over its hours for one of several equally likely times of falling. */
final class Showers {
  /** Times of falling that stand for all. */
  static final int TIMES = 6;

  /** Longest fall a day's rain is pressed into, h (our judgement). */
  private static final double LONGEST_HOURS = 12;

  /** Rate of fall that sets how long a day's rain lasts, mm/h (our judgement). */
  private static final double RATE_MM_PER_HOUR = 2;

  private static final double SHORTEST_HOURS = 1;

  private Showers() {}

  /**
   * Adds a day's rain to its 24 hours.
   *
   * @param hourMm hours of several days, mm
   * @param firstHour index of the day's first hour
   * @param rainMm the day's rain
   * @param time when it fell
   * @param which time of falling, 0 to {@link #TIMES} - 1
   */
  static void add(double[] hourMm, int firstHour, double rainMm, RainTime time, int which) {
    if (rainMm <= 0) {
      return;
    }
    double lasts = Math.max(SHORTEST_HOURS, Math.min(LONGEST_HOURS, rainMm / RATE_MM_PER_HOUR));
    double first =
        Math.min(time.latestEnd(), Math.max(time.earliestEnd(), time.earliestStart() + lasts));
    double end = first + (time.latestEnd() - first) * (which + 0.5) / TIMES;
    double start = Math.max(time.earliestStart(), end - lasts);
    spread(hourMm, firstHour, rainMm, start, end);
  }

  /** Adds water that falls evenly between two hours of a day. */
  static void spread(double[] hourMm, int firstHour, double waterMm, double start, double end) {
    double perHour = waterMm / (end - start);
    for (int hour = (int) start; hour < Math.min(24, Math.ceil(end)); hour++) {
      double share = Math.min(end, hour + 1) - Math.max(start, hour);
      hourMm[firstHour + hour] += perHour * Math.max(0, share);
    }
  }
}
