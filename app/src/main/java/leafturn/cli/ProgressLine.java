package leafturn.cli;

import java.io.PrintWriter;
import leafturn.advice.season.PlanProgress;
import org.jspecify.annotations.Nullable;

/** Progress as one line of a terminal that is written over; nothing where there is no terminal. */
final class ProgressLine implements PlanProgress, AutoCloseable {
  private static final int WIDTH = 40;

  private final @Nullable PrintWriter terminal;
  private int shownPercent = -1;

  private ProgressLine(@Nullable PrintWriter terminal) {
    this.terminal = terminal;
  }

  /** Progress on a terminal, or null for none. */
  static ProgressLine on(@Nullable PrintWriter terminal) {
    return new ProgressLine(terminal);
  }

  @Override
  public synchronized void done(int programmes, int ofProgrammes) {
    int percent = 100 * programmes / ofProgrammes;
    if (terminal == null || percent <= shownPercent) {
      return;
    }
    shownPercent = percent;
    int full = WIDTH * programmes / ofProgrammes;
    terminal.print(
        "\r[%s%s] %d of %d programmes"
            .formatted("=".repeat(full), " ".repeat(WIDTH - full), programmes, ofProgrammes));
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
