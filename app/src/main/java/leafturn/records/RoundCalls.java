package leafturn.records;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.NoCallException;
import leafturn.advice.call.RoundOfLawns;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;

/** Makes the calls of a round from its files; lawns of one site share their climate. */
public final class RoundCalls {
  private static final String EXAMPLES = "/leafturn/examples/";
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);

  private final RoundFile.Round round;
  private final Function<String, SourceText> files;
  private final WeatherReading weather;
  private final Map<Site, SiteClimate> climates = new HashMap<>();

  private RoundCalls(RoundFile.Round round, Function<String, SourceText> files) {
    this.round = round;
    this.files = files;
    this.weather =
        WeatherFile.read(files.apply(round.weather()), new WeatherFile.Choice(round.site(), false));
  }

  /** The invented round that comes with the program, called on its own day. */
  public static RoundOfLawns ofTheExamples() {
    Function<String, SourceText> files = name -> SourceText.ofResource(EXAMPLES + name);
    return of(RoundFile.read(files.apply("round.json")), files);
  }

  /**
   * The calls of a round.
   *
   * @param files gives the round's files by their names
   * @throws InputException when a file has faults or the weather does not allow a call
   */
  public static RoundOfLawns of(RoundFile.Round round, Function<String, SourceText> files) {
    RoundCalls calls = new RoundCalls(round, files);
    return new RoundOfLawns(
        round.adviser(),
        round.day(),
        round.weatherOrigin(),
        round.standing(),
        round.lawns().stream().map(calls::lawn).toList());
  }

  private LawnOnRound lawn(RoundFile.Entry entry) {
    LawnReading reading = LawnFile.read(files.apply(entry.description()));
    LogReading log = LogFile.read(files.apply(entry.log()));
    Lawn lawn = reading.lawn();
    List<String> notes = new ArrayList<>(reading.notes());
    notes.addAll(weather.notes());
    notes.addAll(log.notes());
    return new LawnOnRound(
        entry.slug(),
        entry.property(),
        entry.lawn(),
        new LawnOnRound.Description(
            lawn.ground().grass().commonName(),
            lawn.ground().areaM2(),
            soil(lawn.ground().soil()),
            entry.habit()),
        lastEntry(log.entries(), round.day()),
        call(lawn, log.entries()).noting(notes));
  }

  private Call call(Lawn lawn, List<LogEntry> log) {
    SiteClimate climate =
        climates.computeIfAbsent(lawn.site(), site -> new SiteClimate(weather.series(), site));
    try {
      return MowingCall.of(lawn, climate, log, round.day(), CallRules.standard());
    } catch (NoCallException impossible) {
      throw new InputException(round.weather() + ": " + impossible.getMessage() + ".");
    }
  }

  private static String soil(Soil soil) {
    double heldMmPerM = 1000 * (soil.water().fieldCapacity() - soil.water().wiltingPoint());
    return String.format(
        Locale.ROOT,
        "holds %.0f mm of water for plants in a metre, %s %% organic matter",
        heldMmPerM,
        Numbers.plain(soil.test().organicMatterPercent()));
  }

  /** The last entry up to a day in words; empty when there is none. */
  static String lastEntry(List<LogEntry> log, LocalDate day) {
    LogEntry last = null;
    for (LogEntry entry : log) {
      if (!entry.day().isAfter(day) && (last == null || !entry.day().isBefore(last.day()))) {
        last = entry;
      }
    }
    return last == null ? "" : inWords(last);
  }

  private static String inWords(LogEntry entry) {
    String date = DATE.format(entry.day());
    if (entry instanceof LogEntry.Mown mown) {
      return "Mown on " + date + ", " + fate(mown.returnedShare());
    }
    return (entry instanceof LogEntry.Fed ? "Fed on " : "Watered on ") + date;
  }

  private static String fate(double returnedShare) {
    if (returnedShare == 1 || returnedShare == 0) {
      return returnedShare == 1 ? "returned" : "collected";
    }
    return String.format(Locale.ROOT, "%.0f %% returned", 100 * returnedShare);
  }
}
