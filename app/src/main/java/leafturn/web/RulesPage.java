package leafturn.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Reason;
import leafturn.advice.call.RuleEntry;
import leafturn.quantity.ShareWords;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.RuleSheet;
import leafturn.reports.QuantityWords;
import leafturn.reports.TableUnit;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a book in words.
 *
 * @param rules the rules as they count
 * @param set the thresholds people have set, by rule name
 * @param units the reader's units
 */
public record RulesPage(CallRules rules, Map<String, Sheet<RuleSheet>> set, Units units) {
  public RulesPage {
    set = Map.copyOf(set);
  }

  /**
   * Rules or figures about one thing.
   *
   * @param heading what they are about
   * @param entries in their order
   */
  public record Group(String heading, List<RuleEntry> entries) {
    public Group {
      entries = List.copyOf(entries);
    }

    /** Its name in the page. */
    public String id() {
      return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
    }
  }

  /** The rules by what they are about, the heaviest first. */
  public List<Group> ranked() {
    return RuleGroups.of(rules.entries().stream().filter(entry -> entry.rank() > 0).toList());
  }

  /** The figures that the rules reckon with, by what they are about. */
  public List<Group> figures() {
    return RuleGroups.of(rules.entries().stream().filter(entry -> entry.rank() == 0).toList());
  }

  /** What a rule says, as a sentence begins. */
  public String meaning(RuleEntry entry) {
    String meaning = units.told(entry.meaning());
    return Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1);
  }

  /** A reason with its limit: "27 % of the height: roots keep growing (limit a third)". */
  public String told(Reason reason) {
    String words =
        reason.meaning().isEmpty()
            ? reason.headline()
            : reason.headline() + ": " + reason.meaning().replaceFirst("\\.$", "");
    return reason.threshold().isEmpty() ? words : words + " (" + reason.threshold() + ")";
  }

  /** What was saved just now; empty for a rule that cannot be set. */
  String saved(CallRule rule) {
    RuleEntry entry = rules.entry(rule);
    if (!entry.editable()) {
      return "";
    }
    Sheet<RuleSheet> setting = setting(entry);
    return setting == null || setting.withdrawn()
        ? "Set back to the usual: %s.".formatted(threshold(entry))
        : "Saved: from now on %s counts.".formatted(threshold(entry));
  }

  /** The threshold with its unit; empty where there is none. */
  public String threshold(RuleEntry entry) {
    return threshold(entry, entry.threshold(), units);
  }

  /** A threshold of a rule with its unit: a share of the height as people say it. */
  static String threshold(RuleEntry entry, double threshold, Units units) {
    return entry.rule() == CallRule.ONE_THIRD
        ? ShareWords.of(threshold)
        : unit(entry).quantity(threshold, units);
  }

  /** The range in which a threshold may be set; empty where it may not. */
  public String range(RuleEntry entry) {
    if (!entry.editable()) {
      return "";
    }
    TableUnit unit = unit(entry);
    String symbol = unit.symbol(units);
    String range = unit.range(entry.low(), entry.high(), units);
    return symbol.isEmpty() ? range : range + QuantityWords.THIN + symbol;
  }

  /** The standard threshold of a rule. */
  public String standard(RuleEntry entry) {
    return threshold(CallRules.standard().entry(entry.rule()));
  }

  /** The sheet on which a threshold is set, or null where the standard one counts. */
  public @Nullable Sheet<RuleSheet> setting(RuleEntry entry) {
    return set.get(entry.rule().id());
  }

  /** The unit of a threshold. */
  static TableUnit unit(RuleEntry entry) {
    return new TableUnit(entry.unit());
  }
}
