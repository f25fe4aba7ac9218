package leafturn.records.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.CsvTable;
import leafturn.records.DecimalComma;
import leafturn.records.Faults;
import leafturn.records.SourceText;
import leafturn.trials.analysis.data.TrialTable;

/** Reads the observations of a trial, a CSV file with a header and a row for each. */
public final class TrialDataFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 100_000_000;

  private TrialDataFile() {}

  /**
   * Reads a table of text cells.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the file
   */
  public static TrialTable read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a table from text.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the text
   */
  public static TrialTable read(SourceText source) {
    Faults faults = new Faults(source.name());
    CsvTable csv = new CsvTable(source, faults);
    int columns = csv.headings().size();
    List<List<String>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    DecimalComma comma = new DecimalComma(csv.mayHaveDecimalCommas());
    csv.forEachRow(
        row -> {
          List<String> cells = new ArrayList<>(columns);
          for (int column = 0; column < columns; column++) {
            cells.add(
                comma.withPoint(
                    csv.headings().get(column),
                    row.text(column),
                    fault -> faults.add(row.line(), fault)));
          }
          rows.add(cells);
          lines.add((int) row.line());
        });
    if (rows.isEmpty() && faults.none()) {
      faults.add("it has a header but no rows; give one row for each observation.");
    }
    faults.throwIfAny();
    return new TrialTable(csv.headings(), rows, lines);
  }
}
