package leafturn.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.advice.call.Call;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.MowingCall;
import leafturn.advice.call.NoCallException;
import leafturn.model.lawn.SiteClimate;
import leafturn.records.InputException;
import leafturn.records.LawnFile;
import leafturn.records.LawnReading;
import leafturn.records.LogFile;
import leafturn.records.LogReading;
import leafturn.records.WeatherReading;
import leafturn.reports.CallText;
import leafturn.reports.JsonReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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
  @Parameters(paramLabel = "LAWN", description = "Lawn description, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path lawnFile;

  @Mixin private final WeatherOptions weather = new WeatherOptions();

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
      description =
          "Sets the threshold of a rule or a figure, for instance clump-limit-dry=35; may be given"
              + " several times.")
  private final Map<String, Double> rules = new LinkedHashMap<>();

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    Optional<LawnReading> lawnRead = inputs.read(() -> LawnFile.read(lawnFile));
    Optional<WeatherReading> weatherRead = inputs.read(weather::read);
    Optional<LogReading> logRead = inputs.read(this::log);
    Optional<CallRules> rulesRead = inputs.read(this::rules);
    inputs.throwIfAny();
    LawnReading lawn = lawnRead.orElseThrow();
    WeatherReading record = weatherRead.orElseThrow();
    LogReading log = logRead.orElseThrow();
    List<String> notes = new ArrayList<>(lawn.notes());
    notes.addAll(record.notes());
    notes.addAll(log.notes());
    Call call = made(lawn, record, logRead.orElseThrow(), rulesRead.orElseThrow()).noting(notes);
    PrintWriter writer = spec.commandLine().getOut();
    if (json) {
      writer.println(JsonReport.of(call));
    } else {
      CallText.of(call).forEach(writer::println);
    }
    return ExitCode.DONE;
  }

  private Call made(LawnReading lawn, WeatherReading record, LogReading log, CallRules rules) {
    try {
      SiteClimate climate = new SiteClimate(record.series(), lawn.lawn().site());
      return MowingCall.of(lawn.lawn(), climate, log.entries(), on, rules);
    } catch (NoCallException impossible) {
      throw new InputException(weather.file() + ": " + impossible.getMessage() + ".");
    }
  }

  private LogReading log() {
    return logFile == null ? new LogReading(List.of(), List.of()) : LogFile.read(logFile);
  }

  private CallRules rules() {
    try {
      return CallRules.standard().with(rules);
    } catch (IllegalArgumentException wrong) {
      throw new InputException(
          String.valueOf(wrong.getMessage())
              .lines()
              .map(fault -> "--rule: " + fault + ".")
              .toList());
    }
  }
}
