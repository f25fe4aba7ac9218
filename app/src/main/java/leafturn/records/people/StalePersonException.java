package leafturn.records.people;

/** Somebody else changed a person first; nothing was written. */
public final class StalePersonException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Person current;

  StalePersonException(Person current) {
    super(
        current.name()
            + " was changed by somebody else while you were working on it; nothing of yours was"
            + " saved yet.");
    this.current = current;
  }

  /** The person as they now stand. */
  public Person current() {
    return current;
  }
}
