package leafturn.advice.call;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.Flows;
import leafturn.model.Stores;
import leafturn.model.lawn.Keeper;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.ProgrammeKeeper;

/**
 * Keeps a lawn by a plan's cuts and, once the last of them is done, by its programme again. A cut
 * on the day of the call comes before anything else; a plan without cuts leaves the lawn unmown.
 */
final class PlanKeeper implements Keeper {

  /**
   * A cut that was made.
   *
   * @param day days from the day of the call
   * @param heightBeforeMm mm
   * @param takenFraction share of the height taken
   * @param dryG clippings the mower handled, g dry matter/m2
   * @param kind what they are like
   */
  record CutMade(
      int day,
      double heightBeforeMm,
      double takenFraction,
      double dryG,
      double nitrogenG,
      double phosphorusG,
      double potassiumG,
      Kind kind) {}

  /**
   * What kind of clippings a cut made.
   *
   * @param ligninFraction lignin in dry matter, 0 where all cuts are of one kind
   * @param leafAgeDays mean age of the leaf, days at 20 °C
   * @param lengthMm length of the pieces
   */
  record Kind(double ligninFraction, double leafAgeDays, double lengthMm) {}

  private final Plan plan;
  private final ProgrammeKeeper programme;
  private final PossibleSeason season;
  private final int firstDay;
  private final ClippingsLeft left;
  private final List<CutMade> cuts = new ArrayList<>();
  private int nextMowDay = -1;

  /** Height of the tips since the last cut; leaves that die at the base do not lower them, mm. */
  private double tipsMm;

  /**
   * @param firstDay day of the run's first day, 1 when the day of the call is over, else 0
   */
  PlanKeeper(
      Plan plan,
      ProgrammeKeeper programme,
      PossibleSeason season,
      int firstDay,
      ClippingsLeft left) {
    this.plan = plan;
    this.programme = programme;
    this.season = season;
    this.firstDay = firstDay;
    this.left = left;
  }

  @Override
  public void morning(LawnRun run) {
    programme.morning(run);
    tipsMm = Math.max(tipsMm, run.heightMm());
    if (run.day() == 0 && !plan.cuts().isEmpty() && plan.day() == 0) {
      cut(run, 0);
    }
  }

  @Override
  public void evening(LawnRun run) {
    left.decay(
        season.airDecay(run.day()) * run.flow(Flows.DECAY_MOISTURE), run.flow(Flows.DECAY_SCALE));
    tipsMm = Math.max(tipsMm, run.heightMm());
    int day = firstDay + run.day();
    int done = cuts.size();
    if (done == plan.cuts().size()) {
      byProgramme(run, day);
    } else if (plan.cuts().get(done).day() == day) {
      cut(run, day);
    }
  }

  private void byProgramme(LawnRun run, int day) {
    if (plan.cuts().isEmpty()) {
      return;
    }
    if (nextMowDay < 0 && programme.due(run)) {
      nextMowDay = day;
    }
    programme.evening(run);
  }

  private void cut(LawnRun run, int day) {
    Plan.PlannedCut planned = plan.cuts().get(cuts.size());
    double before = Math.max(tipsMm, run.heightMm());
    double phosphorusPerN = run.store(Stores.PLANT_P) / run.store(Stores.PLANT_N);
    double potassiumPerN = run.store(Stores.PLANT_K) / run.store(Stores.PLANT_N);
    if (left.stalks() != null) {
      run.knowStalks(left.stalks());
    }
    run.cut(planned.toMm(), planned.returnedShare());
    tipsMm = Math.max(run.heightMm(), Math.min(planned.toMm(), before));
    double nitrogen = run.flow(Flows.CLIPPINGS_N);
    cuts.add(
        new CutMade(
            day,
            before,
            1 - tipsMm / before,
            run.flow(Flows.CLIPPINGS_G),
            nitrogen,
            phosphorusPerN * nitrogen,
            potassiumPerN * nitrogen,
            new Kind(
                run.flow(Flows.CUT_LIGNIN_FRACTION),
                run.flow(Flows.CUT_LEAF_AGE_DAYS),
                run.flow(Flows.CUT_LENGTH_MM))));
    left.fall(
        planned.returnedShare() * run.flow(Flows.CLIPPINGS_G),
        run.flow(Flows.CUT_FAST_FRACTION),
        run.flow(Flows.CUT_LENGTH_MM),
        day);
  }

  List<CutMade> cuts() {
    return cuts;
  }

  /** Day on which the programme first asks for another cut, or -1 when it did not. */
  int nextMowDay() {
    return nextMowDay;
  }
}
