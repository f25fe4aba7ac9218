package leafturn.quantity;

import java.util.SplittableRandom;

/**
 * Checks that something holds for many random cases. Every case has a seed of its own, made from
 * the check's; a failure names it, and {@link #one} runs that case alone.
 */
public final class Property {
  private static final String SHARE = "leafturn.cases.share";

  private Property() {}

  /**
   * How many cases a check runs: its usual number, or the share of it, 0 to 1, that the system
   * property {@code leafturn.cases.share} asks for; at least one.
   *
   * @throws IllegalArgumentException if the property holds anything else
   */
  public static int cases(int usual) {
    String asked = System.getProperty(SHARE, "1");
    if (!asked.matches("0\\.\\d{1,9}|[01]")) {
      throw new IllegalArgumentException(
          "%s is \"%s\", but must be a number from 0 to 1".formatted(SHARE, asked));
    }
    return (int) Math.max(1, Math.round(usual * Double.parseDouble(asked)));
  }

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
