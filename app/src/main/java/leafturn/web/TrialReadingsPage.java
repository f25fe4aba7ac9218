package leafturn.web;

import java.util.List;
import leafturn.trials.observation.Remark;

/**
 * The readings of a trial: what was read when, what is to be said of it, and where more is entered.
 *
 * @param id of the trial
 * @param name of the trial
 * @param closed why it takes no readings; empty where it takes them
 * @param fault why there is no layout to read on; empty as a rule
 * @param progress a line for each planned day and outcome
 * @param remarks what is wrong or risky; empty for raters who must not know the arms
 * @param entries what was entered, the latest first
 * @param mayLog whether the reader may enter readings
 * @param mayChange whether the reader may withdraw them and import files
 */
public record TrialReadingsPage(
    String id,
    String name,
    String closed,
    String fault,
    List<Progress> progress,
    List<Remark> remarks,
    List<Entry> entries,
    boolean mayLog,
    boolean mayChange) {
  public TrialReadingsPage {
    progress = List.copyOf(progress);
    remarks = List.copyOf(remarks);
    entries = List.copyOf(entries);
  }

  /**
   * How far a day and outcome have come.
   *
   * @param day in words
   * @param date as the address has it
   * @param outcome its name
   * @param read plots that were read
   * @param plots of the layout
   */
  public record Progress(String day, String date, String outcome, int read, int plots) {
    /** Where it is entered, after the address of the readings. */
    public String query() {
      return "?date=%s&outcome=%s"
          .formatted(
              date, java.net.URLEncoder.encode(outcome, java.nio.charset.StandardCharsets.UTF_8));
    }
  }

  /**
   * Readings that were entered together.
   *
   * @param id of their sheet
   * @param version of their sheet
   * @param words what they are, by whom and when
   */
  public record Entry(String id, int version, String words) {}

  /** Whether readings can be entered now. */
  public boolean open() {
    return closed.isEmpty() && fault.isEmpty();
  }

  /** What a remark means, for people. */
  public static String weight(Remark remark) {
    return switch (remark.weight()) {
      case REFUSED -> "No such analysis";
      case WARNING -> "Take care";
      case NOTE -> "To know";
    };
  }
}
