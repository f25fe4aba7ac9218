package leafturn.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.RuleEntry;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.RuleSheet;
import leafturn.reports.QuantityWords;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a book in words.
 *
 * @param rules the rules as they count
 * @param set the thresholds people have set, by rule name
 * @param units the reader's units
 */
public record RulesPage(CallRules rules, Map<String, Sheet<RuleSheet>> set, Units units) {
  private static final Map<String, Measure> MEASURES =
      Map.of(
          "mm", Measure.HEIGHT,
          "°C", Measure.TEMPERATURE,
          "g/m2", Measure.MASS_PER_AREA);

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
    String meaning = entry.meaning();
    return Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1);
  }

  /** The threshold with its unit; empty where there is none. */
  public String threshold(RuleEntry entry) {
    return number(entry, entry.threshold());
  }

  /** The range in which a threshold may be set; empty where it may not. */
  public String range(RuleEntry entry) {
    if (!entry.editable()) {
      return "";
    }
    String high = number(entry, entry.high());
    String low = number(entry, entry.low()).replaceAll(QuantityWords.THIN + ".*", "");
    return low + " to " + high;
  }

  /** The standard threshold of a rule. */
  public String standard(RuleEntry entry) {
    return threshold(CallRules.standard().entry(entry.rule()));
  }

  /** The sheet on which a threshold is set, or null where the standard one counts. */
  public @Nullable Sheet<RuleSheet> setting(RuleEntry entry) {
    return set.get(entry.rule().id());
  }

  /** What a threshold measures, or null for a pure number or a unit that is everyone's. */
  static @Nullable Measure measure(RuleEntry entry) {
    return MEASURES.get(entry.unit());
  }

  /** The unit of a threshold that is everyone's; empty for a pure number. */
  static String unit(RuleEntry entry) {
    return entry.unit().equals("-") ? "" : entry.unit().replace("m2", "m²");
  }

  private String number(RuleEntry entry, double value) {
    return number(entry, value, units);
  }

  /** A number in the unit of a rule's threshold; empty where there is none. */
  static String number(RuleEntry entry, double value, Units units) {
    if (Double.isNaN(value)) {
      return "";
    }
    Measure measure = measure(entry);
    String words = QuantityWords.plain(measure == null ? value : measure.shown(value, units));
    String unit = measure == null ? unit(entry) : measure.unit(units).symbol();
    return unit.isEmpty() ? words : words + QuantityWords.THIN + unit;
  }
}
