package leafturn.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import leafturn.trials.observation.Remark;

/**
 * The readings of a trial: what was read when, what is to be said of it, and where more is entered.
 *
 * @param id of the trial
 * @param name of the trial
 * @param closed why it takes no readings; empty where it takes them
 * @param fault why there is no layout to read on; empty as a rule
 * @param outcomes their names, as people read them
 * @param days the planned days, each with how far every outcome has come
 * @param remarks what is wrong or risky; empty for raters who must not know the arms
 * @param entries what was entered, the latest first
 * @param withdrawn what was taken back, by whom, when and why, in sentences
 * @param mayLog whether the reader may enter readings
 * @param mayChange whether the reader may withdraw them and import files
 */
public record TrialReadingsPage(
    String id,
    String name,
    String closed,
    String fault,
    List<String> outcomes,
    List<Day> days,
    List<Remark> remarks,
    List<Entry> entries,
    List<String> withdrawn,
    boolean mayLog,
    boolean mayChange) {
  public TrialReadingsPage {
    outcomes = List.copyOf(outcomes);
    days = List.copyOf(days);
    remarks = List.copyOf(remarks);
    entries = List.copyOf(entries);
    withdrawn = List.copyOf(withdrawn);
  }

  /**
   * A planned day.
   *
   * @param words the day in words
   * @param from the day from which readings of it are taken, in words; empty once it has come
   * @param outcomes how far each has come, in the order of the page's outcomes
   */
  public record Day(String words, String from, List<Progress> outcomes) {
    public Day {
      outcomes = List.copyOf(outcomes);
    }
  }

  /**
   * How far an outcome has come on a day.
   *
   * @param date as the address has it
   * @param key the outcome's name as the plan has it
   * @param outcome its name as people read it
   * @param asked whether it is read on that day
   * @param read plots that were read
   * @param plots of the layout
   */
  public record Progress(
      String date, String key, String outcome, boolean asked, int read, int plots) {
    /** Where it is entered, after the address of the readings. */
    public String query() {
      return "?date=%s&outcome=%s".formatted(date, URLEncoder.encode(key, StandardCharsets.UTF_8));
    }
  }

  /**
   * Readings that were entered together.
   *
   * @param id of their sheet
   * @param version of their sheet
   * @param day they are of, in words
   * @param what they are
   * @param by whom they were entered, and when
   */
  public record Entry(String id, int version, String day, String what, String by) {}

  /** Whether readings can be entered now. */
  public boolean open() {
    return closed.isEmpty() && fault.isEmpty();
  }

  /** What a remark means, for people. */
  public static String weight(Remark remark) {
    return remark.weight().words();
  }
}
