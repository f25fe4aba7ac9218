package leafturn.model.lawn;

/** Looks at each day of a run once it is closed. */
@FunctionalInterface
public interface DayListener {
  /** Listens to nothing. */
  DayListener NONE = run -> {};

  /** The day is over; the run's stores and flows hold until the next one begins. */
  void dayDone(LawnRun run);
}
