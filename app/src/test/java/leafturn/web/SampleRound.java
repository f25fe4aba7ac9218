package leafturn.web;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Choice;
import leafturn.advice.call.CutKind;
import leafturn.advice.call.InSightFor;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.Option;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.OwnSight;
import leafturn.advice.call.Particulars;
import leafturn.advice.call.PossibleSeasons;
import leafturn.advice.call.Reason;
import leafturn.advice.call.RoundOfLawns;
import leafturn.advice.call.Spread;
import leafturn.advice.call.ThatchInAYear;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/** An invented round with made-up calls, to render pages with before and beside real ones. */
public final class SampleRound {
  static final LocalDate TODAY = LocalDate.of(2015, 5, 29);

  private static final PossibleSeasons SEASONS =
      new PossibleSeasons(29, 42, "the days after 29 May in each year from 1986 to 2014");

  private SampleRound() {}

  /** Five lawns: to mow, to wait, to collect, to cut twice, and one to leave alone. */
  public static RoundOfLawns get() {
    return new RoundOfLawns(
        "Maud Ellery",
        TODAY,
        "daily record of New York, Central Park (NOAA GHCN-Daily)",
        "A demonstration: the adviser, the properties and the logs are invented.",
        List.of(leave(), waitForDry(), twice(), collect(), mow()),
        List.of());
  }

  private static LawnOnRound waitForDry() {
    Call call =
        call(
            Choice.WAIT_AND_RETURN,
            "Mow tomorrow once it is dry, and return the clippings.",
            new Spread(3, 5, 7),
            today(98, 76, true),
            new SampleSeason(76, 4.2, 9, 0, 1, 1));
    return new LawnOnRound(
        "sallow-house-south",
        "Sallow House",
        "South lawn",
        new LawnOnRound.Description(
            "tall fescue",
            640.0,
            "sandy loam, 5 % organic matter",
            "mown at a third, returned when dry",
            "from an assumed start"),
        "Mown on 22 May, returned",
        call);
  }

  private static LawnOnRound mow() {
    Call call =
        call(
            Choice.MOW_AND_RETURN,
            "Mow today and return the clippings.",
            new Spread(0, 1, 2),
            today(69, 51, false),
            new SampleSeason(51, 3.4, 8, 1));
    return new LawnOnRound(
        "quill-lodge-drying-green",
        "Quill Lodge",
        "Drying green",
        new LawnOnRound.Description(
            "kentucky bluegrass",
            210.0,
            "silt loam, 4 % organic matter",
            "mown weekly, always returned",
            "from an assumed start"),
        "Mown on 22 May, returned",
        call);
  }

  private static LawnOnRound collect() {
    Call call =
        call(
            Choice.MOW_AND_COLLECT,
            "Mow today and collect: it is too long and too wet to return.",
            new Spread(0, 0, 0),
            today(104, 60, true),
            new SampleSeason(60, 4.6, 14, 0, 0));
    return new LawnOnRound(
        "three-gates-orchard",
        "Three Gates",
        "Orchard strip",
        new LawnOnRound.Description(
            "perennial ryegrass",
            1450.0,
            "clay loam, 6 % organic matter",
            "mown every other week, collected",
            "from an assumed start"),
        "Mown on 15 May, collected",
        call);
  }

  private static LawnOnRound twice() {
    Call call =
        call(
            Choice.RAISE_AND_CUT_TWICE,
            "Raise the deck to 50 mm today, and cut to 38 mm on Tuesday; return both.",
            new Spread(0, 2, 3),
            today(58, 38, false),
            new SampleSeason(38, 2.8, 10, 1, 0, 0.5));
    return new LawnOnRound(
        "tern-cottage-front",
        "Tern Cottage",
        "Front lawn",
        new LawnOnRound.Description(
            "perennial ryegrass",
            88.0,
            "loamy sand, 2 % organic matter",
            "mown short, mostly returned",
            "from an assumed start"),
        "Mown on 19 May, collected",
        call);
  }

  private static LawnOnRound leave() {
    Call call =
        call(
            Choice.LEAVE_ALONE,
            "Leave it: the grass stands below its cut height.",
            null,
            today(24, 25, false),
            new SampleSeason(25, 1.2, 12, 1));
    return new LawnOnRound(
        "tern-cottage-back",
        "Tern Cottage",
        "Back lawn",
        new LawnOnRound.Description(
            "bermudagrass",
            null,
            "sand, 1 % organic matter",
            "mown when it needs it",
            "from an assumed start"),
        "",
        call);
  }

  private static Call.Today today(double heightMm, double cutHeightMm, boolean wet) {
    return new Call.Today(
        heightMm, cutHeightMm, 11, 0.14, 0.71, 45, 120, wet, TODAY.minusDays(7), true);
  }

  private static Call call(
      Choice choice,
      String sentence,
      @Nullable Spread mowBy,
      Call.Today today,
      SampleSeason season) {
    return new Call(
        TODAY,
        choice,
        choice == Choice.LEAVE_ALONE ? null : TODAY,
        sentence,
        reasons(),
        choice == Choice.LEAVE_ALONE ? List.of() : options(choice),
        mowBy,
        List.of(
            "Seed heads of annual bluegrass: then collect.",
            "Rain again tomorrow: then mow on Monday.",
            "No time before Wednesday: then cut twice, or collect."),
        List.of(
            "Wet grass is slippery: mow across slopes on foot, and stop the engine before clearing the chute."),
        List.of("Two days of wind are missing from the record; the model took the month’s mean."),
        today,
        season.outlook(TODAY, today.heightMm()),
        SEASONS,
        List.of(),
        Call.Limits.of(CallRules.standard()),
        Units.METRIC,
        Particulars.NONE);
  }

  private static List<Reason> reasons() {
    return List.of(
        new Reason(
            "one-third",
            "28 % of the height",
            "comes off tomorrow (105 mm to 76). A third is reached on Wednesday.",
            "limit 33 %",
            "Crider 1955, as used by extension",
            "published",
            false),
        new Reason(
            "wet",
            "Wet today",
            "Rain this morning; likely dry from about eleven tomorrow. Wet, this much would lie in clumps.",
            "limit 20 g/m² wet",
            "our judgement",
            "assumed",
            true),
        new Reason(
            "breakdown",
            "Half gone in three weeks",
            "A short, thin cut sinks into the turf; half of it has broken down in about three weeks.",
            "no limit",
            "Kopp & Guillard 2004, litter bags",
            "published",
            false));
  }

  private static List<Option> options(Choice best) {
    return List.of(
        option(
            Choice.MOW_AND_RETURN,
            "Now, return",
            best,
            "grass is wet",
            outcome(0.25, 15, 1.35, true)),
        option(
            Choice.MOW_AND_COLLECT,
            "Now, collect",
            best,
            "4 bags to place",
            outcome(0.25, 15, 0, false)),
        option(
            Choice.WAIT_AND_RETURN,
            "Tomorrow once dry, return",
            best,
            "",
            outcome(0.28, 17, 0.62, true)),
        option(
            Choice.RAISE_AND_CUT_TWICE,
            "Raise to 90 mm tomorrow, 76 mm on Thursday",
            best,
            "two passes",
            outcome(0.14, 18, 0.4, true)));
  }

  private static Option option(
      Choice choice, String title, Choice best, String remark, Outcome outcome) {
    return new Option(choice, title, TODAY, choice == best, remark, outcome);
  }

  private static Outcome outcome(double height, double dry, double clumps, boolean stay) {
    return new Outcome(
        around(height, 0.07),
        around(dry, 0.12),
        around(dry * 0.64, 0.12),
        around(dry * 0.64 * 4, 0.15),
        around(dry * 13, 0.2),
        around(dry * 13 / 55, 0.2),
        around(clumps, 0.3),
        stay ? around(20, 0.15) : null,
        stay ? around(84, 0.18) : null,
        around(dry * 0.042, 0.12),
        around(dry * 0.0042, 0.12),
        around(dry * 0.024, 0.12),
        around(dry * 0.042 / 14.7, 0.12),
        stay ? 0 : 1,
        stay ? new Spread(-0.04, 0.06, 0.15) : new Spread(-0.09, -0.02, 0.05),
        around(stay ? 0.21 : 0.17, 0.4),
        around(stay ? 24 : 38, 0.06),
        new Spread(9, 11, 14),
        new CutKind(
            around(11, 0.1),
            CutKind.NitrogenAtFirst.FREED,
            around(0.034, 0.1),
            around(3.4, 0.2),
            around(dry * 1.6, 0.12)),
        stay ? new InSightFor(around(7, 0.3), new OwnSight(1.2, 0.3, 2)) : null,
        new ThatchInAYear(new Spread(12.6, 12.9, 13.3), 12),
        null,
        null,
        null);
  }

  private static Spread around(double middle, double shareEitherSide) {
    return new Spread(middle * (1 - shareEitherSide), middle, middle * (1 + shareEitherSide));
  }
}
