package leafturn.advice.season;

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
      throw new IllegalArgumentException("no aim has a weight above 0; give one at least");
    }
  }

  /** All aims count the same, but for nutrients kept, which the feed needed tells already. */
  public static AimWeights usual() {
    Map<PlanAim, Double> weights = new EnumMap<>(PlanAim.class);
    for (PlanAim aim : PlanAim.values()) {
      weights.put(aim, aim == PlanAim.KEEPING ? 0.0 : 1.0);
    }
    return new AimWeights(weights);
  }

  /** Weight of an aim, 0 where it is none. */
  public double of(PlanAim aim) {
    return byAim.getOrDefault(aim, 0.0);
  }

  /** The aims that count, in their order. */
  public List<PlanAim> chosen() {
    return java.util.Arrays.stream(PlanAim.values()).filter(aim -> of(aim) > 0).toList();
  }
}
