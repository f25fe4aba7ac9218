package leafturn.advice.call;

/**
 * How many possible seasons advice is reckoned over, and which.
 *
 * @param count number of seasons, 1 to 2000
 * @param seed the seasons of a seed are always the same
 */
public record SeasonsAsked(int count, long seed) {
  /** Fewest seasons that advice is to rest on. */
  public static final int USUAL_COUNT = 200;

  /** The seasons that every call takes unless another seed is asked for. */
  public static final SeasonsAsked USUAL = new SeasonsAsked(USUAL_COUNT, 1);

  private static final int MOST = 2000;

  public SeasonsAsked {
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException(
          "the number of possible seasons must lie from 1 to " + MOST + ", but is " + count);
    }
  }
}
