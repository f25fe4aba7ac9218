package leafturn.records.book;

/** Somebody else changed a sheet first; nothing was written. */
public final class StaleSheetException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Sheet<?> current;

  StaleSheetException(Sheet<?> current) {
    super(
        "%s changed this at %s while you were working on it; nothing of yours was saved yet."
            .formatted(current.writtenBy(), current.writtenAt()));
    this.current = current;
  }

  /** The sheet as it now stands. */
  public Sheet<?> current() {
    return current;
  }
}
