package leafturn.reports.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.advice.call.DeckHeights;
import leafturn.advice.season.PlannedProgramme;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.advice.season.SeasonPlan;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Programme;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/** What is to be said against programmes that a person gave, or keeps now. */
public final class ProgrammeWarnings {
  private static final int COMMON_YEAR = 2015;
  private static final int DAYS = 365;

  /** Share of the height by which a deck may be lowered at once; common practice, no source. */
  private static final double MOST_LOWERED = 1.0 / 3;

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
      String scalped = scalped(planned.programme().mowing(), units);
      if (!scalped.isEmpty()) {
        warnings.add(name + scalped);
      }
      String low = low(planned.programme().mowing(), plan.basis().grass(), units);
      if (!low.isEmpty()) {
        warnings.add(name + low);
      }
      double highestMm = highestMm(planned.programme().mowing());
      String highest = units.height(highestMm);
      String decks = units.height(DeckHeights.HIGHEST_MM);
      if (highestMm > DeckHeights.HIGHEST_MM && !highest.equals(decks)) {
        warnings.add(
            "%s cuts at %s: walk-behind and ride-on decks end at about %s (common practice, from memory); check that the mower can."
                .formatted(name, highest, decks));
      }
    }
    return warnings;
  }

  /** Half mowings come from a middle between two possible seasons; rounded they would reach 4. */
  private static String times(double mowings) {
    if (mowings == 0) {
      return "not once in a usual year";
    }
    return mowings == 1 ? "once a year" : QuantityWords.plain(mowings) + " times a year";
  }

  /** The greatest drop from one day to the next, where it takes the turf down to its stubble. */
  private static String scalped(Programme.Mowing mowing, UnitWords units) {
    List<LocalDate> days = days(mowing);
    String told = "";
    double most = MOST_LOWERED;
    for (int day = 1; day < days.size(); day++) {
      double beforeMm = mowing.heights().on(days.get(day - 1));
      double afterMm = mowing.heights().on(days.get(day));
      double lowered = 1 - afterMm / beforeMm;
      if (lowered > most) {
        most = lowered;
        told =
            " goes down from %s in %s to %s in %s: lowering by more than a third at once scalps the turf; go down in steps some days apart (common practice, no source)."
                .formatted(
                    units.height(beforeMm),
                    DayWords.month(days.get(day - 1)),
                    units.height(afterMm),
                    DayWords.month(days.get(day)));
      }
    }
    return told;
  }

  /** The lowest cut height, where lawns of the grass are not kept so low. */
  private static String low(Programme.Mowing mowing, Species grass, UnitWords units) {
    double lowestMm = days(mowing).stream().mapToDouble(mowing.heights()::on).min().orElseThrow();
    String told = units.height(lowestMm);
    String usual = units.height(grass.lowestHeightMm());
    return lowestMm < grass.lowestHeightMm() && !told.equals(usual)
        ? " cuts at %s: home lawns of %s are kept at %s or more (extension services); lower, the turf thins and weeds come in, which the model does not reckon with."
            .formatted(told, grass.commonName(), usual)
        : "";
  }

  /** Highest cut height on a day of the mowing season; nobody mows to those of other months. */
  private static double highestMm(Programme.Mowing mowing) {
    return days(mowing).stream().mapToDouble(mowing.heights()::on).max().orElseThrow();
  }

  /** The days of the mowing season in order. */
  private static List<LocalDate> days(Programme.Mowing mowing) {
    int from = mowing.from().in(COMMON_YEAR);
    int days = Math.floorMod(mowing.to().in(COMMON_YEAR) - from, DAYS) + 1;
    return IntStream.range(from - 1, from - 1 + days)
        .mapToObj(day -> LocalDate.ofYearDay(COMMON_YEAR, day % DAYS + 1))
        .toList();
  }
}
