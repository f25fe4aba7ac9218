package leafturn.reports.plan;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.advice.call.DeckHeights;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.SeasonPlan;
import leafturn.model.lawn.CutHeights;
import leafturn.reports.UnitWords;

/** What is to be said against programmes that a person gave, or keeps now. */
public final class ProgrammeWarnings {
  private ProgrammeWarnings() {}

  /**
   * The sentences, by programme.
   *
   * @param units of the reader
   */
  public static List<String> of(SeasonPlan plan, UnitWords units) {
    List<String> warnings = new ArrayList<>();
    for (SeasonPlan.Result result : plan.programmes()) {
      PlannedProgramme planned = result.planned();
      if (planned.origin() == Origin.SEARCH) {
        continue;
      }
      String name =
          planned.origin() == Origin.PRESENT ? "As now" : "“%s”".formatted(planned.name());
      double mowings = result.outcome().mowings().middle();
      if (mowings < ProgrammeOutcome.FEWEST_MOWINGS) {
        warnings.add(
            "%s hardly mows (%s): fewer than %d mowings a year keep a meadow and no lawn."
                .formatted(name, times(mowings), ProgrammeOutcome.FEWEST_MOWINGS));
      }
      double highestMm = highestMm(planned.programme().mowing().heights());
      if (highestMm > DeckHeights.HIGHEST_MM) {
        warnings.add(
            "%s cuts at %s: walk-behind and ride-on decks end at about %s (common practice, from memory); check that the mower can."
                .formatted(name, units.height(highestMm), units.height(DeckHeights.HIGHEST_MM)));
      }
    }
    return warnings;
  }

  private static String times(double mowings) {
    long count = Math.round(mowings);
    return count == 1 ? "once a year" : count + " times a year";
  }

  private static double highestMm(CutHeights heights) {
    return Arrays.stream(Month.values()).mapToDouble(heights::in).max().orElseThrow();
  }
}
