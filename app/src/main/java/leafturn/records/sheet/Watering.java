package leafturn.records.sheet;

/** How a property's lawns are watered. */
public enum Watering {
  NONE,
  BY_HAND,
  MOVED_SPRINKLER,
  FIXED_SYSTEM
}
