package leafturn.web;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;

/**
 * How the page of a plan is looked at: the weights of the aims and the two that the figure shows.
 *
 * @param weights of the aims
 * @param across the aim along the figure
 * @param up the aim up the figure
 */
record PlanWeights(AimWeights weights, PlanAim across, PlanAim up) {
  /** Weights that can be chosen. */
  static final List<Integer> CHOICES = List.of(0, 1, 2, 4, 8);

  /** As the address of the page says; what it does not say, or says wrongly, is as usual. */
  static PlanWeights of(Map<String, List<String>> query) {
    AimWeights usual = AimWeights.usual();
    Map<PlanAim, Double> weights = new EnumMap<>(PlanAim.class);
    for (PlanAim aim : PlanAim.values()) {
      String given = first(query, aim.id());
      boolean number = given.matches("\\d{1,2}") && CHOICES.contains(Integer.valueOf(given));
      weights.put(aim, number ? Double.parseDouble(given) : usual.of(aim));
    }
    boolean any = weights.values().stream().anyMatch(weight -> weight > 0);
    return new PlanWeights(
        any ? new AimWeights(weights) : usual,
        PlanAim.named(first(query, "across")).orElse(PlanAim.WORK),
        PlanAim.named(first(query, "up")).orElse(PlanAim.FEED));
  }

  private static String first(Map<String, List<String>> query, String name) {
    List<String> values = query.getOrDefault(name, List.of());
    return values.isEmpty() ? "" : values.get(0);
  }
}
