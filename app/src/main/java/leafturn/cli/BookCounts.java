package leafturn.cli;

import java.io.PrintWriter;
import leafturn.records.archive.CheckResult;
import leafturn.records.archive.Manifest;
import picocli.CommandLine.Model.CommandSpec;

/** Tells how much an archive holds, and what of a damaged book could not go into it. */
final class BookCounts {
  private BookCounts() {}

  /**
   * Prints it.
   *
   * @param where the archive or book that holds it
   * @return the exit code
   */
  static int tell(CommandSpec spec, String where, Manifest manifest) {
    spec.commandLine()
        .getOut()
        .printf(
            "%s: %s.%n",
            where,
            CheckResult.counts(
                manifest.count("sheets"),
                manifest.count("versions"),
                manifest.count("weatherDays"),
                manifest.count("photographs"),
                manifest.count("people")));
    if (manifest.setAside().isEmpty()) {
      return ExitCode.DONE;
    }
    PrintWriter messages = spec.commandLine().getErr();
    for (String sheet : manifest.setAside()) {
      String file = "damaged/" + sheet.replace(' ', '-') + ".txt";
      messages.println(sheet + " is damaged, or belongs to one that is: see " + file + " in it.");
    }
    messages.println("Everything else of the book is in the archive.");
    return ExitCode.NO;
  }
}
