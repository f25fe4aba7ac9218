package leafturn.records;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * A CSV file (RFC 4180) with a header line, read row by row. Columns are separated by commas; a
 * header with more semicolons or tabs than commas makes them those, and then numbers may have a
 * decimal comma.
 */
public final class CsvTable {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d{1,3})?");

  private final SourceText source;
  private final Faults faults;
  private final char separator;
  private final List<String> headings;
  private final List<String> header;
  private long headerLine;
  private long firstDecimalComma;
  private long firstDecimalPoint;
  private boolean markFaultTold;

  /**
   * Reads the header.
   *
   * @throws InputException when there is none, with everything found so far
   */
  public CsvTable(SourceText source, Faults faults) {
    this.source = source;
    this.faults = faults;
    String firstLine = source.text().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    if (firstLine.isEmpty()) {
      faults.add("it is empty; a header line with the names of the columns is expected.");
      faults.throwIfAny();
    }
    this.separator = separator(firstLine);
    this.headings = readHeadings();
    this.header = headings.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
  }

  /** The mark that the header has most of outside quotation marks; of equals the comma. */
  private static char separator(String firstLine) {
    String bare = firstLine.replaceAll("\"[^\"]*\"", "");
    char most = ',';
    for (char mark : new char[] {';', '\t'}) {
      if (count(bare, mark) > count(bare, most)) {
        most = mark;
      }
    }
    return most;
  }

  private static long count(String text, char mark) {
    return text.chars().filter(character -> character == mark).count();
  }

  private List<String> readHeadings() {
    List<String> headings = new ArrayList<>();
    List<String> names = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = CsvRecords.open(source.text(), separator)) {
      CsvRecord first = reader.stream().findFirst().orElseThrow();
      headerLine = first.getStartingLineNumber();
      for (String field : first.getFields()) {
        String heading = field.strip();
        String name = heading.toLowerCase(Locale.ROOT);
        if (!name.isEmpty() && names.contains(name)) {
          faults.add(first.getStartingLineNumber(), name, "two columns have this name; keep one.");
        }
        names.add(name);
        headings.add(heading);
      }
    } catch (CsvParseException e) {
      faults.add(1, "the header cannot be read as CSV; check its quotation marks.");
      faults.throwIfAny();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return List.copyOf(headings);
  }

  /** Names of the columns as they are written in the file; some may be empty. */
  public List<String> headings() {
    return headings;
  }

  /** True when numbers may have a decimal comma. */
  public boolean mayHaveDecimalCommas() {
    return separator != ',';
  }

  /** Names of the columns in lower case, in the order of the file; some may be empty. */
  List<String> header() {
    return header;
  }

  /** Position of a column, or -1. */
  int column(String name) {
    return header.indexOf(name);
  }

  /** Hands over each row after the header; one that is broken or of another length is a fault. */
  public void forEachRow(Consumer<Row> use) {
    forEachRow(use, faults::add);
  }

  /**
   * Hands over each row after the header.
   *
   * @param leftOut takes what is wrong with rows that are broken or of another length than the
   *     header, and the line each begins on
   */
  public void forEachRow(Consumer<Row> use, BiConsumer<Long, String> leftOut) {
    CsvRecords.forEach(
        source.text(),
        separator,
        (line, csvRecord) -> {
          if (line <= headerLine) {
            return;
          }
          if (csvRecord.getFieldCount() == header.size()) {
            use.accept(new Row(line, csvRecord));
          } else if (csvRecord.getFieldCount() > 1 || !csvRecord.getField(0).isBlank()) {
            leftOut.accept(
                line,
                "it has %d %s, but the header names %d %s."
                    .formatted(
                        csvRecord.getFieldCount(),
                        csvRecord.getFieldCount() == 1 ? "cell" : "cells",
                        header.size(),
                        header.size() == 1 ? "column" : "columns"));
          }
        },
        leftOut);
  }

  /** What was understood of the file's form and is worth saying; empty when nothing is. */
  List<String> notes() {
    return firstDecimalComma > 0
        ? List.of(
            "Columns are separated by %s and numbers have decimal commas."
                .formatted(separator == ';' ? "semicolons" : "tabs"))
        : List.of();
  }

  /** One row of cells. */
  public final class Row {
    private final long line;
    private final CsvRecord csvRecord;

    private Row(long line, CsvRecord csvRecord) {
      this.line = line;
      this.csvRecord = csvRecord;
    }

    /** Line in the file, from 1. */
    public long line() {
      return line;
    }

    /** Text of a cell without outer blanks. */
    public String text(int column) {
      return csvRecord.getField(column).strip();
    }

    /** Adds a fault of a cell. */
    void fault(int column, String sentence) {
      faults.add(line(), header.get(column), sentence);
    }

    /** Number in a cell; NaN when the cell is empty or, after a fault, when it is no number. */
    double number(int column) {
      String text = text(column);
      if (text.isEmpty()) {
        return Double.NaN;
      }
      boolean comma = text.indexOf(',') >= 0;
      if (!NUMBER.matcher(text).matches()) {
        fault(
            column,
            Faults.quoted(text)
                + " is not a number; give one such as 12.5, or leave the cell empty where nothing"
                + " was measured.");
        return Double.NaN;
      }
      if (comma && !mayHaveDecimalCommas()) {
        fault(
            column,
            Faults.quoted(text)
                + " has a decimal comma; write a point, or separate the columns by semicolons.");
        return Double.NaN;
      }
      noteDecimalMark(comma, text.indexOf('.') >= 0);
      return Double.parseDouble(text.replace(',', '.'));
    }

    private void noteDecimalMark(boolean comma, boolean point) {
      if (comma && firstDecimalComma == 0) {
        firstDecimalComma = line();
      }
      if (point && firstDecimalPoint == 0) {
        firstDecimalPoint = line();
      }
      if (firstDecimalComma > 0 && firstDecimalPoint > 0 && !markFaultTold) {
        markFaultTold = true;
        faults.add(
            line(),
            "numbers have decimal commas (line %d) and decimal points (line %d); use one of them."
                .formatted(firstDecimalComma, firstDecimalPoint));
      }
    }
  }
}
