package leafturn.records.sheet;

/** What can be seen on a lawn. */
public enum Sight {
  SEED_HEADS,
  CLUMPS,
  CLIPPINGS_STILL_SEEN,
  DISEASE,
  WET,
  DROUGHT,
  DORMANT,
  LEAF_FALL,
  MOSS,
  WEEDS
}
