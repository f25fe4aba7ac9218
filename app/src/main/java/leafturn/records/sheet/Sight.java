package leafturn.records.sheet;

/** What can be looked for on a lawn, to be seen there or not. */
public enum Sight {
  SEED_HEADS("annual bluegrass in seed"),
  OWN_STALKS("own grass in stalk"),
  CLUMPS("clumps"),
  CLIPPINGS_STILL_SEEN("clippings still seen"),
  WET("wet leaves"),
  DRY_LEAVES("dry leaves"),
  RAIN("rain, now over"),
  GROUND_FROST("ground frost"),
  DROUGHT("wilting"),
  DORMANT("dormant"),
  GREENING_UP("greening up"),
  BROWN_PATCH("brown patch"),
  DOLLAR_SPOT("dollar spot"),
  DISEASE("other disease"),
  LEAF_FALL("fallen tree leaves"),
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
