package leafturn.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** A table of observations as {@code trial analyse --plan} reports it. */
final class AnalysedTable {
  private AnalysedTable() {}

  /** The page of findings; where it was refused, the exit code and the sentences. */
  static String findings(Path folder, Path plan, CharSequence csv, String model)
      throws IOException {
    Path report = folder.resolve("findings.html");
    StringWriter err = new StringWriter();
    int code =
        new LeafturnCommand(new PrintWriter(new StringWriter()), new PrintWriter(err))
            .run(
                "trial",
                "analyse",
                Files.writeString(folder.resolve("data.csv"), csv).toString(),
                Files.writeString(folder.resolve("model.json"), model).toString(),
                "--plan",
                plan.toString(),
                "--report",
                report.toString());
    return code == 0 ? Files.readString(report) : code + " " + err;
  }
}
