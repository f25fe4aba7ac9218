package leafturn.reports;

import leafturn.model.lawn.DailyRow;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;

/** The table of days of a run as CSV: the date, then every state and flow in full precision. */
public final class DailyCsv implements DayListener {
  private final StringBuilder text = new StringBuilder();

  public DailyCsv() {
    text.append("date,").append(String.join(",", DailyRow.names())).append('\n');
  }

  @Override
  public void dayDone(LawnRun run) {
    text.append(run.terms().date(run.day()));
    for (double value : DailyRow.of(run)) {
      text.append(',').append(value);
    }
    text.append('\n');
  }

  /** The table so far, its last line ended. */
  public String text() {
    return text.toString();
  }
}
