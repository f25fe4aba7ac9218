package leafturn.model;

/**
 * Random numbers that depend on nothing but a seed, a stream and a place: place p of stream s of
 * seed n gives the same numbers on every machine, in any order and on any number of threads. One
 * object serves one thread; make another for the same seed and stream instead of sharing it.
 *
 * <p>The numbers are those of a 64-bit counter put through a mixing function (SplitMix64, Steele,
 * Lea and Flood 2014). Two choices that are to be compared under common random numbers ask for the
 * same stream.
 */
public final class RandomStream {
  /** The fractional part of the golden ratio, the counter's step. */
  private static final long STEP = 0x9E3779B97F4A7C15L;

  private static final double UNIT = 0x1.0p-53;

  private final long key;
  private long counter;
  private double spareNormal = Double.NaN;

  /**
   * @param seed any number; another seed gives other numbers
   * @param stream any number, for instance the number of a possible season
   */
  public RandomStream(long seed, long stream) {
    this.key = mixed(mixed(seed) + STEP * (stream + 1));
    this.counter = key;
  }

  /**
   * Turns to the numbers of a place, for instance a day; what was drawn before has no influence.
   *
   * @param place any number
   * @return this stream
   */
  public RandomStream at(long place) {
    counter = mixed(key + STEP * (place + 1));
    spareNormal = Double.NaN;
    return this;
  }

  /** A number between 0 and 1, never either of them. */
  public double uniform() {
    counter += STEP;
    return ((mixed(counter) >>> 11) + 0.5) * UNIT;
  }

  /**
   * A number from the normal distribution with mean 0 and standard deviation 1.
   *
   * @source boxmuller1958
   */
  public double normal() {
    if (!Double.isNaN(spareNormal)) {
      double spare = spareNormal;
      spareNormal = Double.NaN;
      return spare;
    }
    double radius = Math.sqrt(-2 * Math.log(uniform()));
    double angle = 2 * Math.PI * uniform();
    spareNormal = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  }

  /**
   * A number from the exponential distribution.
   *
   * @param mean its mean, in any unit, positive
   */
  public double exponential(double mean) {
    return -mean * Math.log(uniform());
  }

  /**
   * A number between two ends with as much chance below its middle as above, likeliest at the
   * middle and falling straight to nothing at both ends; the middle is its median wherever it lies.
   *
   * @param low the least
   * @param middle from low to high
   * @param high the most
   */
  public double around(double low, double middle, double high) {
    double end = uniform() < 0.5 ? low : high;
    return middle + (end - middle) * (1 - Math.sqrt(1 - uniform()));
  }

  private static long mixed(long number) {
    long z = number;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
