package leafturn.advice.season;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How much each aim counts for the person who plans.
 *
 * @param byAim weights from 0, not an aim, to 10
 */
public record AimWeights(Map<PlanAim, Double> byAim) {
  /** Highest weight. */
  public static final double MOST = 10;

  /** What is wrong where nothing is an aim. */
  public static final String NONE = "no aim has a weight above 0; give one at least";

  public AimWeights {
    byAim = Map.copyOf(byAim);
    byAim.forEach(
        (aim, weight) -> {
          if (!(weight >= 0 && weight <= MOST)) {
            throw new IllegalArgumentException(
                "the weight of %s is %s, but must lie from 0 to 10".formatted(aim.id(), weight));
          }
        });
    if (byAim.values().stream().noneMatch(weight -> weight > 0)) {
      throw new IllegalArgumentException(NONE);
    }
  }

  /** A lawn is to grow about as now: a programme that starves it is cheap at everything else. */
  private static final double USUAL_OF_GROWTH = 4;

  /** Thatch, clumps and the third rule all gain by mowing often; its price counts against them. */
  private static final double USUAL_OF_WORK = 2;

  /**
   * All aims count the same but for growth and work, and for nutrients kept: the feed needed tells
   * those. The weights are our judgement.
   */
  public static AimWeights usual() {
    Map<PlanAim, Double> weights = new EnumMap<>(PlanAim.class);
    for (PlanAim aim : PlanAim.values()) {
      weights.put(
          aim,
          switch (aim) {
            case KEEPING -> 0.0;
            case GROWTH -> USUAL_OF_GROWTH;
            case WORK -> USUAL_OF_WORK;
            default -> 1.0;
          });
    }
    return new AimWeights(weights);
  }

  /** Weight of an aim, 0 where it is none. */
  public double of(PlanAim aim) {
    return byAim.getOrDefault(aim, 0.0);
  }

  /** The aims that count, in their order. */
  public List<PlanAim> chosen() {
    return Arrays.stream(PlanAim.values()).filter(aim -> of(aim) > 0).toList();
  }
}
