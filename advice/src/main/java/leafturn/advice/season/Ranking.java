package leafturn.advice.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The programmes of a plan by a person's aims.
 *
 * @param places in the order of the plan
 * @param best number of the programme, from 0, that comes nearest to the aims as they are weighted,
 *     among those that keep a lawn
 */
public record Ranking(List<Place> places, int best) {
  public Ranking {
    places = List.copyOf(places);
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
    long[][] steps = new long[plan.programmes().size()][aims.size()];
    for (int number = 0; number < steps.length; number++) {
      for (int aim = 0; aim < aims.size(); aim++) {
        ProgrammeOutcome outcome = plan.programmes().get(number).outcome();
        steps[number][aim] = aims.get(aim).steps(outcome, plan.present().outcome());
      }
    }
    boolean[] unbeaten = new boolean[steps.length];
    for (int number = 0; number < steps.length; number++) {
      unbeaten[number] = unbeaten(steps, steps[number]);
    }
    double[] distances = distances(steps, unbeaten, aims, weights);
    List<Place> places = new ArrayList<>();
    for (int number = 0; number < steps.length; number++) {
      places.add(new Place(number, unbeaten[number], distances[number]));
    }
    int best =
        places.stream()
            .min(
                Comparator.comparing((Place place) -> !keepsALawn(plan, place.number()))
                    .thenComparingDouble(Place::distance)
                    .thenComparing(place -> !place.unbeaten())
                    .thenComparing(Place::number))
            .orElseThrow()
            .number();
    return new Ranking(places, best);
  }

  private static boolean keepsALawn(SeasonPlan plan, int number) {
    return plan.programmes().get(number).outcome().keepsALawn(plan.present().outcome());
  }

  private static boolean unbeaten(long[][] all, long[] one) {
    for (long[] other : all) {
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
      long[][] steps, boolean[] unbeaten, List<PlanAim> aims, AimWeights weights) {
    double[] distances = new double[steps.length];
    double all = aims.stream().mapToDouble(weights::of).sum();
    for (int aim = 0; aim < aims.size(); aim++) {
      int place = aim;
      long[] reached =
          IntStream.range(0, steps.length)
              .filter(number -> unbeaten[number])
              .mapToLong(number -> steps[number][place])
              .sorted()
              .toArray();
      long least = reached[0];
      long range = Math.max(1, reached[reached.length - 1] - least);
      for (int number = 0; number < steps.length; number++) {
        double share = (double) (steps[number][aim] - least) / range;
        distances[number] += weights.of(aims.get(aim)) / all * share;
      }
    }
    return distances;
  }

  /** Numbers of the unbeaten programmes, nearest to the aims first. */
  public List<Integer> unbeatenByDistance() {
    return places.stream()
        .filter(Place::unbeaten)
        .sorted(Comparator.comparingDouble(Place::distance).thenComparing(Place::number))
        .map(Place::number)
        .toList();
  }
}
