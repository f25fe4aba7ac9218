package leafturn.advice.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The programmes of a plan by a person's aims. Nearest to them is, among those that keep a lawn,
 * the one of the least distance; between those of the same distance differences below a step
 * decide, and between equals the aims as they are weighted usually.
 *
 * @param places in the order of the plan
 * @param best number of the programme, from 0, that comes nearest to the aims as they are weighted
 * @param unbeatenByDistance numbers of the unbeaten programmes, nearest to the aims first
 */
public record Ranking(List<Place> places, int best, List<Integer> unbeatenByDistance) {
  public Ranking {
    places = List.copyOf(places);
    unbeatenByDistance = List.copyOf(unbeatenByDistance);
  }

  /**
   * @param number of the programme in its plan, from 0
   * @param unbeaten true when no other programme is as good on every chosen aim and better on one
   * @param distance weighted mean of the aims, each from 0, the best of the unbeaten ones, to 1,
   *     the worst of them; beaten programmes may lie beyond
   */
  public record Place(int number, boolean unbeaten, double distance) {}

  /** Ranks the programmes of a plan. */
  public static Ranking of(SeasonPlan plan, AimWeights weights) {
    List<PlanAim> aims = weights.chosen();
    double[][] exact = inSteps(plan, aims);
    double[][] whole = whole(exact);
    boolean[] unbeaten = new boolean[whole.length];
    for (int number = 0; number < whole.length; number++) {
      unbeaten[number] = unbeaten(whole, whole[number]);
    }
    double[] distances = distances(whole, unbeaten, aims, weights);
    List<Place> places = new ArrayList<>();
    for (int number = 0; number < whole.length; number++) {
      places.add(new Place(number, unbeaten[number], distances[number]));
    }
    double[] finer = distances(exact, unbeaten, aims, weights);
    double[] usual = usual(plan);
    Comparator<Place> nearest =
        Comparator.comparingDouble(Place::distance)
            .thenComparingDouble(place -> finer[place.number()])
            .thenComparing(place -> !place.unbeaten())
            .thenComparingDouble(place -> usual[place.number()])
            .thenComparing(Place::number);
    Comparator<Place> lawnsFirst =
        Comparator.comparing((Place place) -> !keepsALawn(plan, place.number()));
    int best = places.stream().min(lawnsFirst.thenComparing(nearest)).orElseThrow().number();
    List<Integer> byDistance =
        places.stream().filter(Place::unbeaten).sorted(nearest).map(Place::number).toList();
    return new Ranking(places, best, byDistance);
  }

  /** As if one aim were all that counts. */
  public static Ranking alone(SeasonPlan plan, PlanAim aim) {
    Map<PlanAim, Double> weights = new EnumMap<>(PlanAim.class);
    weights.put(aim, 1.0);
    return of(plan, new AimWeights(weights));
  }

  private static boolean keepsALawn(SeasonPlan plan, int number) {
    return plan.programmes().get(number).outcome().keepsALawn(plan.present().outcome());
  }

  /** A row for each programme, a column for each aim. */
  private static double[][] inSteps(SeasonPlan plan, List<PlanAim> aims) {
    ProgrammeOutcome present = plan.present().outcome();
    return plan.programmes().stream()
        .map(
            result ->
                aims.stream().mapToDouble(aim -> aim.inSteps(result.outcome(), present)).toArray())
        .toArray(double[][]::new);
  }

  private static double[][] whole(double[][] exact) {
    return Arrays.stream(exact)
        .map(row -> Arrays.stream(row).map(PlanAim::whole).toArray())
        .toArray(double[][]::new);
  }

  /** Distances by the usual weights, over all programmes. */
  private static double[] usual(SeasonPlan plan) {
    AimWeights usual = AimWeights.usual();
    boolean[] all = new boolean[plan.programmes().size()];
    Arrays.fill(all, true);
    return distances(inSteps(plan, usual.chosen()), all, usual.chosen(), usual);
  }

  private static boolean unbeaten(double[][] all, double[] one) {
    for (double[] other : all) {
      boolean better = false;
      boolean worse = false;
      for (int aim = 0; aim < one.length; aim++) {
        better |= other[aim] < one[aim];
        worse |= other[aim] > one[aim];
      }
      if (better && !worse) {
        return false;
      }
    }
    return true;
  }

  private static double[] distances(
      double[][] steps, boolean[] among, List<PlanAim> aims, AimWeights weights) {
    double[] distances = new double[steps.length];
    double all = aims.stream().mapToDouble(weights::of).sum();
    for (int aim = 0; aim < aims.size(); aim++) {
      int place = aim;
      double[] reached =
          IntStream.range(0, steps.length)
              .filter(number -> among[number])
              .mapToDouble(number -> steps[number][place])
              .sorted()
              .toArray();
      double least = reached[0];
      double range = Math.max(1, reached[reached.length - 1] - least);
      for (int number = 0; number < steps.length; number++) {
        double share = (steps[number][aim] - least) / range;
        distances[number] += weights.of(aims.get(aim)) / all * share;
      }
    }
    return distances;
  }
}
