package leafturn.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.SeasonAccount;
import leafturn.model.weather.WeatherSeries;
import leafturn.records.InputException;
import leafturn.records.LawnReading;
import leafturn.records.OutputFile;
import leafturn.records.WeatherReading;
import leafturn.reports.DailyCsv;
import leafturn.reports.SeasonReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs the daily model of a lawn over a weather record. */
@Command(
    name = "season",
    description = {
      "Runs a lawn by its programme through a weather record and accounts for each year.",
      ""
    },
    footer = {
      "",
      "Example: leafturn season linden-house-front.lawn.json --weather new-york-2012-2015.csv"
    })
final class SeasonCommand implements Callable<Integer> {
  private static final String BY_RULES =
      "The clippings are decided by the rules at each mowing; this account returned all of them, 'leafturn plan' decides.";

  @Mixin private final LawnOptions files = new LawnOptions();

  @Option(
      names = "--daily",
      paramLabel = "OUT",
      description = "Writes every state and flow of every day to this CSV file.")
  private @Nullable Path daily;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    Path out = daily;
    if (out != null) {
      inputs.read(() -> checked(out));
    }
    Optional<LawnReading> lawnRead = inputs.read(files::read);
    Optional<WeatherReading> weatherRead = inputs.read(files::readWeather);
    inputs.throwIfAny();
    LawnReading lawn = lawnRead.orElseThrow();
    WeatherReading record = weatherRead.orElseThrow();
    checkSpinUp(lawn.lawn(), record.series());
    List<String> notes = new ArrayList<>(lawn.notes());
    notes.addAll(record.notes());
    if (lawn.lawn().programme().mowing().clippings().byRules()) {
      notes.add(BY_RULES);
    }
    SeasonReport report = SeasonReport.of(run(lawn.lawn(), record.series(), out), notes);
    printing.print(() -> report, report::lines);
    return ExitCode.DONE;
  }

  private static SeasonAccount run(Lawn lawn, WeatherSeries series, @Nullable Path out) {
    if (out == null) {
      return LawnModel.run(lawn, series, DayListener.NONE);
    }
    DailyCsv days = new DailyCsv();
    SeasonAccount account = LawnModel.run(lawn, series, days);
    OutputFile.write(out, days.text());
    return account;
  }

  private static Path checked(Path out) {
    OutputFile.check(out);
    return out;
  }

  private void checkSpinUp(Lawn lawn, WeatherSeries series) {
    boolean wholeYear = !series.firstDay().plusYears(1).isAfter(series.lastDay().plusDays(1));
    if (lawn.spinUpYears() > 0 && !wholeYear) {
      throw new InputException(
          "%s: the record runs from %s to %s, but spin-up needs a whole year; give a longer record or set spinUpYears to 0 in %s."
              .formatted(files.weatherFile(), series.firstDay(), series.lastDay(), files.file()));
    }
  }
}
