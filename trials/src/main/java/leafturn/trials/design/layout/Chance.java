package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A stream of chance from a seed and a purpose: the same of both give the same for ever, and what
 * is drawn for one purpose does not move when another draws more.
 */
final class Chance {
  /** Odd, so that purposes never meet: 2^64 over the golden ratio. */
  private static final long STEP = 0x9E3779B97F4A7C15L;

  private final UniformRandomProvider stream;

  private Chance(long seed) {
    stream = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
  }

  /**
   * @param purpose what is drawn, told apart by numbers of one's own
   */
  static Chance of(long seed, long... purpose) {
    long mixed = seed;
    for (long part : purpose) {
      mixed = (mixed ^ (mixed >>> 31)) * STEP + part + 1;
    }
    return new Chance(mixed);
  }

  /** True or false, each as likely. */
  boolean coin() {
    return stream.nextBoolean();
  }

  /** A whole number from 0 to below a limit, each as likely. */
  int below(int limit) {
    return stream.nextInt(limit);
  }

  /** A number from 0 to below 1. */
  double share() {
    return stream.nextDouble();
  }

  /**
   * The same things in random order, each order as likely.
   *
   * @source fisheryates1938
   */
  <T> List<T> shuffled(List<T> things) {
    List<T> order = new ArrayList<>(things);
    for (int last = order.size() - 1; last > 0; last--) {
      int other = below(last + 1);
      T moved = order.get(last);
      order.set(last, order.get(other));
      order.set(other, moved);
    }
    return order;
  }
}
