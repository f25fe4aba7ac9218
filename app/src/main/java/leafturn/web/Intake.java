package leafturn.web;

/** What a route takes with a request, and how much of it at most. */
public enum Intake {
  /** Fields of a form, or a JSON document. */
  FORM(1_000_000),

  /** A form with one photograph. */
  PHOTOGRAPH(10_000_000),

  /** A form with a table, shape or archive to import. */
  IMPORT(50_000_000);

  private final long mostBytes;

  Intake(long mostBytes) {
    this.mostBytes = mostBytes;
  }

  /** The largest body, bytes. */
  long mostBytes() {
    return mostBytes;
  }
}
