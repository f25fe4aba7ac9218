package leafturn.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A table of observations as {@code trial analyse --plan} reports it. */
final class AnalysedTable {
  private AnalysedTable() {}

  /** The page of findings; where it was refused, the exit code and the sentences. */
  static String findings(Path folder, Path plan, CharSequence csv, String model)
      throws IOException {
    Path report = folder.resolve("findings.html");
    Ran ran =
        Ran.of(
            "trial",
            "analyse",
            Files.writeString(folder.resolve("data.csv"), csv).toString(),
            Files.writeString(folder.resolve("model.json"), model).toString(),
            "--plan",
            plan.toString(),
            "--report",
            report.toString());
    return ran.exitCode() == 0 ? Files.readString(report) : ran.exitCode() + " " + ran.err();
  }
}
