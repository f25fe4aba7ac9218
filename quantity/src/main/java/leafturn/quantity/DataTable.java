package leafturn.quantity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table of tab-separated text, as parameter and rule files are kept on the class path: UTF-8, one
 * header line, one row a line. Lines that are empty or start with # are comments. A row may leave
 * out empty cells at its end. Cells carry no quotes and no tabs.
 */
public final class DataTable {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

  private final String name;
  private final List<String> columns;
  private final List<Row> rows;

  private DataTable(String name, List<String> columns, List<Row> rows) {
    this.name = name;
    this.columns = columns;
    this.rows = rows;
  }

  /**
   * Reads a table that lies on the class path beside a class.
   *
   * @param anchor class whose package (or, with a leading slash, class loader) holds the table
   * @param name file name, e.g. {@code species.tsv}
   * @throws IllegalArgumentException when there is no such table or it has faults, all of them
   *     named
   */
  public static DataTable ofResource(Class<?> anchor, String name) {
    try (InputStream stream = anchor.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException(
            "there is no table " + name + " on the class path of " + anchor.getName());
      }
      return ofText(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException failure) {
      throw new UncheckedIOException("the table " + name + " cannot be read", failure);
    }
  }

  /**
   * Reads a table from its text.
   *
   * @param name what messages call the table
   * @throws IllegalArgumentException naming every faulty line
   */
  public static DataTable ofText(String name, String text) {
    List<String> lines = text.lines().toList();
    List<String> faults = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    DataTable table = null;
    for (int index = 0; index < lines.size(); index++) {
      String line = lines.get(index);
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (table == null) {
        table = new DataTable(name, cells, rows);
        faults.addAll(table.headerFaults(index + 1));
      } else if (cells.size() > table.columns.size()) {
        faults.add(
            "%s line %d has %d cells, but the header names %d columns"
                .formatted(name, index + 1, cells.size(), table.columns.size()));
      } else {
        rows.add(table.new Row(index + 1, cells));
      }
    }
    if (table == null) {
      faults.add(name + " has no header line");
    }
    if (table == null || !faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    return table;
  }

  private List<String> headerFaults(int line) {
    List<String> faults = new ArrayList<>();
    for (int column = 0; column < columns.size(); column++) {
      String title = columns.get(column);
      if (title.isEmpty()) {
        faults.add("%s line %d: column %d has no name".formatted(name, line, column + 1));
      } else if (columns.indexOf(title) != column) {
        faults.add("%s line %d names column '%s' twice".formatted(name, line, title));
      }
    }
    return faults;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    for (String cell : line.split("\t", -1)) {
      cells.add(cell.strip());
    }
    return cells;
  }

  /** What messages call the table. */
  public String name() {
    return name;
  }

  /** Column names in file order. */
  public List<String> columns() {
    return List.copyOf(columns);
  }

  /** Rows in file order. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }

  /** One row; every getter names file, line and column when it cannot answer. */
  public final class Row {
    private final int line;
    private final List<String> cells;

    private Row(int line, List<String> cells) {
      this.line = line;
      this.cells = cells;
    }

    /** Line number in the file, 1 for the first. */
    public int line() {
      return line;
    }

    /** Text of a cell without outer blanks; empty when the cell is empty. */
    public String text(String column) {
      int place = columns.indexOf(column);
      if (place < 0) {
        throw new IllegalArgumentException(
            "%s has no column '%s'; its columns are %s"
                .formatted(name, column, String.join(", ", columns)));
      }
      return place < cells.size() ? cells.get(place) : "";
    }

    /** Text of a cell that must not be empty. */
    public String requiredText(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        throw fault(column, "is empty, but a value is needed");
      }
      return text;
    }

    /** Number in a cell, NaN when the cell is empty. Decimal point, optional exponent. */
    public double number(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return Double.NaN;
      }
      if (!NUMBER.matcher(text).matches()) {
        throw fault(column, "holds '" + text + "', but a number such as 0.25 is needed");
      }
      return Double.parseDouble(text);
    }

    /** Number in a cell that must not be empty. */
    public double requiredNumber(String column) {
      requiredText(column);
      return number(column);
    }

    /** Whole number in a cell that must not be empty. */
    public int wholeNumber(String column) {
      double value = requiredNumber(column);
      if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
        throw fault(column, "holds '" + text(column) + "', but a whole number is needed");
      }
      return (int) value;
    }

    /**
     * Constant of an enum by its name, written in any case with blanks or hyphens for underscores.
     */
    public <E extends Enum<E>> E constant(String column, Class<E> type) {
      String text = requiredText(column);
      String wanted = spoken(text);
      List<String> names = new ArrayList<>();
      for (E constant : type.getEnumConstants()) {
        names.add(spoken(constant.name()));
        if (spoken(constant.name()).equals(wanted)) {
          return constant;
        }
      }
      throw fault(column, "holds '" + text + "', but must be one of " + String.join(", ", names));
    }

    /** A fault of this row's cell, for checks the reader of the table makes itself. */
    public IllegalArgumentException fault(String column, String whatIsWrong) {
      return new IllegalArgumentException(
          "%s line %d, column '%s' %s".formatted(name, line, column, whatIsWrong));
    }

    private static String spoken(String constantName) {
      return constantName.toLowerCase(java.util.Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }
  }
}
