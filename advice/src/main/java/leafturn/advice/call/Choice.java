package leafturn.advice.call;

/** The choices compared for a mowing. */
public enum Choice {
  MOW_AND_RETURN,
  MOW_AND_COLLECT,
  /** Later on the same day, when leaves are dry and frost has gone. */
  WAIT_FOR_DRY_HOURS,
  WAIT_AND_RETURN,
  RAISE_AND_CUT_TWICE,
  /** The deck is raised and the first cut collected; the height is stepped down days later. */
  RAISE_AND_COLLECT,
  /** Two passes on the same day; the second chops and spreads what the first left. */
  DOUBLE_PASS,
  /** Fallen leaves are chopped and returned with the clippings. */
  CHOP_LEAVES_AND_RETURN,
  /** Granular feed is washed in before the lawn is mown. */
  WATER_IN_FIRST,
  /** Straw of a warm-season grass is lowered once at green-up and collected. */
  LOWER_ONCE_AND_COLLECT,
  /** Nothing to cut, or a day on which the lawn should not be mown. */
  LEAVE_ALONE
}
