package leafturn.advice.season;

import static leafturn.advice.call.CallRule.CLUMPS;
import static leafturn.advice.call.CallRule.CLUMPS_HEAVY;
import static leafturn.advice.call.CallRule.CLUMP_LIMIT_DRY;
import static leafturn.advice.call.CallRule.CLUMP_LIMIT_WET;
import static leafturn.advice.call.CallRule.DUE;
import static leafturn.advice.call.CallRule.HALF;
import static leafturn.advice.call.CallRule.ONE_THIRD;
import static leafturn.advice.call.CallRule.SHORT_PIECES;

import java.util.List;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.quantity.DisplayNumber;

/** Thresholds that only make sense in their order: a milder rule must not be stricter. */
public final class ThresholdOrder {
  private record Pair(CallRule lower, CallRule higher) {}

  private static final List<Pair> PAIRS =
      List.of(
          new Pair(DUE, ONE_THIRD),
          new Pair(ONE_THIRD, HALF),
          new Pair(CLUMPS, CLUMPS_HEAVY),
          new Pair(CLUMP_LIMIT_WET, CLUMP_LIMIT_DRY),
          new Pair(SHORT_PIECES, CallRule.LENGTH));

  private ThresholdOrder() {}

  /** One sentence for each pair that stands the wrong way round. */
  public static List<String> faults(CallRules rules) {
    return PAIRS.stream()
        .filter(pair -> rules.threshold(pair.lower) > rules.threshold(pair.higher))
        .map(
            pair ->
                "%s is %s and %s is %s; give %s no more than %s."
                    .formatted(
                        pair.lower.id(),
                        DisplayNumber.plain(rules.threshold(pair.lower)),
                        pair.higher.id(),
                        DisplayNumber.plain(rules.threshold(pair.higher)),
                        pair.lower.id(),
                        pair.higher.id()))
        .toList();
  }
}
