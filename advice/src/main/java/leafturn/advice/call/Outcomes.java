package leafturn.advice.call;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leafturn.advice.call.CutKind.NitrogenAtFirst;
import leafturn.advice.call.Option.Outcome;
import leafturn.model.Parameters;
import leafturn.model.RandomStream;
import leafturn.model.clippings.CutQuality.Stalks;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ProgrammeKeeper;
import org.jspecify.annotations.Nullable;

/** Runs plans through the possible seasons and sums up what they did. */
final class Outcomes {
  /** The same draws for every choice, so that choices differ by what they are. */
  private static final long SIGHT_SEED = 20_261_125;

  /** Seasons from which a fourth of them still makes a range. */
  private static final int LEAST_FOR_A_FOURTH = 160;

  private final Lawn lawn;
  private final LawnToday today;
  private final List<PossibleSeason> seasons;
  private final Prospect prospect;
  private final Work work;
  private final Sinking sinking;
  private final OwnSight ownSight;
  private final YearAhead yearAhead;
  private final @Nullable Stalks stalks;
  private boolean beyondTheRun;

  Outcomes(
      Lawn lawn,
      LawnToday today,
      List<PossibleSeason> seasons,
      Prospect prospect,
      YearAhead yearAhead) {
    this.lawn = lawn;
    this.today = today;
    this.seasons = seasons;
    this.prospect = prospect;
    this.work = new Work(lawn.ground(), prospect.rules());
    this.ownSight = prospect.known().ownSight();
    this.sinking = Sinking.of(prospect.rules());
    this.yearAhead = yearAhead;
    this.stalks = prospect.known().stalks();
  }

  /** What a plan would do. */
  Outcome of(Plan plan) {
    return of(plan, 1);
  }

  /** What a plan beside the main ones would do, over every fourth of the possible seasons. */
  Outcome roughlyOf(Plan plan) {
    return of(plan, seasons.size() >= LEAST_FOR_A_FOURTH ? 4 : 1);
  }

  private Outcome of(Plan plan, int every) {
    List<PlanRun> runs =
        IntStream.range(0, seasons.size())
            .filter(season -> season % every == 0)
            .mapToObj(season -> run(plan, season))
            .toList();
    Spread dry = spread(runs, PlanRun::dryG);
    boolean returned = plan.returned();
    Spread carried = returned ? null : work.bags(spread(runs, run -> carriedG(plan, run)));
    Spread nitrogen = spread(runs, PlanRun::nitrogenG);
    return new Outcome(
        plan.inSteps() ? plan.largestTaken(prospect) : spread(runs, PlanRun::takenFraction),
        dry,
        work.dryKg(dry),
        work.freshKg(dry),
        work.litres(dry),
        returned ? Spread.exactly(0) : carried,
        plan.collected() ? Spread.exactly(0) : clumpIndex(plan, runs, every),
        returned ? reached(runs, PlanRun::daysToHalf, WeatherToCome.LONGEST_DAYS) : null,
        returned ? reached(runs, PlanRun::daysToNineTenths, WeatherToCome.LONGEST_DAYS) : null,
        nitrogen,
        spread(runs, PlanRun::phosphorusG),
        spread(runs, PlanRun::potassiumG),
        share(nitrogen, Outcomes::nitrogenGPerM2),
        collectedFraction(plan, runs),
        spread(runs, PlanRun::thatchChangeMm),
        spread(runs, PlanRun::leachedNGPerM2),
        work.minutes(passes(plan), carried),
        reached(runs, PlanRun::nextMowDay, WeatherToCome.DAYS),
        kind(runs),
        returned ? inSight(runs) : null,
        yearAhead.thatch(returned),
        share(spread(runs, PlanRun::phosphorusG), Programme.Feeding::pGPerM2),
        share(spread(runs, PlanRun::potassiumG), Programme.Feeding::kGPerM2),
        ofTheLawn(runs));
  }

  private Option.@Nullable Nutrients ofTheLawn(List<PlanRun> runs) {
    Double areaM2 = lawn.ground().areaM2();
    return areaM2 == null
        ? null
        : new Option.Nutrients(
            spread(runs, PlanRun::nitrogenG).times(areaM2),
            spread(runs, PlanRun::phosphorusG).times(areaM2),
            spread(runs, PlanRun::potassiumG).times(areaM2));
  }

  /** An element of the clippings over the year's feed of it, or null where none is fed. */
  private @Nullable Spread share(Spread gPerM2, ToDoubleFunction<Programme.Feeding> fedGPerM2) {
    double feed = lawn.programme().feedings().stream().mapToDouble(fedGPerM2).sum();
    return feed > 0 ? gPerM2.times(1 / feed) : null;
  }

  private PlanRun run(Plan plan, int season) {
    DaysAhead.Season days = prospect.seasons().get(season);
    double times = ownSight.drawn(new RandomStream(SIGHT_SEED, season).normal());
    ClippingsLeft left =
        new ClippingsLeft(
            seasons.get(season).equations().parameters(),
            chopped(plan).slower(times),
            day -> wet(plan, days, day),
            stalks);
    ProgrammeKeeper programme =
        new ProgrammeKeeper(
            lawn.programme(),
            seasons.get(season).equations(),
            prospect.rules().threshold(CallRule.ONE_THIRD));
    return PlanRun.of(today, programme, plan, seasons.get(season), left);
  }

  private Sinking chopped(Plan plan) {
    return prospect.passes().second(plan)
        ? sinking.chopped(prospect.rules().threshold(CallRule.SECOND_PASS_FACTOR))
        : sinking;
  }

  private @Nullable InSightFor inSight(List<PlanRun> runs) {
    Spread days = reached(runs, PlanRun::daysToUnseen, WeatherToCome.LONGEST_DAYS);
    return days == null ? null : new InSightFor(days, ownSight);
  }

  private CutKind kind(List<PlanRun> runs) {
    Spread lignin = spread(runs, run -> run.meanOf(PlanKeeper.Kind::ligninFraction));
    boolean cut = runs.stream().allMatch(run -> run.nitrogenG() > 0);
    Parameters parameters = today.equations().parameters();
    Spread carbon = cut ? spread(runs, run -> run.carbonPerNitrogen(parameters.get("cC"))) : null;
    boolean ownQuality = parameters.get("qual") == 1;
    return new CutKind(
        carbon,
        carbon == null ? null : NitrogenAtFirst.of(carbon.middle(), prospect.rules()),
        ownQuality ? lignin : null,
        ownQuality ? spread(runs, run -> run.meanOf(PlanKeeper.Kind::leafAgeDays)) : null,
        spread(runs, run -> run.meanOf(PlanKeeper.Kind::lengthMm)));
  }

  /** True when some outcome lay beyond the days that were run and stands at their end. */
  boolean beyondTheRun() {
    return beyondTheRun;
  }

  /** Dry clippings of the cuts that are collected, g/m2. */
  private static double carriedG(Plan plan, PlanRun run) {
    double sum = 0;
    for (int cut = 0; cut < run.cuts().size(); cut++) {
      sum += (1 - plan.cuts().get(cut).returnedShare()) * run.cuts().get(cut).dryG();
    }
    return sum;
  }

  /** Share of the dry clippings that is collected, over all seasons. */
  private static double collectedFraction(Plan plan, List<PlanRun> runs) {
    if (plan.returned() || plan.collected()) {
      return plan.returned() ? 0 : 1;
    }
    double carried = runs.stream().mapToDouble(run -> carriedG(plan, run)).sum();
    return carried / runs.stream().mapToDouble(PlanRun::dryG).sum();
  }

  private static int passes(Plan plan) {
    return plan.choice() == Choice.DOUBLE_PASS ? 2 : plan.cuts().size();
  }

  private Spread clumpIndex(Plan plan, List<PlanRun> runs, int every) {
    double[] indices = new double[runs.size()];
    for (int run = 0; run < indices.length; run++) {
      DaysAhead.Season season = prospect.seasons().get(run * every);
      List<PlanKeeper.CutMade> cuts = runs.get(run).cuts();
      for (int cut = 0; cut < cuts.size(); cut++) {
        double lies = plan.cuts().get(cut).returnedShare() * cuts.get(cut).dryG();
        double index =
            prospect.clumpIndex(
                lies, wet(plan, season, cuts.get(cut).day()), plan.choice() == Choice.DOUBLE_PASS);
        indices[run] = Math.max(indices[run], index);
      }
    }
    return Spread.of(indices);
  }

  /**
   * Later today the leaves are dry, whatever they are now; a day whose weather nobody knows yet,
   * and a later step, wait for dry leaves.
   */
  private boolean wet(Plan plan, DaysAhead.Season season, int day) {
    boolean leavesWetNow = day == 0 && plan.choice() == Choice.MOW_AND_RETURN;
    return (leavesWetNow && prospect.wetNow())
        || (day == plan.day() && prospect.wet(day) && prospect.leaves().in(season, day));
  }

  private static double nitrogenGPerM2(Programme.Feeding feeding) {
    return feeding.fastNGPerM2() + feeding.slowNGPerM2();
  }

  private static Spread spread(List<PlanRun> runs, ToDoubleFunction<PlanRun> quantity) {
    return Spread.of(runs.stream().mapToDouble(quantity).toArray());
  }

  /**
   * Days until something happened; null when it did not in half of the seasons or more, and the end
   * of the run where it did not in some.
   */
  private @Nullable Spread reached(
      List<PlanRun> runs, ToDoubleFunction<PlanRun> days, int lastDay) {
    double[] reached = runs.stream().mapToDouble(days).toArray();
    int missing = 0;
    for (int run = 0; run < reached.length; run++) {
      if (reached[run] < 0) {
        reached[run] = lastDay;
        missing++;
      }
    }
    if (2 * missing >= reached.length) {
      return null;
    }
    beyondTheRun |= missing > 0;
    return Spread.of(reached);
  }
}
