package leafturn.model.weather.generator;

/**
 * Whether it rains: a chain of wet and dry days that remembers one day.
 *
 * @param afterDryFraction chance of a wet day after a dry one, 0-1
 * @param afterWetFraction chance of a wet day after a wet one, 0-1
 */
public record RainOccurrence(double afterDryFraction, double afterWetFraction) {
  public RainOccurrence {
    if (!(afterDryFraction >= 0 && afterDryFraction <= 1)
        || !(afterWetFraction >= 0 && afterWetFraction <= 1)) {
      throw new IllegalArgumentException(
          "chances of a wet day must lie from 0 to 1, but are %s after a dry and %s after a wet day"
              .formatted(afterDryFraction, afterWetFraction));
    }
  }

  /** Chance of a wet day, 0-1. */
  double chance(boolean wetBefore) {
    return wetBefore ? afterWetFraction : afterDryFraction;
  }

  /**
   * Share of wet days in the long run, 0-1: P01 / (1 + P01 - P11); 0 where no dry day is followed
   * by a wet one.
   *
   * @source richardson1981
   */
  public double wetFraction() {
    return afterDryFraction == 0 ? 0 : afterDryFraction / (1 + afterDryFraction - afterWetFraction);
  }

  /**
   * Correlation of a day's being wet with the day before's, -1 to 1: P11 - P01.
   *
   * @source richardson1981
   */
  public double persistence() {
    return afterWetFraction - afterDryFraction;
  }

  /**
   * Mean length of a wet spell, days: 1 / (1 - P11).
   *
   * @source richardson1981
   */
  public double meanWetSpellDays() {
    return 1 / (1 - afterWetFraction);
  }

  /**
   * Mean length of a dry spell, days: 1 / P01.
   *
   * @source richardson1981
   */
  public double meanDrySpellDays() {
    return 1 / afterDryFraction;
  }

  /**
   * Variance of the number of wet days in a stretch, for stretches much longer than a spell: N pi
   * (1 - pi) (1 + r) / (1 - r).
   *
   * @param days N, 1 or more
   * @source richardson1981
   */
  public double varianceOfWetDays(int days) {
    double wet = wetFraction();
    return days * wet * (1 - wet) * (1 + persistence()) / (1 - persistence());
  }
}
