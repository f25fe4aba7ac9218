package leafturn.records.round;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import leafturn.advice.call.Asked;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.NoCallException;
import leafturn.advice.call.SeasonsAsked;
import leafturn.advice.call.SharedSeasons;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnDocument;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.sheet.VisitSheet;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/** Makes the calls for the lawns of a book from its sheets. */
final class LawnCalls {
  /** Sites whose possible seasons are kept at a time, a few megabytes each. */
  /** The entries that can be replayed: what lies before the record begins no log. */
  private static List<LogSheet> since(LocalDate firstDay, List<LogSheet> log) {
    return log.stream().filter(entry -> !entry.day().isBefore(firstDay)).toList();
  }

  private static final int SITES_AT_WORK = 6;

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private final Book book;
  private final Climates climates;
  private final SharedSeasons seasons = SharedSeasons.keeping(SITES_AT_WORK);

  LawnCalls(Book book, Climates climates) {
    this.book = book;
    this.climates = climates;
  }

  /** What is read from the book for a call, all of one moment. */
  private record Read(
      @Nullable ProgrammeSheet programme,
      List<ProgrammeSheet> earlier,
      List<LogSheet> log,
      VisitHeights visits,
      Circumstances circumstances,
      CallRules rules,
      StationWeather weather,
      SoilStart soil,
      @Nullable ForecastSheet forecast) {}

  /**
   * The call for a lawn by the book's rules, or why there is none.
   *
   * @param units the units of its reader
   * @param revision revision of its station when the lawn was looked up
   */
  LawnOutcome of(PlacedLawn placed, LocalDate on, Units units, long revision) {
    return of(placed, on, units, revision, Otherwise.byRules(LawnCalls::rules));
  }

  /**
   * What a call is made by besides the sheets of its lawn.
   *
   * @param rules gives the rules
   * @param known changes what is known of the lawn
   */
  record Otherwise(Function<BookReading, CallRules> rules, UnaryOperator<Circumstances> known) {
    static Otherwise byRules(Function<BookReading, CallRules> rules) {
      return new Otherwise(rules, UnaryOperator.identity());
    }

    /** By the book's rules, with a first cut on one day only; further ones on the usual days. */
    static Otherwise firstOn(LocalDate day) {
      return new Otherwise(
          LawnCalls::rules, known -> known.withVisits(known.visits().firstOn(day)));
    }
  }

  /**
   * The call for a lawn, or why there is none.
   *
   * @param by what it is made by
   */
  LawnOutcome of(PlacedLawn placed, LocalDate on, Units units, long revision, Otherwise by) {
    Sheet<WeatherStation> station = placed.station();
    if (station == null) {
      return LawnOutcome.notCalled(placed, StationWeather.NONE);
    }
    try {
      Read read =
          book.read(
              reading -> {
                List<Sheet<ProgrammeSheet>> programmes =
                    reading.ofLawn(Kind.PROGRAMME, placed.lawn().id());
                ProgrammeSheet programme = ProgrammeInForce.on(on, programmes);
                List<LogSheet> log = log(reading, placed.lawn().id());
                StationWeather weather = climates.of(reading, station, revision, on.minusDays(1));
                return new Read(
                    programme,
                    ProgrammeInForce.before(on, programmes),
                    log,
                    new VisitHeights(
                        visits(reading, placed.lawn().id()), since(weather.firstDay(), log)),
                    by.known().apply(KnownOfLawn.of(reading, placed, programme, log, on)),
                    by.rules().apply(reading),
                    weather,
                    SoilStart.of(reading, placed.lawn(), weather.firstDay(), on),
                    Forecasts.latest(reading, station.id(), on).map(Sheet::content).orElse(null));
              });
      return new LawnOutcome.Called(called(placed, station, read, on, units));
    } catch (InputException wrong) {
      return LawnOutcome.notCalled(placed, wrong.faultsByField().get(0).placed());
    } catch (NoCallException impossible) {
      return LawnOutcome.notCalled(
          placed, "No advice can be given: " + impossible.getMessage() + ".");
    }
  }

  /** The thresholds that the book sets, by rule name. */
  static Map<String, Double> thresholds(BookReading reading) {
    Map<String, Double> thresholds = new HashMap<>();
    reading.all(Kind.RULE).forEach(rule -> thresholds.putAll(rule.content().thresholds()));
    return thresholds;
  }

  private static List<LogSheet> log(BookReading reading, String lawn) {
    return reading.ofLawn(Kind.LOG, lawn).stream().map(Sheet::content).toList();
  }

  private static List<VisitSheet> visits(BookReading reading, String lawn) {
    return reading.ofLawn(Kind.VISIT, lawn).stream().map(Sheet::content).toList();
  }

  private LawnOnRound called(
      PlacedLawn placed, Sheet<WeatherStation> station, Read read, LocalDate on, Units units) {
    LawnSheet sheet = placed.lawn().content();
    Function<@Nullable ProgrammeSheet, LawnReading> keptBy =
        programme ->
            LawnFile.read(
                LawnDocument.compose(
                    placed.property().content(),
                    station.content(),
                    sheet,
                    programme,
                    read.soil().soil()));
    LawnReading described = keptBy.apply(read.programme());
    Lawn lawn = described.lawn().keptBefore(earlier(read, keptBy));
    List<String> notes = new ArrayList<>(described.notes());
    sheet.mixtureNote().ifPresent(notes::add);
    notes.addAll(read.soil().notes());
    notes.addAll(read.weather().notes());
    notes.addAll(read.visits().notes(on));
    List<LogEntry> log =
        Stream.concat(
                read.log().stream().flatMap(entry -> entry.forModel().stream()),
                read.visits().entries().stream())
            .toList();
    Asked asked = new Asked(on, read.rules(), units, read.circumstances());
    ToCall toCall = new ToCall(lawn, read.weather().at(lawn.site()), log, asked);
    Call call = following(read.forecast(), toCall, notes);
    return new LawnOnRound(
        placed.address(),
        placed.property().content().name(),
        sheet.name(),
        LawnWords.description(lawn, sheet, read.soil().words(), units),
        LawnWords.lastEntry(log, on, units),
        call.noting(notes));
  }

  /** How the lawn was kept before its present programme began. */
  private static List<Lawn.Earlier> earlier(
      Read read, Function<@Nullable ProgrammeSheet, LawnReading> keptBy) {
    List<ProgrammeSheet> sheets = new ArrayList<>(read.earlier());
    if (read.programme() != null) {
      sheets.add(read.programme());
    }
    List<Lawn.Earlier> earlier = new ArrayList<>();
    for (int i = 0; i < read.earlier().size(); i++) {
      LocalDate until = sheets.get(i + 1).from();
      earlier.add(new Lawn.Earlier(keptBy.apply(sheets.get(i)).lawn().programme(), until));
    }
    return earlier;
  }

  /** All that a call is made from but its possible seasons. */
  private record ToCall(Lawn lawn, SiteClimate climate, List<LogEntry> log, Asked asked) {}

  /** The call over possible seasons that follow a forecast, where there is one of use. */
  private Call following(@Nullable ForecastSheet forecast, ToCall toCall, List<String> notes) {
    LocalDate on = toCall.asked().on();
    if (forecast == null) {
      return made(toCall, toCall.asked());
    }
    if (forecast.last().isBefore(on)) {
      notes.add(
          "The last forecast (%s) ended on %s: the possible seasons follow none."
              .formatted(forecast.origin(), DATE.format(forecast.last())));
      return made(toCall, toCall.asked());
    }
    SeasonsAsked usual = toCall.asked().seasons();
    SeasonsAsked following =
        new SeasonsAsked(usual.count(), usual.seed(), Forecasts.forModel(forecast));
    try {
      Call call = made(toCall, toCall.asked().over(following));
      notes.add(
          "Until %s the possible seasons follow the forecast of %s (%s), less by the day."
              .formatted(
                  DATE.format(forecast.last()), DATE.format(forecast.issued()), forecast.origin()));
      return call;
    } catch (NoCallException notOfUse) {
      Call call = made(toCall, toCall.asked());
      notes.add("The forecast is not followed: " + notOfUse.getMessage() + ".");
      return call;
    }
  }

  private Call made(ToCall toCall, Asked asked) {
    return MowingCall.of(toCall.lawn(), toCall.climate(), toCall.log(), asked, seasons);
  }

  /** The rules of the book, each changed one with the reason that was typed for it. */
  private static CallRules rules(BookReading reading) {
    Map<String, String> reasons = new HashMap<>();
    reading
        .all(Kind.RULE)
        .forEach(rule -> reasons.put(rule.content().rule(), rule.content().reason()));
    return rules(thresholds(reading)).saying(reasons);
  }

  /**
   * The standard rules with other thresholds.
   *
   * @throws InputException when two of them are out of order
   */
  static CallRules rules(Map<String, Double> thresholds) {
    try {
      return CallRules.standard().with(thresholds);
    } catch (IllegalArgumentException wrong) {
      throw new InputException("The rules of the book: " + wrong.getMessage() + ".");
    }
  }
}
