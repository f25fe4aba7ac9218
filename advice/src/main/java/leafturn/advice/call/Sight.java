package leafturn.advice.call;

/** What can be looked for on a lawn, to be seen or not. */
public enum Sight {
  /** White seed heads of annual bluegrass. */
  ANNUAL_BLUEGRASS_SEED_HEADS,
  /** Stalks and seed heads of the lawn's own grass. */
  OWN_STALKS,
  /** Grass at rest in drought: straw-coloured, its crowns alive. */
  DORMANT,
  /** Leaves that fold, turn blue-grey and keep footprints. */
  WILTING,
  /** Warm-season straw that turns green in spring. */
  GREENING_UP,
  /** Frost on the ground. */
  GROUND_FROST,
  /** Rain; its time is that of its end. */
  RAIN,
  WET_LEAVES,
  /** Leaves dry to the hand; its time is that from which they were. */
  DRY_LEAVES,
  CLUMPS,
  CLIPPINGS_STILL_SEEN,
  BROWN_PATCH,
  DOLLAR_SPOT,
  OTHER_DISEASE
}
