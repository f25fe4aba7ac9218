package leafturn.reports.trial;

import java.nio.file.Path;
import java.util.Locale;
import leafturn.records.InputException;
import leafturn.records.OutputFile;
import leafturn.reports.paper.Paper;

/** Writes a document to a file, in the format that its ending names. */
public final class TrialDocumentFile {
  private TrialDocumentFile() {}

  /**
   * A file that can be written.
   *
   * @throws InputException for another ending, or where it cannot be written
   */
  public static Path checked(Path file) {
    if (!ends(file, ".html") && !ends(file, ".pdf")) {
      throw new InputException(
          file + ": a document is written as .pdf or .html; end its name with one of them.");
    }
    OutputFile.check(file);
    return file;
  }

  private static boolean ends(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /** Writes the document whole or not at all. */
  public static void write(Path file, Paper paper) {
    if (ends(file, ".html")) {
      OutputFile.write(file, paper.html());
    } else {
      OutputFile.write(file, paper::writePdf);
    }
  }
}
