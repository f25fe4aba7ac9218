package leafturn.advice.call;

/** The choices compared for a mowing. */
public enum Choice {
  MOW_AND_RETURN,
  MOW_AND_COLLECT,
  WAIT_AND_RETURN,
  RAISE_AND_CUT_TWICE,
  /** Nothing to cut, or a day on which the lawn should not be mown. */
  LEAVE_ALONE
}
