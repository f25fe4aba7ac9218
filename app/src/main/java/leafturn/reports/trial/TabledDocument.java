package leafturn.reports.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.records.ProgramVersion;
import leafturn.records.Sha256;
import leafturn.records.trial.TrialModelFile.ModelAndTrial;
import leafturn.reports.paper.Paper;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.findings.AskedTrial;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.TabledTrial;
import org.jspecify.annotations.Nullable;

/** The document of a table of results and its model. */
public final class TabledDocument {
  private TabledDocument() {}

  /**
   * Findings where the trial is known or follows from the model, else the analysis alone.
   *
   * @param files that were read, named with their digests
   * @throws TrialFaultException where the trial as it was stated cannot be found in the table
   */
  public static Paper paper(
      TrialTable table, ModelAndTrial asked, AskedModelView view, List<Path> files) {
    List<String> method = method(files);
    AskedTrial stated = asked.trial();
    Findings findings = stated == null ? usual(table, asked) : TabledTrial.findings(table, stated);
    AskedTrial columns = stated == null ? asked.usualTrial() : stated;
    AskedModelView shown = columns == null ? view : view.withDates(columns.columns().time());
    return findings == null
        ? new ModelDocument(shown, method).paper()
        : new FindingsDocument(findings, shown, method).paper();
  }

  private static @Nullable Findings usual(TrialTable table, ModelAndTrial asked) {
    AskedTrial trial = asked.usualTrial();
    if (trial == null) {
      return null;
    }
    try {
      Findings findings = TabledTrial.findings(table, trial);
      return findings.facts().contrasts().size() == 1 ? findings : null;
    } catch (TrialFaultException notSuch) {
      return null;
    }
  }

  private static List<String> method(List<Path> files) {
    List<String> lines = new ArrayList<>();
    for (Path file : files) {
      lines.add(
          "Read from %s, SHA-256 %s."
              .formatted(Objects.requireNonNullElse(file.getFileName(), file), digest(file)));
    }
    lines.add("Worked out by " + ProgramVersion.name() + ".");
    return lines;
  }

  private static String digest(Path file) {
    try {
      return Sha256.of(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
