package leafturn.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import leafturn.advice.evidence.Evidence;
import leafturn.model.weather.Site;
import leafturn.records.ExampleWeather;
import leafturn.reports.EvidenceReport;
import leafturn.reports.JsonReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Holds the model against published field studies. */
@Command(
    name = "validate",
    description = {
      "Runs the model through the protocols of published field studies, on the weather of New York"
          + " 2012-2015, and prints each result beside the published one, pass and fail alike.",
      ""
    },
    footer = {
      "",
      "The exit code is 0 whatever the verdicts: known misses are part of the answer.",
      "Example: leafturn validate --json"
    })
final class ValidateCommand implements Callable<Integer> {
  private static final Site SITE = Site.at(40.78, 40);

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    EvidenceReport report = EvidenceReport.of(Evidence.of(ExampleWeather.newYork(), SITE));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(JsonReport.of(report));
    } else {
      report.lines().forEach(out::println);
    }
    return ExitCode.DONE;
  }
}
