package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.TrialPlan;

/**
 * A plan laid out: every plot with its place and treatment, where cores are taken, the codes of
 * bags and the order of the walk. The plan and its seed alone decide it.
 *
 * @param plan what was laid out
 * @param lawns with their plots, in the order of the plan
 * @param cores of all dates, plot by plot
 * @param bags of all dates, date by date, and then their blind duplicates
 * @param walk of all dates, date by date
 */
public record TrialLayout(
    TrialPlan plan, List<LaidLawn> lawns, List<Core> cores, List<Bag> bags, List<Stop> walk) {
  public TrialLayout {
    lawns = List.copyOf(lawns);
    cores = List.copyOf(cores);
    bags = List.copyOf(bags);
    walk = List.copyOf(walk);
  }

  /**
   * Lays out a plan.
   *
   * @throws NoRoomException when plots or cores do not fit on a lawn
   */
  public static TrialLayout of(TrialPlan plan) {
    List<Unit> units = Randomisation.of(plan);
    List<LaidLawn> lawns = new ArrayList<>();
    for (int lawn = 0; lawn < plan.lawns().size(); lawn++) {
      int index = lawn;
      List<Unit> here = units.stream().filter(unit -> unit.lawn() == index).toList();
      lawns.add(LawnLayout.of(plan, plan.lawns().get(lawn), here));
    }
    return new TrialLayout(
        plan, lawns, cores(plan, lawns), Bags.of(plan, lawns), walk(plan, lawns));
  }

  /** The plots of all lawns. */
  public List<LaidPlot> plots() {
    return lawns.stream().flatMap(lawn -> lawn.plots().stream()).toList();
  }

  /** Of each blind duplicate the code of the bag that was divided, by its own code. */
  public Map<String, String> dividedBags() {
    Map<String, String> divided = new LinkedHashMap<>();
    for (Bag bag : bags) {
      if (bag.duplicateOf() != null) {
        divided.put(bag.code(), bag.duplicateOf());
      }
    }
    return divided;
  }

  private static List<Core> cores(TrialPlan plan, List<LaidLawn> lawns) {
    CoreRule rule = plan.observing().cores();
    try {
      return cores(plan.seed(), rule, lawns);
    } catch (NoRoomException none) {
      int fit = rule.perPlot() - 1;
      while (fit > 0 && !haveRoom(plan.seed(), rule.withPerPlot(fit), lawns)) {
        fit--;
      }
      throw fit == 0
          ? none
          : none.more(
              "%d core%s a plot would fit on these dates.".formatted(fit, fit == 1 ? "" : "s"));
    }
  }

  private static boolean haveRoom(long seed, CoreRule rule, List<LaidLawn> lawns) {
    try {
      cores(seed, rule, lawns);
      return true;
    } catch (NoRoomException none) {
      return false;
    }
  }

  private static List<Core> cores(long seed, CoreRule rule, List<LaidLawn> lawns) {
    List<Core> cores = new ArrayList<>();
    int number = 0;
    for (LaidLawn lawn : lawns) {
      for (LaidPlot plot : lawn.plots()) {
        try {
          cores.addAll(CorePlaces.of(seed, rule, lawn, plot, number++));
        } catch (NoRoomException none) {
          throw none.on(lawn.lawn().name());
        }
      }
    }
    return cores;
  }

  /** Lawn by lawn and block by block, so that the plots of a block share hour, light and hand. */
  private static List<Stop> walk(TrialPlan plan, List<LaidLawn> lawns) {
    List<Stop> walk = new ArrayList<>();
    List<LocalDate> dates = plan.observing().dates();
    for (int day = 0; day < dates.size(); day++) {
      for (int lawn = 0; lawn < lawns.size(); lawn++) {
        List<LaidPlot> plots = lawns.get(lawn).plots();
        for (int block :
            plots.stream().mapToInt(plot -> plot.unit().block()).distinct().toArray()) {
          List<String> codes =
              plots.stream()
                  .filter(plot -> plot.unit().block() == block)
                  .map(LaidPlot::code)
                  .toList();
          Chance chance = Chance.of(plan.seed(), Purpose.WALK, day, block);
          walk.add(new Stop(dates.get(day), lawn, block, chance.shuffled(codes)));
        }
      }
    }
    return walk;
  }
}
