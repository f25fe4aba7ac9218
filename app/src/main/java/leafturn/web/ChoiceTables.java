package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import leafturn.advice.call.Call;
import leafturn.advice.call.CutKind;
import leafturn.advice.call.InSightFor;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Option;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.Spread;
import leafturn.advice.call.ThatchInAYear;
import leafturn.reports.DayWords;
import leafturn.reports.OutcomeWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.SpreadWords;
import leafturn.reports.UnitWords;
import leafturn.reports.figure.RangeMark;
import leafturn.web.ChoiceTable.Cell;
import leafturn.web.ChoiceTable.Row;
import org.jspecify.annotations.Nullable;

/** Puts the choices of a call into words and marks. */
final class ChoiceTables {
  private final LawnOnRound lawn;
  private final List<Option> options;
  private final UnitWords units;

  /**
   * @param options the choices to compare, in the order of the rows
   */
  ChoiceTables(LawnOnRound lawn, List<Option> options) {
    this.lawn = lawn;
    this.options = options;
    this.units = new UnitWords(lawn.call().units());
  }

  /** The cut, what lies about afterwards and the work. */
  ChoiceTable cut() {
    Call.Limits limits = lawn.call().limits();
    RangeMark height = mark(Outcome::heightTakenFraction, limits.heightTakenFraction(), "of-grass");
    RangeMark clumps = mark(Outcome::clumpIndex, limits.clumpIndex(), "of-straw");
    RangeMark half = mark(Outcome::daysToHalf, Double.NaN, "of-straw");
    List<Row> rows =
        rows(
            (option, outcome) ->
                List.of(
                    Cell.of(QuantityWords.percent(outcome.heightTakenFraction()))
                        .drawn(height.draw(outcome.heightTakenFraction())),
                    clippings(option),
                    clumps(outcome).drawn(clumps.draw(outcome.clumpIndex())),
                    brokenDown(outcome, half),
                    Cell.of(OutcomeWords.minutes(outcome.minutes())),
                    nextMowing(outcome)));
    return new ChoiceTable(
        List.of(
            "Of the height",
            "Clippings",
            "Clumps",
            "Half broken down in",
            "Work",
            "Next mow-by day"),
        rows);
  }

  /** What the clippings hold and what becomes of it. */
  ChoiceTable nutrients() {
    List<Row> rows =
        rows(
            (option, outcome) ->
                List.of(
                    nitrogen(option),
                    ofTheFeed(outcome.phosphorusG(), outcome.phosphorusShareOfYearsFeed()),
                    ofTheFeed(outcome.potassiumG(), outcome.potassiumShareOfYearsFeed()),
                    dryMatter(outcome),
                    thatchInAYear(outcome),
                    Cell.of(units.depthChange(outcome.thatchChangeMm())),
                    Cell.of(units.onArea(outcome.leachedNGPerM2()))));
    String run = QuantityWords.whole(lawn.call().possibleSeasons().days(), "days");
    return new ChoiceTable(
        List.of(
            "Nitrogen",
            "Phosphorus",
            "Potassium",
            "Dry matter",
            "Thatch in a year, if always so",
            "Thatch after " + run,
            "Nitrogen leached in " + run),
        rows);
  }

  /** What kind of clippings they are, and how long they last. */
  ChoiceTable lasting() {
    RangeMark seen = mark(ChoiceTables::daysInSight, Double.NaN, "of-straw");
    RangeMark most = mark(Outcome::daysToNineTenths, Double.NaN, "of-straw");
    List<Row> rows =
        rows(
            (option, outcome) ->
                List.of(
                    inSight(outcome, seen),
                    days(outcome, outcome.daysToHalf()),
                    nineTenths(outcome, most),
                    carbonPerNitrogen(outcome),
                    Cell.of(OutcomeWords.nitrogenAtFirst(outcome))));
    return new ChoiceTable(
        List.of(
            "No longer seen after",
            "Half broken down in",
            "Nine tenths in",
            "Carbon to nitrogen",
            "Soil nitrogen in the first weeks"),
        rows);
  }

  private List<Row> rows(BiFunction<Option, Outcome, List<Cell>> cells) {
    return options.stream()
        .map(option -> new Row(option, cells.apply(option, option.outcome())))
        .toList();
  }

  private static @Nullable Spread daysInSight(Outcome outcome) {
    return outcome.inSight() == null ? null : outcome.inSight().days();
  }

  private static Cell inSight(Outcome outcome, RangeMark mark) {
    InSightFor inSight = outcome.inSight();
    if (inSight == null) {
      return days(outcome, null);
    }
    if (inSight.days().high() <= 0) {
      return Cell.of("hardly seen at all", ownSight(inSight));
    }
    return Cell.of(OutcomeWords.days(inSight.days()), ownSight(inSight))
        .drawn(mark.draw(inSight.days()));
  }

  private static String[] ownSight(InSightFor inSight) {
    return inSight.own().looks() == 0
        ? new String[0]
        : new String[] {OutcomeWords.ownSight(inSight.own())};
  }

  private static Cell days(Outcome outcome, @Nullable Spread days) {
    return outcome.nutrientsStay()
        ? Cell.of(OutcomeWords.days(days))
        : Cell.of(OutcomeWords.takenAway(outcome));
  }

  private static Cell nineTenths(Outcome outcome, RangeMark mark) {
    Spread most = outcome.daysToNineTenths();
    return most == null ? days(outcome, null) : days(outcome, most).drawn(mark.draw(most));
  }

  private Cell carbonPerNitrogen(Outcome outcome) {
    CutKind kind = outcome.kind();
    Spread ratio = kind.carbonPerNitrogen();
    if (ratio == null) {
      return Cell.of("nothing is cut");
    }
    List<String> details = new ArrayList<>();
    if (kind.leafAgeDays() != null) {
      details.add("leaf " + QuantityWords.whole(kind.leafAgeDays().middle(), "warm days") + " old");
    }
    if (kind.ligninFraction() != null) {
      details.add(QuantityWords.quantity(100 * kind.ligninFraction().middle(), "%") + " lignin");
    }
    details.add("pieces of " + units.height(kind.lengthMm().middle()));
    SpreadWords words = QuantityWords.whole(ratio, ": 1");
    return new Cell(words.middle(), words.range(), details, "");
  }

  private RangeMark mark(
      Function<Outcome, @Nullable Spread> quantity, double limit, String cssClass) {
    List<Spread> spreads =
        options.stream().map(Option::outcome).map(quantity).filter(Objects::nonNull).toList();
    return RangeMark.over(spreads, limit, cssClass);
  }

  private Cell clippings(Option option) {
    Outcome outcome = option.outcome();
    Spread volume = outcome.freshLitres();
    String litres = volume == null ? "" : units.volume(volume).inLine();
    if (outcome.nutrientsStay()) {
      return litres.isEmpty()
          ? Cell.of("none to carry")
          : Cell.of("none to carry", litres + " stay", fresh(outcome));
    }
    SpreadWords bags = OutcomeWords.bags(outcome.bags());
    if (litres.isEmpty()) {
      return Cell.of(bags);
    }
    return outcome.collectedInPart()
        ? Cell.of(
            bags,
            litres + " in all",
            fresh(outcome),
            "%s of it %s"
                .formatted(
                    QuantityWords.percent(outcome.collectedFraction()),
                    units.units().told("collected")))
        : Cell.of(bags, litres, fresh(outcome));
  }

  /** Fresh mass of the clippings; litres are known only where it is. */
  private String fresh(Outcome outcome) {
    Spread kilograms = outcome.freshKg();
    return kilograms == null ? "" : units.mass(1000 * kilograms.middle()) + " fresh";
  }

  private Cell clumps(Outcome outcome) {
    Spread index = outcome.clumpIndex();
    String range = index.high() > 0 ? "index " + QuantityWords.quantity(index, "").inLine() : "";
    return new Cell(OutcomeWords.clumping(index, lawn.call().limits()), range, List.of(), "");
  }

  private static Cell brokenDown(Outcome outcome, RangeMark mark) {
    Spread half = outcome.daysToHalf();
    if (half == null) {
      return Cell.of(
          outcome.nutrientsStay() ? OutcomeWords.NOT_KNOWN : OutcomeWords.takenAway(outcome));
    }
    SpreadWords words = OutcomeWords.days(half);
    Spread most = outcome.daysToNineTenths();
    Cell cell =
        most == null
            ? Cell.of(words)
            : Cell.of(words, "nine tenths: " + OutcomeWords.days(most).middle());
    return cell.drawn(mark.draw(half));
  }

  private Cell nextMowing(Outcome outcome) {
    Spread next = outcome.nextMowDay();
    if (next == null) {
      return Cell.of("not within " + lawn.call().possibleSeasons().days() + " days");
    }
    return Cell.of(DayWords.spreadOfDays(lawn.call().on(), next));
  }

  private Cell nitrogen(Option option) {
    Outcome outcome = option.outcome();
    Cell mass = ofTheFeed(outcome.nitrogenG(), outcome.nitrogenShareOfYearsFeed());
    List<String> details = new ArrayList<>(mass.details());
    details.add(OutcomeWords.nitrogenFate(option));
    return new Cell(mass.words(), mass.range(), details, "");
  }

  private Cell ofTheFeed(Spread gPerM2, @Nullable Spread shareOfYearsFeed) {
    Cell mass = mass(gPerM2);
    if (shareOfYearsFeed == null) {
      return mass;
    }
    List<String> details = new ArrayList<>(mass.details());
    details.add(QuantityWords.percent(shareOfYearsFeed.middle()) + " of the year’s feed");
    return new Cell(mass.words(), mass.range(), details, "");
  }

  private Cell thatchInAYear(Outcome outcome) {
    ThatchInAYear thatch = outcome.thatchInAYear();
    return thatch == null
        ? Cell.of(OutcomeWords.NOT_KNOWN)
        : Cell.of(units.depth(thatch.mm()), "over " + thatch.years() + " years on record");
  }

  private Cell mass(Spread gPerM2) {
    SpreadWords words = units.onArea(gPerM2);
    Double area = lawn.description().areaM2();
    return area == null
        ? Cell.of(words)
        : Cell.of(words, units.mass(gPerM2.middle() * area) + " for the lawn");
  }

  private Cell dryMatter(Outcome outcome) {
    SpreadWords words = units.onArea(outcome.dryGPerM2());
    Spread kilograms = outcome.dryKg();
    return kilograms == null
        ? Cell.of(words)
        : Cell.of(words, units.mass(1000 * kilograms.middle()) + " for the lawn");
  }
}
