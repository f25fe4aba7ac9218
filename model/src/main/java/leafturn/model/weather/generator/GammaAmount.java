package leafturn.model.weather.generator;

import leafturn.model.RandomStream;

/**
 * Rain of a wet day by a gamma distribution.
 *
 * @param shape alpha, above 0
 * @param scaleMm beta, mm, above 0
 */
public record GammaAmount(double shape, double scaleMm) implements RainAmount {
  public GammaAmount {
    if (!(shape > 0) || !(scaleMm > 0)) {
      throw new IllegalArgumentException(
          "a gamma distribution needs a shape and a scale above 0, but got %s and %s mm"
              .formatted(shape, scaleMm));
    }
  }

  /**
   * Fitted to wet days by an approximation of greatest likelihood: s = ln(mean) - mean(ln), alpha =
   * (3 - s + sqrt((s - 3)^2 + 24 s)) / (12 s), beta = mean / alpha.
   *
   * @param wetDaysMm rain of wet days, mm, two or more that differ, each above 0
   * @source richardson1984
   */
  public static GammaAmount fitted(double[] wetDaysMm) {
    double sum = 0;
    double logs = 0;
    for (double rainMm : wetDaysMm) {
      sum += rainMm;
      logs += Math.log(rainMm);
    }
    double mean = sum / wetDaysMm.length;
    double s = Math.log(mean) - logs / wetDaysMm.length;
    if (!(s > 0)) {
      throw new IllegalArgumentException(
          "a gamma distribution needs two or more different wet days, but got "
              + wetDaysMm.length
              + " with a mean of "
              + mean
              + " mm");
    }
    double shape = (3 - s + Math.sqrt((s - 3) * (s - 3) + 24 * s)) / (12 * s);
    return new GammaAmount(shape, mean / shape);
  }

  @Override
  public double meanMm() {
    return shape * scaleMm;
  }

  /**
   * One wet day, by rejection from a cubed normal number; a shape below 1 is drawn one higher and
   * brought down.
   *
   * @source marsaglia2000
   */
  @Override
  public double drawnMm(RandomStream random) {
    double raised = shape < 1 ? shape + 1 : shape;
    double drawn = scaleMm * standard(raised, random);
    return shape < 1 ? drawn * Math.pow(random.uniform(), 1 / shape) : drawn;
  }

  private static double standard(double shape, RandomStream random) {
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double normal = random.normal();
      double root = 1 + c * normal;
      if (root > 0) {
        double cube = root * root * root;
        double accepted = normal * normal / 2 + d - d * cube + d * Math.log(cube);
        if (Math.log(random.uniform()) < accepted) {
          return d * cube;
        }
      }
    }
  }
}
