package leafturn.cli;

import java.util.concurrent.Callable;
import leafturn.advice.evidence.Evidence;
import leafturn.model.weather.Site;
import leafturn.records.ExampleWeather;
import leafturn.reports.EvidenceReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Override
  public Integer call() {
    EvidenceReport report = EvidenceReport.of(Evidence.of(ExampleWeather.newYork(), SITE));
    printing.print(() -> report, report::lines);
    return ExitCode.DONE;
  }
}
