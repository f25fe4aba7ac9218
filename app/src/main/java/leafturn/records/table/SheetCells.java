package leafturn.records.table;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;
import leafturn.records.Faults;
import org.jspecify.annotations.Nullable;

/** Reads the cells of one sheet; its first row that is not blank holds the headings. */
final class SheetCells {
  private static final Pattern REFERENCE = Pattern.compile("([A-Z]{1,3})([0-9]{1,7})");
  private static final Pattern ROW_NUMBER = Pattern.compile("[0-9]{1,7}");
  private static final int LAST_ROW = 1_048_576;
  private static final int MOST_MERGED = 10_000;
  private static final int LETTERS = 26;

  private final Faults faults;
  private final TableSize size;
  private final List<String> texts;
  private final CellFormats formats;
  private final String file;
  private final List<Table.Row> rows = new ArrayList<>();
  private final List<Table.RowFault> rowFaults = new ArrayList<>();
  private final List<String> merged = new ArrayList<>();
  private int rowNumber;
  private int formulas;

  SheetCells(String file, List<String> texts, CellFormats formats) {
    this.file = file;
    this.texts = texts;
    this.formats = formats;
    this.faults = new Faults(file);
    this.size = new TableSize(file);
  }

  /** Reads the part of the sheet. */
  void read(PartXml xml) throws XMLStreamException {
    while (xml.nextElement()) {
      if (xml.is("row")) {
        readRow(xml);
      } else if (xml.is("mergeCell") && merged.size() < MOST_MERGED) {
        String range = xml.attribute("ref");
        merged.add(range == null ? "" : range);
      }
    }
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * The table, once the part was read.
   *
   * @throws leafturn.records.InputException when its form is at fault
   */
  Table table(String sheet, List<String> sheets) {
    List<String> headings = rows.get(0).cells();
    checkHeadings(headings);
    List<Table.Row> under = rows.stream().skip(1).map(row -> cut(row, headings.size())).toList();
    tellMerged(headings.size());
    faults.throwIfAny();
    List<String> notes = new ArrayList<>();
    if (formulas > 0) {
      notes.add(
          "%d %s; the values they had when the file was saved are taken."
              .formatted(formulas, formulas == 1 ? "cell is a formula" : "cells are formulas"));
    }
    return new Table(file, sheet, sheets, headings, under, rowFaults, true, notes);
  }

  private void checkHeadings(List<String> headings) {
    for (int column = 0; column < headings.size(); column++) {
      String heading = headings.get(column);
      if (!heading.isEmpty() && headings.indexOf(heading) < column) {
        faults.add(
            "columns %s and %s are both called %s; keep one name for one column."
                .formatted(
                    Table.letters(headings.indexOf(heading)),
                    Table.letters(column),
                    Faults.quoted(heading)));
      }
    }
  }

  private Table.Row cut(Table.Row row, int columns) {
    List<String> cells = new ArrayList<>(row.cells());
    List<String> strays = new ArrayList<>();
    for (int column = columns; column < cells.size(); column++) {
      if (!cells.get(column).isEmpty()) {
        strays.add(Table.letters(column));
      }
    }
    if (!strays.isEmpty()) {
      rowFaults.add(
          new Table.RowFault(
              row.number(),
              "it has a cell under no heading (column %s); name the column or empty the cell."
                  .formatted(String.join(", ", strays))));
    }
    while (cells.size() < columns) {
      cells.add("");
    }
    Map<Integer, String> within = new TreeMap<>(row.faults());
    within.keySet().removeIf(column -> column >= columns);
    return new Table.Row(row.number(), cells.subList(0, columns), within);
  }

  /** A merged heading leaves columns without a name; any other cell is a fault of its rows. */
  private void tellMerged(int columns) {
    int headingRow = rows.get(0).number();
    Set<Integer> told = new HashSet<>();
    for (String range : merged) {
      String[] ends = range.split(":", 2);
      Matcher first = REFERENCE.matcher(ends[0]);
      Matcher last = REFERENCE.matcher(ends[ends.length - 1]);
      if (!first.matches() || !last.matches() || column(first.group(1)) >= columns) {
        continue;
      }
      String sentence =
          "%s is one merged cell; split it and fill in each of its cells.".formatted(range);
      int from = Integer.parseInt(first.group(2));
      int to = Integer.parseInt(last.group(2));
      if (from <= headingRow && headingRow <= to) {
        faults.add(sentence);
      }
      rows.stream()
          .map(Table.Row::number)
          .filter(row -> row > headingRow && row >= from && row <= to && told.add(row))
          .forEach(row -> rowFaults.add(new Table.RowFault(row, sentence)));
    }
  }

  private void readRow(PartXml xml) throws XMLStreamException {
    rowNumber = rowNumber(xml.attribute("r"));
    List<String> cells = new ArrayList<>();
    Map<Integer, String> cellFaults = new TreeMap<>();
    int column = -1;
    while (xml.nextWithin("row")) {
      if (!xml.is("c")) {
        continue;
      }
      column = column(xml.attribute("r"), column + 1);
      String fault = readCell(xml, column, cells);
      if (fault != null) {
        cellFaults.put(column, fault);
      }
    }
    boolean blank = cellFaults.isEmpty() && cells.stream().allMatch(String::isEmpty);
    if (!blank) {
      trim(cells, cellFaults);
      size.row(cells);
      rows.add(new Table.Row(rowNumber, cells, cellFaults));
    }
  }

  private static void trim(List<String> cells, Map<Integer, String> cellFaults) {
    while (cells.get(cells.size() - 1).isEmpty() && !cellFaults.containsKey(cells.size() - 1)) {
      cells.remove(cells.size() - 1);
    }
  }

  /** Puts the text of a cell into its place; what is wrong with it, or null. */
  private @Nullable String readCell(PartXml xml, int column, List<String> cells)
      throws XMLStreamException {
    String type = xml.attribute("t");
    String format = xml.attribute("s");
    String value = null;
    boolean formula = false;
    while (xml.nextWithin("c")) {
      if (xml.is("v")) {
        value = xml.text();
      } else if (xml.is("is")) {
        value = xml.richText("is");
      } else if (xml.is("f")) {
        formula = true;
        xml.text();
      }
    }
    boolean unknown = formula && isNone(value, type);
    formulas += formula && !unknown ? 1 : 0;
    String text = value == null ? "" : text(value, type == null ? "n" : type, format).strip();
    if (!text.isEmpty() || formula) {
      size.columns(column + 1);
      while (cells.size() <= column) {
        cells.add("");
      }
      cells.set(column, text);
    }
    if ("e".equals(type)) {
      return "its formula gives %s; put in a value, or empty it.".formatted(Faults.quoted(text));
    }
    return unknown
        ? "its formula has no value yet; open the file, let it calculate, and save it."
        : null;
  }

  /** True for the value of a formula that was never calculated; a text may be empty. */
  private static boolean isNone(@Nullable String value, @Nullable String type) {
    return value == null || value.isBlank() && !"str".equals(type);
  }

  private String text(String value, String type, @Nullable String format)
      throws XMLStreamException {
    return switch (type) {
      case "s" -> shared(value);
      case "n" -> formats.shown(value, format);
      case "b" -> value.strip().equals("1") ? "yes" : "no";
      case "d" -> value.replaceFirst("T00:00(:00(\\.0+)?)?Z?$", "").replace('T', ' ');
      default -> value;
    };
  }

  private String shared(String index) throws XMLStreamException {
    String digits = index.strip();
    int place = ROW_NUMBER.matcher(digits).matches() ? Integer.parseInt(digits) : -1;
    if (place < 0 || place >= texts.size()) {
      throw new XMLStreamException("a cell names a text that is not there");
    }
    return texts.get(place);
  }

  private int rowNumber(@Nullable String written) throws XMLStreamException {
    int number =
        written == null
            ? rowNumber + 1
            : ROW_NUMBER.matcher(written).matches() ? Integer.parseInt(written) : 0;
    if (number <= rowNumber || number > LAST_ROW) {
      throw new XMLStreamException("rows are not in order");
    }
    return number;
  }

  private static int column(@Nullable String reference, int next) throws XMLStreamException {
    if (reference == null) {
      return next;
    }
    Matcher parts = REFERENCE.matcher(reference);
    int column = parts.matches() ? column(parts.group(1)) : -1;
    if (column < next) {
      throw new XMLStreamException("cells are not in order");
    }
    return column;
  }

  private static int column(String letters) {
    int column = 0;
    for (char letter : letters.toCharArray()) {
      column = column * LETTERS + letter - 'A' + 1;
    }
    return column - 1;
  }
}
