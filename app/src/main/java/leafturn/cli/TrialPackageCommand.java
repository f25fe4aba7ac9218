package leafturn.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.records.OutputFile;
import leafturn.records.trial.PackedTrial;
import leafturn.reports.trial.TrialPackage;
import leafturn.trials.observation.Remark;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the data package of a trial from files. */
@Command(
    name = "package",
    description = {
      "Writes the data package of a trial to a zip file.",
      "It holds plan, layout, readings, values to analyse and results, and describes itself",
      "(Frictionless Data Package). 'trial unpack' and the site read it back. What the checks of",
      "the readings find is told on standard error, in results.json and in README.md.",
      ""
    },
    footer = {
      "",
      "Example: leafturn trial package split-yards.trial.json split-yards.readings.csv trial.zip"
    })
final class TrialPackageCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "TRIAL", description = "Plan of the trial, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path planFile;

  @Parameters(
      index = "1",
      paramLabel = "READINGS",
      description =
          "Readings, a CSV or XLSX file with a row for each: plot, date, outcome, value, unit and"
              + " so on.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path readingsFile;

  @Parameters(index = "2", paramLabel = "PACKAGE", description = "The zip file to write.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path packageFile;

  @Option(
      names = "--record",
      paramLabel = "RECORD",
      description =
          "When the plan was frozen and the trial ended, and what befell it: record.json of an"
              + " unpacked package.")
  private @Nullable Path recordFile;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description =
          "The day on which it is told: before the season's end nothing is tested (default: today).")
  private @Nullable LocalDate on;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    inputs.read(
        () -> {
          OutputFile.check(packageFile);
          return packageFile;
        });
    Optional<PackedTrial> trial =
        inputs.read(() -> PackedTrial.read(planFile, readingsFile, recordFile));
    inputs.throwIfAny();
    LocalDate told = on;
    ZoneId zone = ZoneId.systemDefault();
    LocalDate day = told == null ? LocalDate.now(zone) : told;
    TrialPackage made = TrialPackage.of(trial.orElseThrow(), day, zone);
    OutputFile.write(packageFile, made::writeTo);
    spec.commandLine().getOut().println(made.summary());
    for (Remark remark : made.remarks()) {
      spec.commandLine().getErr().println(TrialPackage.told(remark));
    }
    spec.commandLine().getErr().println("Wrote " + packageFile);
    return ExitCode.DONE;
  }
}
