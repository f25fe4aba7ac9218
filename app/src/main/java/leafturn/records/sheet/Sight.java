package leafturn.records.sheet;

/** What can be looked for on a lawn, to be seen there or not. */
public enum Sight {
  SEED_HEADS("seed heads of annual bluegrass"),
  OWN_STALKS("stalks of the lawn’s own grass"),
  CLUMPS("clumps of clippings"),
  CLIPPINGS_STILL_SEEN("clippings still to be seen"),
  WET("wet leaves"),
  DRY_LEAVES("leaves dry to the hand"),
  RAIN("rain, by now over"),
  GROUND_FROST("frost on the ground"),
  DROUGHT("wilting, or footprints that stay"),
  DORMANT("the lawn dormant, straw-coloured"),
  GREENING_UP("straw that turns green in spring"),
  BROWN_PATCH("brown patch"),
  DOLLAR_SPOT("dollar spot"),
  DISEASE("another disease, or not known which"),
  LEAF_FALL("leaves of trees on the turf"),
  MOSS("moss"),
  WEEDS("weeds");

  private final String words;

  Sight(String words) {
    this.words = words;
  }

  /** What was seen, for people. */
  public String words() {
    return words;
  }
}
