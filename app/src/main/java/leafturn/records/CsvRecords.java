package leafturn.records;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The records of a CSV text, each with the line it begins on. One whose quotation marks are not in
 * order is told and left out; reading goes on at the line below the one it begins on.
 */
final class CsvRecords {
  /** Each broken record may be read to the end of the text before it is known to be broken. */
  private static final int MOST_BROKEN = 20;

  private static final Pattern BREAK = Pattern.compile("\\R");
  private static final String BROKEN =
      "its quotation marks are not in order: a cell that begins with one must end with one, and one"
          + " within it is doubled";

  private final String text;
  private final char separator;
  private int from;
  private long linesBefore;

  private CsvRecords(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  static CsvReader<CsvRecord> open(String text, char separator) {
    return CsvReader.builder()
        .fieldSeparator(separator)
        .skipEmptyLines(true)
        .allowUnclosedQuote(false)
        .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
        .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
        .ofCsvRecord(text);
  }

  /**
   * Hands over each record of a text, its header too.
   *
   * @param use takes the line a record begins on, from 1, and the record
   * @param broken takes the line a broken record begins on, and what is wrong with it
   */
  static void forEach(
      String text,
      char separator,
      BiConsumer<Long, CsvRecord> use,
      BiConsumer<Long, String> broken) {
    CsvRecords records = new CsvRecords(text, separator);
    for (int told = 1; !records.readToBroken(use); told++) {
      boolean last = told == MOST_BROKEN;
      broken.accept(
          records.linesBefore, BROKEN + (last ? ". The lines below it were not read." : "."));
      if (last) {
        return;
      }
    }
  }

  /** True at the end of the text; false below the first line of a broken record. */
  private boolean readToBroken(BiConsumer<Long, CsvRecord> use) {
    CsvRecord read = null;
    try (CsvReader<CsvRecord> reader = open(text.substring(from), separator)) {
      for (Iterator<CsvRecord> records = reader.iterator(); records.hasNext(); ) {
        read = records.next();
        use.accept(linesBefore + read.getStartingLineNumber(), read);
      }
      return true;
    } catch (CsvParseException e) {
      goBelow(read);
      return false;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Goes below a record, where there is one, the empty lines under it, and one line more. */
  private void goBelow(@Nullable CsvRecord read) {
    if (read != null) {
      long breaks =
          read.getFields().stream()
              .mapToLong(field -> BREAK.matcher(field).results().count())
              .sum();
      long last = linesBefore + read.getStartingLineNumber() + breaks;
      while (linesBefore < last) {
        nextLine();
      }
    }
    while (nextLine() == 0) {
      // An empty line begins no record.
    }
  }

  /** Goes to the next line; how many characters the one left has. */
  private int nextLine() {
    int end = from;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    int length = end - from;
    from = Math.min(text.length(), end + (text.startsWith("\r\n", end) ? 2 : 1));
    linesBefore++;
    return length;
  }
}
