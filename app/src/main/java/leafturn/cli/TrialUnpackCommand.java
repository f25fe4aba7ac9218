package leafturn.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import leafturn.records.trial.TrialPackageFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads the data package of a trial back into files. */
@Command(
    name = "unpack",
    description = {
      "Checks the data package of a trial and writes its files.",
      "A new folder takes a table of values of each outcome, for 'trial analyse', and plan.json,",
      "readings.csv and record.json, for 'trial package'.",
      ""
    },
    footer = {"", "Example: leafturn trial unpack trial.zip split-yards"})
final class TrialUnpackCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "PACKAGE", description = "The zip file to read.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path packageFile;

  @Parameters(
      index = "1",
      paramLabel = "FOLDER",
      description = "A folder that is not there yet or is empty.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path folder;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    TrialPackageFile opened = TrialPackageFile.open(packageFile);
    spec.commandLine().getOut().println(opened.read().summary());
    opened.unpack(folder);
    spec.commandLine().getErr().println("Wrote " + folder);
    return ExitCode.DONE;
  }
}
