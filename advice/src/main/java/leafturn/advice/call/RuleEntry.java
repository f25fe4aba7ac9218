package leafturn.advice.call;

/**
 * One rule or figure with its threshold and where that comes from.
 *
 * @param rule which one
 * @param rank 1 for the heaviest rule; 0 for a figure that rules reckon with
 * @param meaning what the rule forbids, or what the figure is
 * @param threshold its number, NaN when it has none
 * @param unit unit of threshold, low and high; "fraction" for a share of a whole, 0 to 1; "-" for
 *     another pure number
 * @param low lowest threshold a person may set, NaN when it may not be changed
 * @param high highest threshold a person may set, NaN when it may not be changed
 * @param source the published source, or "our judgement", or "common practice, no source"
 * @param reference keys in docs/references.md, separated by spaces; empty without a publication
 * @param status published, derived, tuned, assumed, common practice or management
 */
public record RuleEntry(
    CallRule rule,
    int rank,
    String meaning,
    double threshold,
    String unit,
    double low,
    double high,
    String source,
    String reference,
    String status) {

  /** True when a person may set another threshold. */
  public boolean editable() {
    return !Double.isNaN(low);
  }

  /** The entry with another threshold and its reason. */
  RuleEntry with(double otherThreshold, String otherSource) {
    return new RuleEntry(
        rule, rank, meaning, otherThreshold, unit, low, high, otherSource, "", "management");
  }
}
