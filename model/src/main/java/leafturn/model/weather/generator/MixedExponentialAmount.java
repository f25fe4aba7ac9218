package leafturn.model.weather.generator;

import leafturn.model.RandomStream;

/**
 * Rain of a wet day above the least wet day, by a mixture of two exponential distributions: showers
 * and downpours.
 *
 * @param firstShare share of the first kind, 0-1
 * @param firstMeanMm its mean above the least wet day, mm, above 0
 * @param secondMeanMm mean of the other kind above the least wet day, mm, above 0
 */
public record MixedExponentialAmount(double firstShare, double firstMeanMm, double secondMeanMm)
    implements RainAmount {
  private static final int MOST_ROUNDS = 200;
  private static final double SMALLEST_STEP_MM = 1e-3;

  /** Least mean of a kind, mm, so that a kind cannot shrink to a single value. */
  private static final double LEAST_MEAN_MM = 0.05;

  public MixedExponentialAmount {
    if (!(firstShare >= 0 && firstShare <= 1) || !(firstMeanMm > 0) || !(secondMeanMm > 0)) {
      throw new IllegalArgumentException(
          "a mixture needs a share from 0 to 1 and means above 0, but got %s of %s mm and %s mm"
              .formatted(firstShare, firstMeanMm, secondMeanMm));
    }
  }

  /**
   * Fitted to wet days by expectation and maximisation, which keeps their mean.
   *
   * @param wetDaysMm rain of wet days, mm, one or more, each at least that of the least wet day
   * @source wilks1999
   */
  public static MixedExponentialAmount fitted(double[] wetDaysMm) {
    if (wetDaysMm.length == 0) {
      throw new IllegalArgumentException("the rain of wet days needs one wet day or more");
    }
    double[] aboveMm = new double[wetDaysMm.length];
    double mean = 0;
    for (int day = 0; day < aboveMm.length; day++) {
      aboveMm[day] = Math.max(0, wetDaysMm[day] - WeatherGenerator.LEAST_WET_DAY_MM);
      mean += aboveMm[day] / aboveMm.length;
    }
    mean = Math.max(LEAST_MEAN_MM, mean);
    MixedExponentialAmount mixture = new MixedExponentialAmount(0.5, mean / 2, 1.5 * mean);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      MixedExponentialAmount next = mixture.nearer(aboveMm);
      double step = Math.abs(next.secondMeanMm - mixture.secondMeanMm);
      mixture = next;
      if (step < SMALLEST_STEP_MM) {
        break;
      }
    }
    return mixture;
  }

  private MixedExponentialAmount nearer(double[] aboveMm) {
    double shares = 0;
    double firstSum = 0;
    double secondSum = 0;
    for (double amount : aboveMm) {
      double first = firstShare / firstMeanMm * Math.exp(-amount / firstMeanMm);
      double second = (1 - firstShare) / secondMeanMm * Math.exp(-amount / secondMeanMm);
      double share = first / (first + second);
      shares += share;
      firstSum += share * amount;
      secondSum += (1 - share) * amount;
    }
    double others = aboveMm.length - shares;
    return new MixedExponentialAmount(
        shares / aboveMm.length,
        shares > 0 ? Math.max(LEAST_MEAN_MM, firstSum / shares) : firstMeanMm,
        others > 0 ? Math.max(LEAST_MEAN_MM, secondSum / others) : secondMeanMm);
  }

  @Override
  public double meanMm() {
    return WeatherGenerator.LEAST_WET_DAY_MM
        + firstShare * firstMeanMm
        + (1 - firstShare) * secondMeanMm;
  }

  @Override
  public double drawnMm(RandomStream random) {
    double mean = random.uniform() < firstShare ? firstMeanMm : secondMeanMm;
    return WeatherGenerator.LEAST_WET_DAY_MM + random.exponential(mean);
  }
}
