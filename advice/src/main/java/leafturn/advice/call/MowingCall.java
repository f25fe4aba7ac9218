package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leafturn.advice.call.Weighing.Weighed;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * Makes the call for a lawn and a day: replays the log, runs each choice through the possible
 * seasons, weighs them by the rules, and says what to do and why.
 *
 * <p>The day of the call counts as known when the record holds it (as its forecast or its
 * measurement); mowing comes after the day's growth. Entries of that day count as done. Nothing
 * that the record holds of the 365 days after it enters, unless there is no other year.
 */
public final class MowingCall {
  private final Lawn lawn;
  private final LawnToday today;
  private final WeatherToCome toCome;
  private final Prospect prospect;
  private final Weighing weighing;
  private final Outcomes outcomes;
  private final Answer answer;
  private final Choices choices;
  private final CallNotes notes;

  private MowingCall(
      Lawn lawn, LawnToday today, WeatherToCome toCome, Prospect prospect, Outcomes outcomes) {
    this.lawn = lawn;
    this.today = today;
    this.toCome = toCome;
    this.prospect = prospect;
    this.notes = new CallNotes(prospect.reader());
    this.weighing = new Weighing(prospect);
    this.outcomes = outcomes;
    this.answer = new Answer(prospect);
    this.choices = new Choices(prospect, weighing, outcomes);
  }

  private static Prospect prospect(
      Lawn lawn, LawnToday today, List<PossibleSeason> seasons, SiteClimate climate, Basis basis) {
    return new Prospect(
        lawn,
        today,
        DaysAhead.of(today, lawn.programme(), seasons),
        basis,
        MowingHours.of(today, climate, seasons, basis.asked()));
  }

  /** The weather to come, with the lawn's own parameters drawn for each season. */
  private static List<PossibleSeason> seasons(
      Lawn lawn, LawnToday today, WeatherToCome toCome, SeasonsAsked asked) {
    List<SeasonWeather> weather = toCome.seasons();
    List<LawnEquations> drawn =
        DrawnLawns.of(lawn, today.equations().parameters(), today.growth(), asked, weather.size());
    return IntStream.range(0, weather.size())
        .mapToObj(season -> new PossibleSeason(weather.get(season), drawn.get(season)))
        .toList();
  }

  /**
   * The call by the standard rules.
   *
   * @param lawn its description
   * @param weather daily record of its site
   * @param log what was done, in any order
   * @param on the day of the call, from the record's second day to the day after its end
   * @throws NoCallException when the record does not allow a call for that day
   */
  public static Call of(Lawn lawn, WeatherSeries weather, List<LogEntry> log, LocalDate on) {
    return of(lawn, new SiteClimate(weather, lawn.site()), log, on, CallRules.standard());
  }

  /**
   * The call by given rules, with the climate shared between the lawns of a site.
   *
   * @param rules the rules, perhaps with a person's own thresholds
   * @throws NoCallException when the record does not allow a call for that day
   */
  public static Call of(
      Lawn lawn, SiteClimate climate, List<LogEntry> log, LocalDate on, CallRules rules) {
    return of(lawn, climate, log, new Asked(on, rules, Units.METRIC));
  }

  /**
   * The call for a reader of given units.
   *
   * @throws NoCallException when the record does not allow a call for that day
   */
  public static Call of(Lawn lawn, SiteClimate climate, List<LogEntry> log, Asked asked) {
    return of(lawn, climate, log, asked, SharedSeasons.keeping(1));
  }

  /**
   * The call with the possible seasons shared between the lawns of a site.
   *
   * @param shared seasons made before, for this climate object and others
   * @throws NoCallException when the record does not allow a call for that day
   */
  public static Call of(
      Lawn lawn, SiteClimate climate, List<LogEntry> log, Asked asked, SharedSeasons shared) {
    LocalDate on = asked.on();
    List<LogEntry> done = log.stream().filter(entry -> !entry.day().isAfter(on)).toList();
    // What lies before the record cannot be replayed, so it does not end the programme's keeping.
    LocalDate first = climate.weather().firstDay();
    List<LogEntry> replayed = done.stream().filter(entry -> !entry.day().isBefore(first)).toList();
    LawnToday today = Replay.to(lawn, climate, replayed, on);
    WeatherToCome toCome =
        shared.after(
            new WeatherToCome.Start(climate, on, today.firstDayToCome(), today.state().soilC()),
            asked.seasons());
    CallRules own = leastGrowth(lawn, today, asked);
    Asked known = asked.with(own).with(atAnHour(asked.circumstances()));
    SeedHeads seedHeads =
        SeedHeads.of(climate, known.circumstances(), on, SeedHeads.Figures.of(own));
    boolean measured = climate.weather().indexOf(on.minusDays(1)) < climate.measuredDays();
    Basis basis = new Basis(known, new Known(known, today, done, seedHeads), measured);
    List<PossibleSeason> seasons = seasons(lawn, today, toCome, known.seasons());
    Prospect prospect = prospect(lawn, today, seasons, climate, basis);
    YearAhead yearAhead = new YearAhead(lawn, today, climate, own);
    Outcomes outcomes = new Outcomes(lawn, today, seasons, prospect, yearAhead);
    MowingCall call = new MowingCall(lawn, today, toCome, prospect, outcomes);
    call.notes.cutHeight(lawn, prospect.cutHeightMm(), prospect.rules().third());
    call.notes.log(log, climate.weather(), on);
    call.notes.gaps(lawn, replayed, on);
    call.notes.feed(lawn, replayed);
    call.notes.corrections(today.corrections(), lawn);
    call.notes.growth(today.ownGrowth());
    call.notes.weather(lawn, today, climate, toCome);
    call.notes.seedHeads(prospect);
    call.notes.fallenLeaves(prospect.known());
    return call.made();
  }

  /**
   * A fixed depth of cut is more than a third of greens and of other turf cut low: there, what
   * comes off once a cut is due is worth a pass.
   */
  private static CallRules leastGrowth(Lawn lawn, LawnToday today, Asked asked) {
    double ownMm = today.equations().parameters().get("mincut");
    double due = asked.rules().threshold(CallRule.DUE);
    double dueMm = lawn.programme().mowing().heights().on(asked.on()) * due / (1 - due);
    return dueMm < ownMm
        ? asked.rules().unlessSet(CallRule.LEAST_GROWTH, dueMm, "a cut that is due on low turf")
        : asked.rules().unlessSet(CallRule.LEAST_GROWTH, ownMm, "the lawn's own mincut");
  }

  /** Frost seen without its hour was seen early. */
  private static Circumstances atAnHour(Circumstances circumstances) {
    return circumstances.withSightings(
        circumstances.sightings().stream()
            .map(
                seen ->
                    seen.sight() == Sight.GROUND_FROST && seen.at() == null && seen.there()
                        ? new Sighting(seen.on(), Known.MORNING, seen.sight(), true)
                        : seen)
            .toList());
  }

  private Call made() {
    Optional<CallRule> leave = weighing.leave();
    return leave.isPresent() ? left(leave.get()) : decided(weighing.best());
  }

  private Call left(CallRule rule) {
    List<Option> options = choices.options(null);
    ReasonToLeave why = new ReasonToLeave(prospect, weighing);
    Decision decision =
        new Decision(
            rule,
            Choice.LEAVE_ALONE,
            null,
            new LeaveWords(prospect).sentence(rule),
            withTheWish(
                new ReasonWriter(prospect).leave(why.rule(rule), why.day(rule)),
                options,
                Plan.mowAndReturn(0, prospect.cutHeightMm())),
            new Conditions(prospect).whenLeft(rule),
            new Cautions(prospect).whenLeft(rule),
            List.of());
    return call(decision, options, Plan.unmown());
  }

  private Call decided(Weighed best) {
    List<Option> options = choices.options(best);
    Weighed returnToday = weighing.of(Choice.MOW_AND_RETURN, 0);
    Decision decision =
        new Decision(
            null,
            best.plan().choice(),
            prospect.date(best.plan().day()),
            answer.sentence(best, weighing.returnedOn(best.plan().day())),
            reasons(best, options),
            new Conditions(prospect).of(best.plan(), returnToday),
            new Cautions(prospect).of(best.plan()),
            new Conflicts(prospect).of(best, returnToday));
    return call(decision, options, best.plan());
  }

  private record Decision(
      @Nullable CallRule left,
      Choice choice,
      @Nullable LocalDate mowOn,
      String sentence,
      List<Reason> reasons,
      List<String> wouldChange,
      List<String> cautions,
      List<String> conflicts) {}

  private Call call(Decision decision, List<Option> options, Plan plan) {
    Spread mowBy = decision.left() == CallRule.DORMANT ? null : mowBy();
    List<Option> waits = choices.waits(options);
    if (outcomes.beyondTheRun() || (mowBy != null && mowBy.high() >= WeatherToCome.DAYS)) {
      notes.beyondTheRun();
    }
    notes.description(lawn);
    notes.unknown();
    return new Call(
        today.on(),
        decision.choice(),
        decision.mowOn(),
        decision.sentence(),
        decision.reasons(),
        options,
        mowBy,
        decision.wouldChange(),
        decision.cautions(),
        notes.notes(),
        state(),
        new SeasonOutlook(prospect).outlook(),
        toCome.described(),
        waits,
        Call.Limits.of(prospect.rules()),
        prospect.reader().units(),
        new Beside(prospect, weighing, decision.left()).of(plan, decision.conflicts()));
  }

  private List<Reason> reasons(Weighed best, List<Option> options) {
    Option.Outcome outcome =
        options.stream().filter(Option::best).map(Option::outcome).findFirst().orElse(null);
    Returned returned =
        new Returned(weighing.of(Choice.MOW_AND_RETURN, 0), weighing.returnedOn(best.plan().day()));
    List<Reason> reasons = new ArrayList<>(new ReasonWriter(prospect).of(best, returned, outcome));
    new StepsNotTaken(prospect, weighing).reason(best).ifPresent(reasons::add);
    new DroughtLook(prospect).reason(best.plan()).ifPresent(reasons::add);
    return withTheWish(reasons, options, best.plan());
  }

  /**
   * With what it costs to return and to collect, for a client who wants no clippings carried in.
   */
  private List<Reason> withTheWish(List<Reason> told, List<Option> options, Plan plan) {
    List<Reason> reasons = new ArrayList<>(told);
    if (prospect.known().facts().wishes().noClippings()) {
      new WishWords(prospect, options, outcomes).reason(plan).ifPresent(reasons::add);
    }
    return reasons;
  }

  /** Days until a third of the height would come off; null when that is not in sight. */
  private @Nullable Spread mowBy() {
    double third = prospect.rules().threshold(CallRule.ONE_THIRD);
    double[] days = new double[prospect.seasons().size()];
    int reached = 0;
    for (int season = 0; season < days.length; season++) {
      double day =
          prospect.seasons().get(season).daysToHeight(prospect.cutHeightMm() / (1 - third));
      days[season] = Double.isNaN(day) ? WeatherToCome.DAYS : day;
      reached += Double.isNaN(day) ? 0 : 1;
    }
    return 2 * reached > days.length ? Spread.of(days) : null;
  }

  private Call.Today state() {
    double[] stores = today.state().stores();
    return new Call.Today(
        today.heightMm(),
        prospect.cutHeightMm(),
        today.equations().thatchMm(stores),
        today.equations().clippingsShareOfThatch(stores),
        today.soilWaterFraction(),
        today.equations().soilPhosphorusPpm(stores),
        today.equations().soilPotassiumPpm(stores),
        prospect.wet(0),
        prospect.known().lastMown(today.lastMown()),
        prospect.known().mowingLogged(today.lastMown()));
  }
}
