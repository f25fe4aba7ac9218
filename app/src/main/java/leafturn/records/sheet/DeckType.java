package leafturn.records.sheet;

/** What a mower's deck does with the clippings. */
public enum DeckType {
  MULCHING,
  SIDE_DISCHARGE,
  REAR_DISCHARGE,
  REAR_BAG,
  REEL,
  ROBOT
}
