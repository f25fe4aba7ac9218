package leafturn.web;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.season.AimWeights;
import leafturn.advice.season.PlanAim;
import leafturn.reports.plan.ProgrammeWords;

/**
 * How the page of a plan is looked at: the weights of the aims and the two that the figure shows.
 *
 * @param weights of the aims
 * @param across the aim along the figure
 * @param up the aim up the figure
 * @param none true when no aim is to count: then nothing can be weighed, and the weights are the
 *     usual ones
 */
record PlanWeights(AimWeights weights, PlanAim across, PlanAim up, boolean none) {
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
        PlanAim.named(first(query, "up")).orElse(PlanAim.FEED),
        !any);
  }

  /** Whether the form has this weight of an aim, as it was sent. */
  boolean typed(PlanAim aim, int choice) {
    return choice == (none ? 0 : weights.of(aim));
  }

  /** What is wrong with the weights; empty where nothing is. */
  String fault() {
    return none ? ProgrammeWords.capital(AimWeights.NONE) + "." : "";
  }

  private static String first(Map<String, List<String>> query, String name) {
    List<String> values = query.getOrDefault(name, List.of());
    return values.isEmpty() ? "" : values.get(0);
  }
}
