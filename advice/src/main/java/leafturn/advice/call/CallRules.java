package leafturn.advice.call;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leafturn.quantity.DataTable;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.ShareWords;

/** The rules a call is made by. Immutable; every threshold is data with its source. */
public final class CallRules {
  /** Pairs of thresholds of which the first must not be above the second. */
  private static final List<List<CallRule>> RISING =
      List.of(
          List.of(CallRule.DUE, CallRule.ONE_THIRD),
          List.of(CallRule.ONE_THIRD, CallRule.HALF),
          List.of(CallRule.CLUMPS, CallRule.CLUMPS_HEAVY),
          List.of(CallRule.CLUMP_LIMIT_WET, CallRule.CLUMP_LIMIT_DRY),
          List.of(CallRule.DECK_FACTOR, CallRule.DECK_FACTOR_SIDE),
          List.of(CallRule.SHORT_PIECES, CallRule.LENGTH));

  private static final CallRules STANDARD = new CallRules(read(), Map.of());

  private final Map<CallRule, RuleEntry> entries;
  private final Map<CallRule, Double> changed;

  private CallRules(Map<CallRule, RuleEntry> entries, Map<CallRule, Double> changed) {
    this.entries = entries;
    this.changed = changed;
  }

  /** The rules as {@code rules.tsv} has them. */
  public static CallRules standard() {
    return STANDARD;
  }

  /** The rule or figure of a name such as {@code one-third}, if there is one. */
  public static Optional<CallRule> named(String id) {
    return Arrays.stream(CallRule.values()).filter(rule -> rule.id().equals(id)).findFirst();
  }

  /**
   * These rules with some thresholds set by a person.
   *
   * @param thresholds new thresholds by rule name
   * @throws IllegalArgumentException with one sentence a line for each name that does not exist,
   *     each threshold that is out of its range and each two that are out of order
   */
  public CallRules with(Map<String, Double> thresholds) {
    CallRules rules = unordered(thresholds);
    List<String> faults = rules.outOfOrder();
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    return rules;
  }

  /**
   * These rules with some thresholds set by a person, to be shown and not to call by: two of them
   * may be out of order.
   *
   * @throws IllegalArgumentException with one sentence a line for each name that does not exist and
   *     each threshold that is out of its range
   */
  public CallRules unordered(Map<String, Double> thresholds) {
    Map<CallRule, RuleEntry> others = new EnumMap<>(entries);
    Map<CallRule, Double> all = new EnumMap<>(CallRule.class);
    all.putAll(changed);
    List<String> faults = new ArrayList<>();
    thresholds.forEach(
        (id, threshold) -> {
          Optional<CallRule> rule = named(id);
          Optional<String> fault = fault(id, rule, threshold);
          fault.ifPresent(faults::add);
          if (fault.isEmpty() && rule.isPresent()) {
            all.put(rule.get(), threshold);
            others.put(rule.get(), entry(rule.get()).with(threshold, set(rule.get())));
          }
        });
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    return new CallRules(others, all);
  }

  /** Thresholds that must rise and do not, one sentence each. */
  private List<String> outOfOrder() {
    List<String> faults = new ArrayList<>();
    for (List<CallRule> pair : RISING) {
      RuleEntry low = entry(pair.get(0));
      RuleEntry high = entry(pair.get(1));
      if (low.threshold() > high.threshold()) {
        faults.add(
            "the thresholds of %s (%s) and %s (%s) are out of order; %s must not be above the other"
                .formatted(
                    low.rule().id(),
                    DisplayNumber.plain(low.threshold()),
                    high.rule().id(),
                    DisplayNumber.plain(high.threshold()),
                    low.rule().id()));
      }
    }
    return faults;
  }

  private static String set(CallRule rule) {
    return "set by hand" + usual(rule);
  }

  private static String usual(CallRule rule) {
    RuleEntry usual = STANDARD.entry(rule);
    return "; usual %s (%s)".formatted(shown(usual), usual.source());
  }

  /** A threshold as people read it: a share in words or per cent. */
  private static String shown(RuleEntry entry) {
    return entry.unit().equals("fraction")
        ? ShareWords.of(entry.threshold())
        : DisplayNumber.plain(entry.threshold());
  }

  /**
   * These rules, with what people typed about the thresholds they set.
   *
   * @param reasons why each was set, by rule name; those of rules that nobody has set say nothing
   */
  public CallRules saying(Map<String, String> reasons) {
    Map<CallRule, RuleEntry> others = new EnumMap<>(entries);
    changed.forEach(
        (rule, threshold) -> {
          String reason = reasons.get(rule.id());
          if (reason != null) {
            others.put(rule, entry(rule).with(threshold, saying(rule, reason)));
          }
        });
    return new CallRules(others, changed);
  }

  private static String saying(CallRule rule, String reason) {
    return "set by hand: " + reason.strip().replaceFirst("[.;]+$", "") + usual(rule);
  }

  private Optional<String> fault(String id, Optional<CallRule> rule, double threshold) {
    if (rule.isEmpty() || !entry(rule.get()).editable()) {
      return Optional.of(
          "there is no rule named %s whose threshold can be set; there are %s"
              .formatted(
                  id,
                  entries.values().stream()
                      .filter(RuleEntry::editable)
                      .map(entry -> entry.rule().id())
                      .collect(Collectors.joining(", "))));
    }
    RuleEntry entry = entry(rule.get());
    if (threshold >= entry.low() && threshold <= entry.high()) {
      return Optional.empty();
    }
    return Optional.of(
        "the threshold of %s is %s, but must lie from %s to %s %s"
            .formatted(
                id,
                DisplayNumber.plain(threshold),
                DisplayNumber.plain(entry.low()),
                DisplayNumber.plain(entry.high()),
                entry.unit().equals("-") ? "" : entry.unit().replace("m2", "m²"))
            .strip());
  }

  /** These rules with a threshold of the lawn's own, unless a person has set one. */
  CallRules unlessSet(CallRule rule, double threshold, String source) {
    if (changed.containsKey(rule) || threshold == threshold(rule)) {
      return this;
    }
    Map<CallRule, RuleEntry> others = new EnumMap<>(entries);
    others.put(rule, entry(rule).with(threshold, source));
    return new CallRules(others, changed);
  }

  /** A rule's or figure's entry. */
  public RuleEntry entry(CallRule rule) {
    RuleEntry entry = entries.get(rule);
    if (entry == null) {
      throw new IllegalStateException("rules.tsv has no row " + rule.id());
    }
    return entry;
  }

  /** A rule's threshold or a figure's value. */
  public double threshold(CallRule rule) {
    return entry(rule).threshold();
  }

  /** The limit of a cut's share of the height in words: "a third", or as it was set. */
  public String third() {
    return ShareWords.of(threshold(CallRule.ONE_THIRD));
  }

  /** The share of the height from which clippings are taken away, in words: "half". */
  String half() {
    return ShareWords.of(threshold(CallRule.HALF));
  }

  /** In how many cuts long grass is stepped down at most. */
  int mostCuts() {
    return (int) Math.round(threshold(CallRule.MOST_CUTS));
  }

  /** All rules and figures in the order of the file. */
  public List<RuleEntry> entries() {
    return List.copyOf(entries.values());
  }

  private static Map<CallRule, RuleEntry> read() {
    Map<CallRule, RuleEntry> entries = new EnumMap<>(CallRule.class);
    for (DataTable.Row row : DataTable.ofResource(CallRules.class, "rules.tsv").rows()) {
      CallRule rule = row.constant("id", CallRule.class);
      boolean editable = row.requiredText("editable").equals("yes");
      entries.put(
          rule,
          new RuleEntry(
              rule,
              row.text("rank").isEmpty() ? 0 : row.wholeNumber("rank"),
              row.requiredText("meaning"),
              editable ? row.requiredNumber("threshold") : row.number("threshold"),
              row.text("unit"),
              editable ? row.requiredNumber("low") : Double.NaN,
              editable ? row.requiredNumber("high") : Double.NaN,
              row.requiredText("source"),
              row.text("reference"),
              row.requiredText("status")));
    }
    return entries;
  }
}
