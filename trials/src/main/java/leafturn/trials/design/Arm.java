package leafturn.trials.design;

import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * A treatment that is compared with others.
 *
 * @param name 1 to 60 characters, as it stands in data and results
 * @param clippings what is done with them, or null where the treatment is about something else
 * @param feedShare feed as a share of the usual, 0 to 2
 * @param note anything to know; may be null
 */
public record Arm(
    String name, @Nullable Clippings clippings, double feedShare, @Nullable String note) {
  /** Longest name, characters. */
  public static final int LONGEST_NAME = 60;

  /** Feed as a share of the usual. */
  public static final Range FEED_SHARE = new Range("feedShare", 0, 2, "");

  /** What becomes of the clippings. */
  public enum Clippings {
    COLLECTED("collected"),
    RETURNED("returned"),
    BY_RULE("by rule");

    private final String word;

    Clippings(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException when the name is blank or too long, or the share out of range
   */
  public Arm {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "the name of a treatment has 1 to %d characters, not \"%s\""
              .formatted(LONGEST_NAME, name));
    }
    FEED_SHARE.checked(feedShare);
  }
}
