package leafturn.advice.call;

import java.util.List;
import java.util.function.ToDoubleFunction;
import leafturn.model.Flows;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.ProgrammeKeeper;

/**
 * What a plan did in one possible season.
 *
 * @param cuts the plan's cuts
 * @param thatchChangeMm thatch at the end against today, mm
 * @param leachedNGPerM2 N leached, g/m2
 * @param nextMowDay day on which the programme asks for the next cut, days from the day of the
 *     call, or -1
 * @param daysToHalf days from the first cut until half of the clippings has broken down, or -1
 * @param daysToNineTenths days until nine tenths have broken down, or -1
 * @param daysToUnseen days until nothing of them is seen any more, or -1
 */
record PlanRun(
    List<PlanKeeper.CutMade> cuts,
    double thatchChangeMm,
    double leachedNGPerM2,
    int nextMowDay,
    int daysToHalf,
    int daysToNineTenths,
    int daysToUnseen) {

  /**
   * Lives a plan through a possible season, and on until its clippings have broken down.
   *
   * @param programme keeps the lawn once the plan is done, by the season's equations
   */
  static PlanRun of(
      LawnToday lawn,
      ProgrammeKeeper programme,
      Plan plan,
      PossibleSeason season,
      ClippingsLeft left) {
    int firstDay = lawn.weatherKnown() ? 1 : 0;
    LawnRun run = new LawnRun(season.equations(), lawn.state(), season.terms());
    PlanKeeper keeper = new PlanKeeper(plan, programme, season, firstDay, left);
    double thatchMm = run.thatchMm();
    int day = WeatherToCome.DAYS + 1 - firstDay;
    run.live(0, day, keeper, DayListener.NONE);
    double change = run.thatchMm() - thatchMm;
    double leached = run.total(Flows.LEACHED_N);
    int nextMowDay = keeper.nextMowDay();
    boolean returned = plan.returned();
    while (returned && left.daysToNineTenths() < 0 && day < season.days()) {
      run.live(day, ++day, keeper, DayListener.NONE);
    }
    return new PlanRun(
        List.copyOf(keeper.cuts()),
        change,
        leached,
        nextMowDay,
        left.daysToHalf(),
        left.daysToNineTenths(),
        left.daysToUnseen());
  }

  /** Share of the height that its cut took; of several the largest. */
  double takenFraction() {
    return cuts.stream().mapToDouble(PlanKeeper.CutMade::takenFraction).max().orElse(0);
  }

  double dryG() {
    return sum(PlanKeeper.CutMade::dryG);
  }

  /** C:N of all its clippings. */
  double carbonPerNitrogen(double carbonFraction) {
    return carbonFraction * dryG() / nitrogenG();
  }

  /** A quantity of the clippings, each cut counting by its mass. */
  double meanOf(ToDoubleFunction<PlanKeeper.Kind> quantity) {
    double all = dryG();
    double sum = 0;
    for (PlanKeeper.CutMade cut : cuts) {
      sum += cut.dryG() * quantity.applyAsDouble(cut.kind());
    }
    return all > 0 ? sum / all : 0;
  }

  double nitrogenG() {
    return sum(PlanKeeper.CutMade::nitrogenG);
  }

  double phosphorusG() {
    return sum(PlanKeeper.CutMade::phosphorusG);
  }

  double potassiumG() {
    return sum(PlanKeeper.CutMade::potassiumG);
  }

  /** Over the cuts; a loop, since each of hundreds of seasons asks for several such sums. */
  private double sum(ToDoubleFunction<PlanKeeper.CutMade> quantity) {
    double sum = 0;
    for (PlanKeeper.CutMade cut : cuts) {
      sum += quantity.applyAsDouble(cut);
    }
    return sum;
  }
}
