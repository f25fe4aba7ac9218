package leafturn.records.table;

import java.util.List;
import leafturn.records.InputException;

/** Counts what is read of a table and stops where it is more than a table may have. */
final class TableSize {
  private final String file;
  private int rows;
  private long cells;

  TableSize(String file) {
    this.file = file;
  }

  /** Checks the number of columns. */
  void columns(int count) {
    if (count > TableFile.MOST_COLUMNS) {
      throw tooMuch("it has %d columns; a table may have up to %d.", count, TableFile.MOST_COLUMNS);
    }
  }

  /** Counts a row with its cells. */
  void row(List<String> texts) {
    rows++;
    cells += texts.size();
    if (rows > TableFile.MOST_ROWS) {
      throw tooMuch("it has more than %,d rows; import it in parts.", TableFile.MOST_ROWS);
    }
    if (cells > TableFile.MOST_CELLS) {
      throw tooMuch("it has more than %,d cells; import it in parts.", TableFile.MOST_CELLS);
    }
    for (String text : texts) {
      cell(text.length());
    }
  }

  /** Checks the length of a cell's text. */
  void cell(int length) {
    if (length > TableFile.LONGEST_CELL) {
      throw tooMuch("a cell has more than %,d characters; shorten it.", TableFile.LONGEST_CELL);
    }
  }

  private InputException tooMuch(String sentence, Object... numbers) {
    return new InputException(file + ": " + sentence.formatted(numbers));
  }
}
