package leafturn.cli;

/** What a command's exit code says to the script that ran it. */
final class ExitCode {
  static final int DONE = 0;

  /** The answer is "no": a check that failed. */
  static final int NO = 1;

  /** The input was wrong; nothing was written. */
  static final int WRONG_INPUT = 2;

  /** Leafturn itself failed, whatever the input. */
  static final int PROGRAM_FAILED = 3;

  private ExitCode() {}
}
