package leafturn.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import leafturn.records.InputException;
import leafturn.records.trial.PlannedTable;
import leafturn.records.trial.TrialDataFile;
import leafturn.records.trial.TrialModelFile;
import leafturn.records.trial.TrialModelFile.ModelAndTrial;
import leafturn.records.trial.TrialPlanFile;
import leafturn.reports.JsonReport;
import leafturn.reports.OrdinalReport;
import leafturn.reports.TrialReport;
import leafturn.reports.trial.AskedModelView;
import leafturn.reports.trial.TabledDocument;
import leafturn.reports.trial.TrialDocumentFile;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.AskedTrial;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Analyses the results of a trial by a linear mixed model. */
@Command(
    name = "analyse",
    description = {"Analyses the results of a trial by a linear mixed model.", ""},
    footer = {
      "",
      "Example: leafturn trial analyse split-yard.csv split-yard.model.json --report findings.html"
    })
final class TrialAnalyseCommand implements Callable<Integer> {
  @Parameters(
      index = "0",
      paramLabel = "DATA",
      description = "Observations, a CSV file with a header.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path dataFile;

  @Parameters(index = "1", paramLabel = "MODEL", description = "The model, a JSON file.")
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private Path modelFile;

  @Option(names = "--json", description = "Prints one JSON document.")
  private boolean json;

  @Option(
      names = "--report",
      paramLabel = "OUT",
      description =
          "Writes the findings as a document: .pdf or .html. What may be concluded follows from the"
              + " section trial of the model.")
  private @Nullable Path reportFile;

  @Option(
      names = "--plan",
      paramLabel = "TRIAL",
      description =
          "The plan of the trial, a JSON file: question, margin and comparisons as they were fixed,"
              + " for the document.")
  private @Nullable Path planFile;

  @Mixin private final HelpOption help = new HelpOption();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before the command runs
  private CommandSpec spec;

  @Override
  public Integer call() {
    Inputs inputs = new Inputs();
    Path file = reportFile;
    if (file != null) {
      inputs.read(() -> TrialDocumentFile.checked(file));
    }
    Optional<TrialTable> table = inputs.read(() -> TrialDataFile.read(dataFile));
    Path planned = planFile;
    boolean wholeTrial = file != null || planned != null;
    Optional<ModelAndTrial> model =
        inputs.read(() -> TrialModelFile.readWithTrial(modelFile, wholeTrial));
    Optional<TrialPlan> plan =
        planned == null ? Optional.empty() : inputs.read(() -> TrialPlanFile.read(planned));
    inputs.throwIfAny();
    analyse(table.orElseThrow(), byPlan(model.orElseThrow(), table.orElseThrow(), plan));
    return ExitCode.DONE;
  }

  private ModelAndTrial byPlan(ModelAndTrial asked, TrialTable table, Optional<TrialPlan> plan) {
    Path file = planFile;
    if (file == null || plan.isEmpty()) {
      return asked;
    }
    AskedTrial columns = asked.trial() == null ? asked.usualTrial() : asked.trial();
    if (columns == null) {
      throw new InputException(
          "%s: it does not say which columns hold yards, arms and dates; add the section trial."
              .formatted(modelFile));
    }
    AskedTrial planned = PlannedTable.of(plan.get(), asked, columns, table, file);
    return new ModelAndTrial(asked.model(), planned);
  }

  private void analyse(TrialTable table, ModelAndTrial asked) {
    TrialModel model = asked.model();
    try {
      if (model.scale() == TrialModel.Scale.ORDINAL) {
        OrdinalReport report = OrdinalReport.of(table, model);
        write(table, asked, AskedModelView.of(model, report));
        print(report, report.lines());
      } else {
        TrialReport report = TrialReport.of(table, asked);
        write(table, asked, AskedModelView.of(model, report));
        print(report, report.lines());
      }
    } catch (TrialFaultException wrong) {
      String files = "%s with %s".formatted(dataFile, modelFile);
      throw new InputException(wrong.faults().stream().map(fault -> files + ": " + fault).toList());
    }
  }

  private void write(TrialTable table, ModelAndTrial asked, AskedModelView view) {
    Path file = reportFile;
    if (file != null) {
      List<Path> files = new ArrayList<>(List.of(dataFile, modelFile));
      if (planFile != null) {
        files.add(planFile);
      }
      TrialDocumentFile.write(file, TabledDocument.paper(table, asked, view, files));
      spec.commandLine().getErr().println("Wrote " + file);
    }
  }

  private void print(Object report, List<String> lines) {
    PrintWriter writer = spec.commandLine().getOut();
    if (json) {
      writer.println(JsonReport.of(report));
    } else {
      lines.forEach(writer::println);
    }
  }
}
