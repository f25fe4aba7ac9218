package leafturn.advice.evidence;

import java.util.List;
import leafturn.quantity.DataTable;

/**
 * A published result the model is held against.
 *
 * @param id short name
 * @param topic heading it stands under
 * @param quantity what is measured, with its unit
 * @param protocol how the model was run
 * @param band what was published
 * @param decimals digits shown after the point; the verdict is given on the shown number
 * @param added true for a condition that the published trial did not have
 * @param miss name of the paragraph that explains a failure, empty where none is foreseen
 */
public record Target(
    String id,
    String topic,
    String quantity,
    String protocol,
    Band band,
    int decimals,
    boolean added,
    String miss) {

  /**
   * A published range.
   *
   * @param low lowest value that agrees, NaN when open
   * @param high highest value that agrees, NaN when open
   * @param text the range in words
   * @param source where it comes from
   * @param status published, derived or chosen; none for information without a band
   */
  public record Band(double low, double high, String text, String source, String status) {
    /** True when there is something to agree with. */
    public boolean given() {
      return !Double.isNaN(low) || !Double.isNaN(high);
    }

    /** True when a value agrees. */
    public boolean holds(double value) {
      return !(value < low) && !(value > high);
    }
  }

  /** All targets in order. */
  static List<Target> all() {
    return DataTable.ofResource(Target.class, "targets.tsv").rows().stream()
        .map(Target::of)
        .toList();
  }

  private static Target of(DataTable.Row row) {
    return new Target(
        row.requiredText("id"),
        row.requiredText("topic"),
        row.requiredText("quantity"),
        row.requiredText("protocol"),
        new Band(
            row.number("low"),
            row.number("high"),
            row.text("published"),
            row.text("source"),
            row.requiredText("status")),
        row.wholeNumber("decimals"),
        row.text("added").equals("added"),
        row.text("miss"));
  }
}
