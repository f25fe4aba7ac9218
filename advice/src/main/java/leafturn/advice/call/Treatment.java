package leafturn.advice.call;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A product applied to a lawn.
 *
 * @param on the day it was applied
 * @param product its name or its active ingredient
 * @param kind what it is for
 * @param group group of its active ingredient
 * @param label what its label says
 */
public record Treatment(LocalDate on, String product, Kind kind, Group group, Label label) {

  /** What a product is applied for. */
  public enum Kind {
    HERBICIDE,
    INSECTICIDE,
    FUNGICIDE,
    GROWTH_REGULATOR,
    OTHER
  }

  /** Groups of active ingredients that matter to what becomes of clippings. */
  public enum Group {
    /** Clopyralid, aminopyralid, picloram, aminocyclopyrachlor and their like: last in compost. */
    PYRIDINE_ACID,
    OTHER,
    NOT_KNOWN
  }

  /**
   * What the label says; null where it says nothing or nobody has read it.
   *
   * @param mowingsBeforeUse mowings to be returned before clippings may be used elsewhere, 0 to 20
   * @param daysBeforeUse days before clippings may be used elsewhere, 0 to 1100
   * @param neverUse true when clippings may never be used as mulch or compost
   * @param daysBeforeMowing days to wait before the treated lawn is mown, 0 to 60
   * @param read true when somebody has read the label for these
   */
  public record Label(
      @Nullable Integer mowingsBeforeUse,
      @Nullable Integer daysBeforeUse,
      boolean neverUse,
      @Nullable Integer daysBeforeMowing,
      boolean read) {
    /** A label that nobody has read for what it says on mowing and clippings. */
    public static final Label UNREAD = new Label(null, null, false, null, false);

    /** A label that was read and says nothing of mowing and clippings. */
    public static final Label SILENT = new Label(null, null, false, null, true);

    public Label {
      check("mowings before clippings may be used", mowingsBeforeUse, 20);
      check("days before clippings may be used", daysBeforeUse, 1100);
      check("days before the lawn may be mown", daysBeforeMowing, 60);
    }

    private static void check(String what, @Nullable Integer value, int most) {
      if (value != null && (value < 0 || value > most)) {
        throw new IllegalArgumentException(
            "the %s must lie from 0 to %d, but are %d".formatted(what, most, value));
      }
    }
  }

  public Treatment {
    if (product.isBlank()) {
      throw new IllegalArgumentException("a treatment needs the name of its product");
    }
  }
}
