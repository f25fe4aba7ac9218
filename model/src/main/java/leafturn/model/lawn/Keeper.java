package leafturn.model.lawn;

/** Whoever looks after the lawn during a run: decides what is done on a day. */
public interface Keeper {
  /** Feeds and waters before the day's step, through {@link LawnRun#feed} and the like. */
  void morning(LawnRun run);

  /** Measures and mows after the day's growth, through {@link LawnRun#cut} and the like. */
  void evening(LawnRun run);
}
