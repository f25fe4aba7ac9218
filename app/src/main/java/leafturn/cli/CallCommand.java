package leafturn.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.advice.call.Asked;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.NoCallException;
import leafturn.advice.call.SeasonsAsked;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.quantity.Units;
import leafturn.records.ForecastFile;
import leafturn.records.InputException;
import leafturn.records.LawnReading;
import leafturn.records.LogFile;
import leafturn.records.LogReading;
import leafturn.records.SourceText;
import leafturn.records.WeatherReading;
import leafturn.records.exchange.LoggedSheets;
import leafturn.records.round.KnownOfFiles;
import leafturn.records.sheet.LogSheet;
import leafturn.reports.CallText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Makes the call for a lawn and a day. */
@Command(
    name = "call",
    description = {
      "Advice for one lawn and day: whether to mow, and whether the clippings are returned or"
          + " collected, with reasons and with what each choice would do.",
      ""
    },
    footer = {
      "",
      "Example: leafturn call linden-house-front.lawn.json --weather new-york-2012-2015.csv"
          + " --log linden-house-front.log.csv --on 2015-05-28"
    })
final class CallCommand implements Callable<Integer> {
  @Mixin private final LawnOptions files = new LawnOptions();

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description =
          "What was done to the lawn, a CSV file; without it the lawn was kept by its programme.")
  private @Nullable Path logFile;

  @Option(
      names = "--on",
      required = true,
      paramLabel = "DATE",
      description = "The day of the advice, for instance 2015-05-28.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private LocalDate on;

  @Option(
      names = "--rule",
      paramLabel = "NAME=VALUE",
      converter = RuleSetting.Reader.class,
      description =
          "Sets the threshold of a rule or a figure, for instance clump-limit-dry=35; may be given"
              + " several times, once for each rule.")
  private final List<RuleSetting> rules = new ArrayList<>();

  @Option(
      names = "--forecast",
      paramLabel = "FILE",
      description =
          "A forecast for the first days that the record does not hold, a CSV file; the possible"
              + " seasons follow it and trust it less by the day.")
  private @Nullable Path forecastFile;

  @Option(
      names = "--members",
      paramLabel = "N",
      defaultValue = "200",
      description = "Number of possible seasons, 1 to 2000 (default: ${DEFAULT-VALUE}).")
  private int members;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description =
          "Seed of the possible seasons; the same one gives the same answer (default:"
              + " ${DEFAULT-VALUE}).")
  private long seed;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    Optional<LawnReading> lawnRead = inputs.read(files::read);
    Optional<WeatherReading> weatherRead = inputs.read(files::readWeather);
    Optional<Log> logRead = inputs.read(this::log);
    Optional<CallRules> rulesRead = inputs.read(this::rules);
    Optional<SeasonsAsked> seasonsRead = inputs.read(this::seasons);
    inputs.throwIfAny();
    LawnReading lawn = lawnRead.orElseThrow();
    WeatherReading record = weatherRead.orElseThrow();
    Log log = logRead.orElseThrow();
    List<String> notes = new ArrayList<>(lawn.notes());
    notes.addAll(record.notes());
    notes.addAll(log.notes());
    SeasonsAsked seasons = seasonsRead.orElseThrow();
    checkForecast(record, seasons);
    Call call = made(lawn, record, log, rulesRead.orElseThrow(), seasons).noting(notes);
    printing.print(() -> call, () -> CallText.of(call));
    return ExitCode.DONE;
  }

  private Call made(
      LawnReading lawn, WeatherReading record, Log log, CallRules rules, SeasonsAsked seasons) {
    try {
      SiteClimate climate = new SiteClimate(record.series(), lawn.lawn().site());
      Circumstances known = KnownOfFiles.of(lawn.known(), log.sheets(), on);
      Asked asked = new Asked(on, rules, Units.METRIC, known).over(seasons);
      return MowingCall.of(lawn.lawn(), climate, log.entries(), asked);
    } catch (NoCallException impossible) {
      throw new InputException(files.weatherFile() + ": " + impossible.getMessage() + ".");
    }
  }

  private SeasonsAsked seasons() {
    WeatherForecast forecast = forecastFile == null ? null : ForecastFile.read(forecastFile);
    try {
      return new SeasonsAsked(members, seed, forecast);
    } catch (IllegalArgumentException wrong) {
      throw new InputException("--members: " + wrong.getMessage() + ".");
    }
  }

  private void checkForecast(WeatherReading record, SeasonsAsked seasons) {
    WeatherForecast forecast = seasons.forecast();
    boolean known = !on.isAfter(record.series().lastDay());
    if (forecast != null) {
      forecast
          .faultFrom(known ? on.plusDays(1) : on, on)
          .ifPresent(
              fault -> {
                throw new InputException(forecastFile + ": " + fault + ".");
              });
    }
  }

  /**
   * @param sheets all that the file tells
   * @param notes what a reader of the results must know
   */
  private record Log(List<LogSheet> sheets, List<String> notes) {
    List<LogEntry> entries() {
      return sheets.stream().flatMap(sheet -> sheet.forModel().stream()).toList();
    }
  }

  private Log log() {
    if (logFile == null) {
      return new Log(List.of(), List.of());
    }
    SourceText text = SourceText.read(logFile, LogFile.LIMIT_BYTES);
    LogReading read = LogFile.read(text);
    return new Log(LoggedSheets.read(text), read.notes());
  }

  private CallRules rules() {
    try {
      return CallRules.standard().with(RuleSetting.thresholds(rules));
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          String.valueOf(wrong.getMessage())
              .lines()
              .map(fault -> "--rule: " + fault + ".")
              .toList());
    }
  }
}
