package leafturn.records.trial;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.sheet.TrialSheet;

/**
 * What of a plan must not change once plots bear their treatments: all that the layout is drawn
 * from. Another layout would give readings to other treatments than the plots were given.
 */
public final class FixedLayout {
  private static final Map<String, String> WORDS = new LinkedHashMap<>();

  static {
    WORDS.put("seed", "the seed");
    WORDS.put("design", "the design");
    WORDS.put("sides", "the sides");
    WORDS.put("pairs", "the pairs of strips");
    WORDS.put("blocks", "the blocks");
    WORDS.put("allowedLayouts", "the allowed layouts");
    WORDS.put("factor", "the factor");
    WORDS.put("arms", "the arms");
    WORDS.put("secondFactor", "the second factor");
    WORDS.put("secondArms", "the arms of the second factor");
    WORDS.put("lawns", "the lawns");
    WORDS.put("plots", "the plots");
  }

  private FixedLayout() {}

  /**
   * Refuses a plan that would be laid out otherwise than the one before.
   *
   * @param read whether the trial has readings
   * @throws InputException with what of it must stay, or every fault of a plan
   */
  public static void check(TrialSheet before, TrialSheet after, boolean read) {
    TrialSheet.Frozen frozen = before.frozen();
    if (!read && (frozen == null || frozen.layout() == null)) {
      return;
    }
    Map<String, Object> was = TrialPlanText.tree(BookPlan.of(before));
    Map<String, Object> is = TrialPlanText.tree(BookPlan.of(after));
    Set<String> changed = new LinkedHashSet<>();
    WORDS.forEach(
        (field, words) -> {
          if (!Objects.equals(was.get(field), is.get(field))) {
            changed.add(words);
          }
        });
    if (!changed.isEmpty()) {
      String since = read ? "the trial has readings" : "the layout is frozen";
      throw new InputException(
          "%s cannot be changed any more, since %s: the plots would bear other treatments than they were given; plan a new trial instead."
              .formatted(String.join(", ", changed), since));
    }
  }
}
