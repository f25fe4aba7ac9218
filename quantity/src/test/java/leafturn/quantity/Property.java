package leafturn.quantity;

import java.util.SplittableRandom;

/**
 * Checks that something holds for many random cases. Every case has a seed of its own, made from
 * the check's; a failure names it, and {@link #one} runs that case alone.
 */
public final class Property {
  private Property() {}

  /** Makes a case from random numbers and fails when the property does not hold for it. */
  @FunctionalInterface
  public interface Check {
    /** One case. */
    void holds(SplittableRandom random);
  }

  /**
   * Checks cases one after another up to the first that fails.
   *
   * @param seed of the whole check
   * @param cases how many
   */
  public static void forAll(long seed, int cases, Check check) {
    SplittableRandom seeds = new SplittableRandom(seed);
    for (int number = 1; number <= cases; number++) {
      long own = seeds.nextLong();
      try {
        one(own, check);
      } catch (RuntimeException | AssertionError failed) {
        throw new AssertionError(
            "case %d of %d from seed %d; alone by Property.one(%dL, ...): %s"
                .formatted(number, cases, seed, own, failed.getMessage()),
            failed);
      }
    }
  }

  /** Checks the case of one seed. */
  public static void one(long seed, Check check) {
    check.holds(new SplittableRandom(seed));
  }
}
