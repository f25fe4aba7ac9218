package leafturn.records.exchange;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.exchange.Column.Type;

/** The columns of a table of log entries. */
public final class LogColumns {
  static final String LOG = "log";
  static final String LAWN = "lawn";
  static final String PROPERTY = "property";
  static final String ID = "id";

  /** Those that tell which lawn a row belongs to, and which entry it is. */
  static final List<Column> PLACES =
      List.of(
          Column.place(PROPERTY, "property"),
          Column.place(LAWN, "lawn, by its name or address"),
          Column.place(ID, "id of the entry"));

  /** Those that a LOG.csv for the command line has as well. */
  static final List<Column> OF_THE_MODEL =
      List.of(
          of("date", "day", Type.DATE, "date").orCalled("day"),
          of("what", "what", Type.TEXT, "what was done"),
          height("height_before_mm", "heightBeforeMm", "height before the cut", "height_before_in"),
          height("height_after_mm", "heightAfterMm", "height after the cut", "height_after_in"),
          of("clippings", "returnedShare", Type.CLIPPINGS, "clippings returned or collected"),
          onArea("fast_n", "fastNGPerM2", "nitrogen that dissolves within days"),
          onArea("slow_n", "slowNGPerM2", "nitrogen released over months"),
          onArea("p", "pGPerM2", "phosphorus"),
          onArea("k", "kGPerM2", "potassium"),
          of("water_mm", "waterMm", Type.NUMBER, "water given")
              .measuring(Measure.WATER, "water_in"),
          of("note", "note", Type.TEXT, "note"));

  /** Those that only the book keeps. */
  static final List<Column> OF_THE_BOOK =
      List.of(
          of("time", "time", Type.TIME, "time of day"),
          of("bags", "bags", Type.NUMBER, "bags filled"),
          of("weight_kg", "weightKg", Type.NUMBER, "fresh weight collected")
              .measuring(Measure.WEIGHT, "weight_lb"),
          of("went_to", "wentTo", Type.TEXT, "where the clippings went"),
          of("minutes", "minutes", Type.NUMBER, "minutes it took"),
          of("two_passes", "twoPasses", Type.YES, "mown in two passes"),
          of("product", "product", Type.TEXT, "product"),
          of("watered_in", "wateredIn", Type.YES_NO, "watered in"),
          of("feed_form", "feedForm", Type.TEXT, "granular or liquid feed"),
          of("water_in_mm", "waterInMm", Type.NUMBER, "water to wash the feed in, by its label")
              .measuring(Measure.WATER, "water_in_in"),
          of("product_kind", "productKind", Type.TEXT, "what the product is for"),
          of("ingredient_group", "ingredientGroup", Type.TEXT, "group of the active ingredient"),
          of(
              "clippings_interval_days",
              "clippingsIntervalDays",
              Type.NUMBER,
              "days the label keeps clippings from use"),
          of(
              "mowings_before_use",
              "mowingsBeforeUse",
              Type.NUMBER,
              "mowings the label keeps clippings from use"),
          of("never_use", "neverUse", Type.YES, "label forbids using clippings for good"),
          of("label_says_none", "labelSaysNone", Type.YES, "label says nothing of clippings"),
          of(
              "wait_before_mowing_days",
              "waitBeforeMowingDays",
              Type.NUMBER,
              "days the label asks to wait before mowing"),
          of("seed", "seed", Type.TEXT, "seed"),
          onArea("amount", "gPerM2", "seed or lime on the area"),
          height("depth_mm", "depthMm", "depth of holes, blades or dressing", "depth_in"),
          of("seen", "things", Type.WORDS, "what was seen"),
          of("not_there", "notThere", Type.WORDS, "what was looked for and not there"),
          of(
              "leaf_cover_fraction",
              "leafCoverFraction",
              Type.FRACTION,
              "turf hidden by leaves of trees"),
          height("height_mm", "heightMm", "height of the grass that was seen", "height_in"));

  /** All of them. */
  public static final List<Column> ALL =
      List.of(PLACES, OF_THE_MODEL, OF_THE_BOOK).stream().flatMap(List::stream).toList();

  private LogColumns() {}

  private static Column of(String name, String path, Type type, String meaning) {
    return Column.of(LOG, name, path, type, meaning);
  }

  private static Column height(String name, String path, String meaning, String inInches) {
    return of(name, path, Type.NUMBER, meaning).measuring(Measure.HEIGHT, inInches);
  }

  private static Column onArea(String stem, String path, String meaning) {
    return of(stem + "_g_m2", path, Type.NUMBER, meaning)
        .measuring(Measure.MASS_PER_AREA, stem + "_lb_1000_ft2", stem + "_lb_1000ft2");
  }
}
