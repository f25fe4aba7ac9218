package leafturn.advice.call;

/**
 * One reason of a call: a number against its threshold, what it means and where the rule comes
 * from.
 *
 * @param ruleId the rule in the rule file, for instance {@code one-third}
 * @param headline a few words with the number, for instance "28 % of the height"
 * @param meaning one or two sentences for a lay reader
 * @param threshold the limit in words with its unit, for instance "limit 33 %"
 * @param source the published source, or "common practice, no source", or "our judgement"
 * @param status published, derived, tuned, assumed or common practice
 * @param against true where the reason speaks against returning the clippings now
 */
public record Reason(
    String ruleId,
    String headline,
    String meaning,
    String threshold,
    String source,
    String status,
    boolean against) {

  /** A reason with the source and status of its rule. */
  static Reason of(
      RuleEntry rule, String headline, String meaning, String threshold, boolean against) {
    return new Reason(
        rule.rule().id(), headline, meaning, threshold, rule.source(), rule.status(), against);
  }
}
