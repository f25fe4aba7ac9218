package leafturn.reports.plan;

import java.time.MonthDay;
import java.util.List;
import leafturn.advice.call.Spread;
import leafturn.advice.season.PlanRequest;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.SeasonPlan;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;

/** Plans with made-up outcomes, for tests of what is said of them. */
final class SamplePlan {
  static final CutHeights USUAL = CutHeights.always(76);

  private SamplePlan() {}

  private static Programme programme(CutHeights heights) {
    return programme(heights, 7, List.of());
  }

  /** Mown from April to mid November, all returned, not watered. */
  static Programme programme(CutHeights heights, int everyDays, List<Programme.Feeding> feedings) {
    return new Programme(
        new Programme.Mowing(
            heights,
            everyDays,
            CalendarDay.on(MonthDay.of(4, 1)),
            CalendarDay.on(MonthDay.of(11, 15)),
            ReturnPractice.always(1)),
        feedings,
        0);
  }

  private static ProgrammeOutcome outcome(double mowings) {
    Spread none = Spread.exactly(0);
    return new ProgrammeOutcome(
        Spread.exactly(mowings),
        none,
        none,
        new ProgrammeOutcome.Work(null, none, null, null),
        new ProgrammeOutcome.Kept(none, none, none),
        new ProgrammeOutcome.Feed(0, none),
        none,
        new ProgrammeOutcome.Thatch(none, none, none),
        new ProgrammeOutcome.Risks(none, none));
  }

  static SeasonPlan.Result result(Origin origin, String name, CutHeights heights, double mowings) {
    return new SeasonPlan.Result(
        new PlannedProgramme(name, origin, programme(heights)), outcome(mowings));
  }

  static SeasonPlan plan(SeasonPlan.Result... results) {
    return new SeasonPlan(
        List.of(results),
        new SeasonPlan.Basis(
            new PlanRequest.Draws(10, 1),
            "a third",
            Species.TALL_FESCUE,
            List.of(2014),
            List.of(),
            4,
            2,
            10,
            10,
            1));
  }

  /** A result with an outcome of its own. */
  static SeasonPlan.Result result(Origin origin, String name, ProgrammeOutcome outcome) {
    return new SeasonPlan.Result(new PlannedProgramme(name, origin, programme(USUAL)), outcome);
  }
}
