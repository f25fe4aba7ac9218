package leafturn.advice.call;

import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.advice.call.Weighing.Weighed;

/**
 * What mowing and returning would break.
 *
 * @param today if it were done today
 * @param thatDay if it were done on the day of the plan
 */
record Returned(Weighed today, Weighed thatDay) {

  /**
   * What the plan does not break, and returning all in one cut on its day would.
   *
   * @param lighter rules of which nothing is left to say beside a heavier one: where the plan
   *     breaks the heavier one alone, that is told, of the same day
   */
  List<CallRule> decidedThatDay(Weighed best, Map<CallRule, Set<CallRule>> lighter) {
    return thatDay.broken().stream()
        .filter(
            rule ->
                !best.breaks(rule)
                    || lighter.getOrDefault(rule, Set.of()).stream()
                        .anyMatch(other -> thatDay.breaks(other) && !best.breaks(other)))
        .toList();
  }

  /**
   * True of leaves that are wet now and dry later today, where the plan waits for another day: they
   * are not what it waits for, unless somebody saw them wet and its own day is not.
   */
  boolean onlyWetNow(CallRule rule, Weighed best, Prospect prospect) {
    return rule == CallRule.WET
        && best.plan().day() > 0
        && !prospect.wet(0)
        && (best.breaks(rule) || prospect.known().wetToday().isEmpty());
  }
}
