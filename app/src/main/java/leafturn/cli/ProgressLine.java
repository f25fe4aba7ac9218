package leafturn.cli;

import java.io.PrintWriter;
import leafturn.advice.season.PlanProgress;
import org.jspecify.annotations.Nullable;

/** Progress as one line of a terminal that is written over; nothing where there is no terminal. */
final class ProgressLine implements PlanProgress, AutoCloseable {
  private static final int WIDTH = 40;

  private final @Nullable PrintWriter terminal;
  private final String what;
  private int shownPercent = -1;

  private ProgressLine(@Nullable PrintWriter terminal, String what) {
    this.terminal = terminal;
    this.what = what;
  }

  /**
   * Progress on a terminal, or null for none.
   *
   * @param what is being done, in the plural
   */
  static ProgressLine on(@Nullable PrintWriter terminal, String what) {
    return new ProgressLine(terminal, what);
  }

  @Override
  public synchronized void done(int number, int ofAll) {
    int percent = 100 * number / ofAll;
    if (terminal == null || percent <= shownPercent) {
      return;
    }
    shownPercent = percent;
    int full = WIDTH * number / ofAll;
    terminal.print(
        "\r[%s%s] %d of %d %s"
            .formatted("=".repeat(full), " ".repeat(WIDTH - full), number, ofAll, what));
    terminal.flush();
  }

  @Override
  public boolean stopped() {
    return Thread.currentThread().isInterrupted();
  }

  /** Leaves the line empty. */
  @Override
  public void close() {
    if (terminal != null) {
      terminal.print("\r" + " ".repeat(WIDTH + 32) + "\r");
      terminal.flush();
    }
  }
}
