package leafturn.records.sheet;

/**
 * The share of a lawn that a point count finds under one cover, with its 95 % interval.
 *
 * @param fraction share of the points, 0 to 1
 * @param lowFraction lower limit, 0 to 1
 * @param highFraction upper limit, 0 to 1
 */
public record PointShare(double fraction, double lowFraction, double highFraction) {
  /** Quantile of the normal distribution that leaves 2.5 % on either side. */
  private static final double Z = 1.959963984540054;

  /**
   * Share of the points hit, with Wilson's score interval at 95 %: (p + z²/2n ± z √(p(1 - p)/n +
   * z²/4n²)) / (1 + z²/n). It holds for points that fall independently, so points of a close grid
   * on patchy ground say less than it tells.
   *
   * @param hits points that fell on it, 0 to {@code points}
   * @param points all points, n, 1 or more
   * @throws IllegalArgumentException outside these ranges
   * @source wilson1927
   */
  public static PointShare of(int hits, int points) {
    if (points < 1 || hits < 0 || hits > points) {
      throw new IllegalArgumentException(
          "%d of %d points; there must be at least one, and no more hits than points"
              .formatted(hits, points));
    }
    double n = points;
    double p = hits / n;
    double middle = p + Z * Z / (2 * n);
    double half = Z * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
    double scale = 1 + Z * Z / n;
    double low = hits == 0 ? 0 : (middle - half) / scale;
    double high = hits == points ? 1 : (middle + half) / scale;
    return new PointShare(p, low, high);
  }
}
