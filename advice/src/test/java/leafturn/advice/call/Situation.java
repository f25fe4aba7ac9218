package leafturn.advice.call;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.quantity.Units;

/** A lawn on a day, told as an adviser tells it: grass, heights, last mowing, weather, facts. */
final class Situation {
  private static final WeatherSeries NEW_YORK = CallExamples.newYork();
  private static final Soil LOAM =
      new Soil(
          new Soil.Water(0.25, 0.12, 0.45, 61), new Soil.Test(5, 15, 1.33, 45, 120, "Mehlich-3"));

  private final Species grass;
  private final double cutMm;
  private final LocalDate on;
  private WeatherSeries weather = NEW_YORK;
  private int everyDays;
  private double irrigationShare;
  private boolean twiceOver;
  private CallRules rules = CallRules.standard();
  private SeasonsAsked seasons = SeasonsAsked.USUAL;
  private Circumstances facts = Circumstances.NONE;
  private final List<LogEntry> log = new ArrayList<>();

  private Situation(Species grass, double cutMm, LocalDate on) {
    this.grass = grass;
    this.cutMm = cutMm;
    this.on = on;
  }

  /** A lawn kept at a height, on a day of 2015. */
  static Situation of(Species grass, double cutMm, int month, int day) {
    return new Situation(grass, cutMm, LocalDate.of(2015, month, day));
  }

  LocalDate on() {
    return on;
  }

  /** Mown some days ago, and measured today. */
  Situation mown(int daysAgo, double nowMm) {
    log.add(new LogEntry.Mown(on.minusDays(daysAgo), Double.NaN, cutMm, 1));
    log.add(new LogEntry.Measured(on, nowMm));
    return this;
  }

  Situation logged(LogEntry entry) {
    log.add(entry);
    return this;
  }

  Situation every(int days) {
    everyDays = days;
    return this;
  }

  /** Watered by its programme, to a share of what the grass asks for. */
  Situation irrigated(double shareOfDemand) {
    irrigationShare = shareOfDemand;
    return this;
  }

  /** With a mower that goes over the lawn twice each time. */
  Situation twiceOver() {
    twiceOver = true;
    return this;
  }

  Situation rule(String name, double threshold) {
    rules = rules.with(Map.of(name, threshold));
    return this;
  }

  /** Dry days of a temperature in every year, from some days before to some after the day. */
  Situation dry(int before, int after, double minimumC, double maximumC) {
    for (int year = 2012; year <= 2015; year++) {
      LocalDate from = on.withYear(year).minusDays(before);
      LocalDate to = on.withYear(year).plusDays(after);
      set(Quantity.RAIN_MM, from, to, 0);
      temperatures(from, to, minimumC, maximumC);
    }
    return this;
  }

  Situation rainToday(double rainMm) {
    set(Quantity.RAIN_MM, on, on, rainMm);
    return this;
  }

  Situation rainBefore(double rainMm) {
    set(Quantity.RAIN_MM, on.minusDays(1), on.minusDays(1), rainMm);
    return this;
  }

  Situation coldToday(double minimumC, double maximumC) {
    temperatures(on, on, minimumC, maximumC);
    return this;
  }

  /** The maximum makes room for the minimum first: a day's minimum is never above it. */
  private void temperatures(LocalDate from, LocalDate to, double minimumC, double maximumC) {
    set(Quantity.MAXIMUM_C, from, to, 50);
    set(Quantity.MINIMUM_C, from, to, minimumC);
    set(Quantity.MAXIMUM_C, from, to, maximumC);
  }

  private void set(Quantity quantity, LocalDate from, LocalDate to, double value) {
    weather = CallExamples.changed(weather, quantity, from, to, value);
  }

  /** A forecast of the days from tomorrow on. */
  Situation forecast(WeatherForecast.Day... days) {
    seasons =
        new SeasonsAsked(
            SeasonsAsked.USUAL_COUNT, 1, new WeatherForecast(on.plusDays(1), List.of(days)));
    return this;
  }

  Situation facts(Circumstances known) {
    facts = known;
    return this;
  }

  Circumstances facts() {
    return facts;
  }

  Situation saw(Sighting... sightings) {
    facts =
        facts.withSightings(
            Stream.concat(facts.sightings().stream(), Stream.of(sightings)).toList());
    return this;
  }

  Call call() {
    Lawn lawn = lawn();
    return MowingCall.of(
        lawn,
        new SiteClimate(weather, lawn.site()),
        log,
        new Asked(on, rules, Units.METRIC, facts, seasons));
  }

  private Lawn lawn() {
    return new Lawn(
        Site.at(40.78, 40),
        new Lawn.Ground(grass, LOAM, 0, 640.0, new Lawn.Mower(530.0, 55.0, 4.0, twiceOver)),
        new Programme(
            new Programme.Mowing(
                cutMm,
                everyDays,
                CalendarDay.on(MonthDay.of(3, 1)),
                CalendarDay.on(MonthDay.of(12, 10)),
                1),
            List.of(
                new Programme.Feeding(CalendarDay.ofYear(100), 4.9, 0, 0, 0),
                new Programme.Feeding(CalendarDay.ofYear(245), 4.9, 0, 0, 0)),
            irrigationShare),
        2,
        Map.of());
  }

  /** All that a call says, for what must not be said. */
  static String all(Call call) {
    return Stream.of(
            Stream.of(call.sentence()),
            call.reasons().stream().map(reason -> reason.headline() + " " + reason.meaning()),
            call.wouldChange().stream(),
            call.cautions().stream(),
            call.particulars().conflicts().stream(),
            call.particulars().watering().stream(),
            Stream.of(call.particulars().placing().sentence()))
        .flatMap(text -> text)
        .collect(Collectors.joining("\n"));
  }

  /** The reason of a rule. */
  static Reason reason(Call call, String ruleId) {
    return call.reasons().stream()
        .filter(reason -> reason.ruleId().equals(ruleId))
        .findFirst()
        .orElseThrow();
  }

  static Option best(Call call) {
    return call.options().stream().filter(Option::best).findFirst().orElseThrow();
  }
}
