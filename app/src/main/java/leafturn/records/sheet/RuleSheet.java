package leafturn.records.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.NearestName;

/**
 * A threshold of the call's rules that a person has set for the whole book.
 *
 * @param rule name of the rule, as {@link CallRules} lists them
 * @param threshold its number, in the rule's unit and within the limits it allows
 * @param reason why, in a sentence
 */
public record RuleSheet(String rule, double threshold, String reason) implements Content {

  static RuleSheet read(JsonObject json) {
    String rule = json.requiredText("rule", Limits.NAME, "the name of a rule");
    Optional<RuleEntry> entry =
        CallRules.standard().entries().stream()
            .filter(each -> each.editable() && each.rule().id().equals(rule))
            .findFirst();
    if (entry.isEmpty() && !rule.isEmpty()) {
      json.fault(
          "rule",
          "%s is no rule whose threshold can be set; %s"
              .formatted(Faults.quoted(rule), NearestName.advice(rule, names())));
    }
    double threshold = entry.isEmpty() ? unknown(json) : threshold(json, entry.get());
    String reason = json.requiredText("reason", Limits.SENTENCE, "why it was set");
    json.end();
    return new RuleSheet(rule, threshold, reason);
  }

  private static double threshold(JsonObject json, RuleEntry rule) {
    String unit = rule.unit().equals("-") ? "" : rule.unit().replace("m2", "m²");
    return json.requiredNumber("threshold", rule.low(), rule.high(), unit);
  }

  /** What a threshold of no rule may be, nobody can say. */
  private static double unknown(JsonObject json) {
    json.has("threshold");
    return Double.NaN;
  }

  /** Names of the rules whose threshold can be set. */
  public static List<String> names() {
    return CallRules.standard().entries().stream()
        .filter(RuleEntry::editable)
        .map(entry -> entry.rule().id())
        .toList();
  }

  /** The threshold by rule name, as {@link CallRules#with} takes it. */
  public Map<String, Double> thresholds() {
    return Map.of(rule, threshold);
  }
}
