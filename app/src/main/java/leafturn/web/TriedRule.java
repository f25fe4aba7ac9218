package leafturn.web;

import java.util.List;
import leafturn.records.round.ChangedCall;

/**
 * What another threshold of a rule would change.
 *
 * @param before the threshold that counts, with its unit
 * @param after the one that is tried
 * @param changes the lawns whose advice would be another one
 */
public record TriedRule(String before, String after, List<ChangedCall> changes) {
  public TriedRule {
    changes = List.copyOf(changes);
  }

  /** How many lawns it would change, as a heading. */
  public String heading() {
    return switch (changes.size()) {
      case 0 -> "No lawn’s advice would change today";
      case 1 -> "One lawn’s advice would change";
      default -> changes.size() + " lawns’ advice would change";
    };
  }
}
