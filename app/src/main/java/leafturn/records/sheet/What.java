package leafturn.records.sheet;

/** What can be done to a lawn, or seen there. */
public enum What {
  MOWN,
  FED,
  WATERED,
  TREATED,
  SEEDED,
  AERATED,
  SCARIFIED,
  TOPDRESSED,
  LIMED,
  OBSERVED
}
