package leafturn.records.sheet;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an entry of the log tells beside lawn and day; its fields stand in the entry itself. */
public sealed interface Done {
  /** What was done. */
  What what();

  /**
   * A mowing.
   *
   * @param heightBeforeMm measured grass height before the cut, mm, 3 to 1000, or null
   * @param heightAfterMm height it was cut to, mm, 3 to 500 and not above the height before, or
   *     null for the programme's cut height
   * @param returnedShare share of the clippings returned, 0 (collected) to 1
   * @param bags bags filled, 0 to 10,000, or null
   * @param weightKg fresh weight of what was collected, kg, 0 to 100,000, or null
   * @param wentTo where that went, in words or as the id of a heap or bed, or null
   * @param minutes time it took, minutes, 0 to 1440, or null
   * @param twoPasses true when the lawn was gone over twice
   */
  record Mown(
      @Nullable Double heightBeforeMm,
      @Nullable Double heightAfterMm,
      double returnedShare,
      @Nullable Double bags,
      @Nullable Double weightKg,
      @Nullable String wentTo,
      @Nullable Double minutes,
      boolean twoPasses)
      implements Done {
    @Override
    public What what() {
      return What.MOWN;
    }
  }

  /**
   * Fertiliser, elements in g/m2, 0 to 100 each; at least one is given.
   *
   * @param fastNGPerM2 N that dissolves within days, or null for none
   * @param slowNGPerM2 N released over months, or null for none
   * @param pGPerM2 phosphorus, or null for none
   * @param kGPerM2 potassium, or null for none
   * @param product its name, or null
   * @param wateredIn true when it was watered in, or null when nobody told
   * @param feedForm granular or liquid, or null when nobody told
   * @param waterInMm water with which its label asks for it to be washed in, mm, 0 to 50, or null
   */
  record Fed(
      @Nullable Double fastNGPerM2,
      @Nullable Double slowNGPerM2,
      @Nullable Double pGPerM2,
      @Nullable Double kGPerM2,
      @Nullable String product,
      @Nullable Boolean wateredIn,
      @Nullable FeedForm feedForm,
      @Nullable Double waterInMm)
      implements Done {
    @Override
    public What what() {
      return What.FED;
    }
  }

  /**
   * Watering by hand or sprinkler.
   *
   * @param waterMm mm, 0 to 200
   */
  record Watered(double waterMm) implements Done {
    @Override
    public What what() {
      return What.WATERED;
    }
  }

  /**
   * A product against weeds, diseases or pests, or one that slows growth. What its label says about
   * clippings must be told: days, mowings, both, never, or nothing.
   *
   * @param product its name on the label
   * @param productKind what it is for
   * @param ingredientGroup group of its active ingredient, or null when nobody looked
   * @param clippingsIntervalDays days for which the label forbids using the clippings as mulch or
   *     compost, 0 to 1100, or null when it gives none
   * @param mowingsBeforeUse mowings to be returned before clippings may be used elsewhere, 0 to 20,
   *     or null when it gives none
   * @param neverUse true when the label forbids using the clippings as mulch or compost for good
   * @param labelSaysNone true when the label says nothing of clippings
   * @param waitBeforeMowingDays days the label asks to wait before mowing, 0 to 60, or null
   */
  record Treated(
      String product,
      ProductKind productKind,
      @Nullable IngredientGroup ingredientGroup,
      @Nullable Integer clippingsIntervalDays,
      @Nullable Integer mowingsBeforeUse,
      boolean neverUse,
      boolean labelSaysNone,
      @Nullable Integer waitBeforeMowingDays)
      implements Done {
    @Override
    public What what() {
      return What.TREATED;
    }
  }

  /**
   * Sowing.
   *
   * @param seed the seed or mix, or null
   * @param gPerM2 seed rate, g/m2, 0.1 to 500, or null
   */
  record Seeded(@Nullable String seed, @Nullable Double gPerM2) implements Done {
    @Override
    public What what() {
      return What.SEEDED;
    }
  }

  /**
   * Aerated, scarified or topdressed.
   *
   * @param depthMm depth of holes or blades, or of the dressing, mm, 0.5 to 300, or null
   */
  record Worked(@JsonIgnore What what, @Nullable Double depthMm) implements Done {}

  /**
   * Liming.
   *
   * @param gPerM2 of the product, g/m2, 0.1 to 1000
   * @param product its name, or null
   */
  record Limed(double gPerM2, @Nullable String product) implements Done {
    @Override
    public What what() {
      return What.LIMED;
    }
  }

  /**
   * Something seen, or looked for and not there.
   *
   * @param things what was seen
   * @param notThere what was looked for and not there; nothing stands in both lists
   * @param leafCoverFraction share of the turf that leaves of trees hide, 0 to 1, or null
   * @param heightMm measured grass height, mm, 3 to 1000, or null
   */
  record Observed(
      List<Sight> things,
      List<Sight> notThere,
      @Nullable Double leafCoverFraction,
      @Nullable Double heightMm)
      implements Done {
    public Observed {
      things = List.copyOf(things);
      notThere = List.copyOf(notThere);
    }

    @Override
    public What what() {
      return What.OBSERVED;
    }
  }
}
