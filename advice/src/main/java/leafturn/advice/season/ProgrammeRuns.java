package leafturn.advice.season;

import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.model.Flows;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.weather.Site;

/** One programme lived through the weather of a plan. For one thread. */
final class ProgrammeRuns {
  private final LawnEquations equations;
  private final MowingTally tally;
  private final ProgrammeKeeper keeper;
  private final PlanWeather weather;
  private final LawnState present;
  private final LawnState settled;
  private final Site site;
  private final LongAdder lived;

  /**
   * @param lawn the lawn with this programme in place of its own
   * @param present the lawn as it is now
   * @param lived counts the days that are lived
   */
  ProgrammeRuns(
      Lawn lawn, PlanWeather weather, LawnState present, CallRules rules, LongAdder lived) {
    this.lived = lived;
    Programme programme = lawn.programme();
    this.equations = new LawnEquations(LawnParameters.of(lawn));
    this.tally = new MowingTally(programme, equations, rules);
    this.keeper =
        new ProgrammeKeeper(programme, equations, tally, true, rules.threshold(CallRule.ONE_THIRD));
    this.weather = weather;
    this.present = present;
    this.site = lawn.site();
    LawnRun run = new LawnRun(equations, present, weather.before());
    live(run, weather.presentDays(), weather.before().days());
    this.settled = run.state();
  }

  /** The first possible seasons of the plan: a row for each {@link Yearly}, a column for each. */
  double[][] years(int seasons) {
    double[][] values = new double[Yearly.values().length][seasons];
    List<DailyTerms> years = weather.years();
    for (int season = 0; season < seasons; season++) {
      LawnRun run = new LawnRun(equations, settled, years.get(season));
      tally.clear();
      live(run, 0, PlanWeather.DAYS);
      for (Yearly quantity : Yearly.values()) {
        values[quantity.ordinal()][season] = value(quantity, run);
      }
    }
    return values;
  }

  private void live(LawnRun run, int fromDay, int toDay) {
    run.live(fromDay, toDay, keeper, DayListener.NONE);
    lived.add(toDay - fromDay);
  }

  /** Leaf growth of the first possible seasons, g/m2. */
  double[] leafGrowth(int seasons) {
    return years(seasons)[Yearly.LEAF_GROWTH_G.ordinal()];
  }

  private double value(Yearly quantity, LawnRun run) {
    return switch (quantity) {
      case MOWINGS -> run.total(Flows.MOWINGS);
      case IRRIGATION_MM -> run.total(Flows.IRRIGATION_MM);
      case LEAF_GROWTH_G -> run.total(Flows.LEAF_GROWTH_G);
      case COLLECTED_G -> run.total(Flows.CLIPPINGS_G) - run.total(Flows.RETURNED_G);
      case KEPT_N -> run.total(Flows.RETURNED_N);
      case KEPT_P -> tally.keptPhosphorusG();
      case KEPT_K -> tally.keptPotassiumG();
      case LEACHED_N -> run.total(Flows.LEACHED_N);
      case CLUMP_MOWINGS -> tally.clumpMowings();
      case THIRD_RULE_BROKEN -> tally.thirdRuleBroken();
    };
  }

  /**
   * Thatch at the end of some years with the programme, from the lawn as it is now, mm.
   *
   * @param afterYears years, rising
   * @return a row for each of these, a column for each possible season of several years
   */
  double[][] thatchMm(int... afterYears) {
    double[][] values = new double[afterYears.length][weather.longRuns().size()];
    for (int season = 0; season < weather.longRuns().size(); season++) {
      LawnRun run = new LawnRun(equations, present, weather.longRuns().get(season));
      int before = 0;
      for (int row = 0; row < afterYears.length; row++) {
        int days = PlanWeather.daysOf(afterYears[row], site);
        live(run, before, days);
        before = days;
        values[row][season] = run.thatchMm();
      }
    }
    return values;
  }
}
