package leafturn.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import leafturn.records.InputException;
import leafturn.records.trial.SizeDocument;
import leafturn.records.trial.SizeFile;
import leafturn.reports.trial.SizeReport;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.power.SimulatedPower;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.TrialSimulation;
import leafturn.trials.power.TrialSize;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how large a trial has to be, or what it can show. */
@Command(
    name = "size",
    description = {
      "Tells how many yards or blocks a trial needs, or what it can show,",
      "by formula or by simulated trials.",
      ""
    },
    footer = {"", "Example: leafturn trial size soil-potassium.size.json"})
final class TrialSizeCommand implements Callable<Integer> {
  @Parameters(paramLabel = "SIZE", description = "The question, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path sizeFile;

  @Mixin private final Printing printing = new Printing();

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    SizeDocument document = SizeFile.read(sizeFile);
    boolean byFormula = document.size().design().layout().hasFormula();
    SizeAnswer answer = byFormula ? TrialSize.of(document.size()) : null;
    SizeReport report = SizeReport.of(document, answer, simulated(document.simulation()));
    printing.print(() -> report, report::lines);
    return ExitCode.DONE;
  }

  private @Nullable SimulatedPower simulated(@Nullable SimulationQuestion question) {
    if (question == null) {
      return null;
    }
    int threads = Runtime.getRuntime().availableProcessors();
    int all = TrialSimulation.analyses(question);
    AtomicInteger done = new AtomicInteger();
    PrintWriter terminal = System.console() == null ? null : spec.commandLine().getErr();
    try (ProgressLine progress = ProgressLine.on(terminal, "trials")) {
      return TrialSimulation.of(
          question, threads, more -> progress.done(done.addAndGet(more), all));
    } catch (TrialFaultException wrong) {
      throw new InputException(
          wrong.faults().stream().map(fault -> sizeFile + ", simulate: " + fault).toList());
    }
  }
}
