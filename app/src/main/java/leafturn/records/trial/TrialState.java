package leafturn.records.trial;

/** How far a trial has come. */
public enum TrialState {
  PLANNED("being planned"),
  /** Came in with readings, and its plan was not frozen before them. */
  NEVER_FROZEN("never frozen"),
  FROZEN("frozen, nothing read yet"),
  UNDER_WAY("under way"),
  ENDED("ended");

  private final String words;

  TrialState(String words) {
    this.words = words;
  }

  /** Whether readings are taken. */
  public boolean takesReadings() {
    return this == FROZEN || this == UNDER_WAY;
  }

  /** For people. */
  public String words() {
    return words;
  }
}
