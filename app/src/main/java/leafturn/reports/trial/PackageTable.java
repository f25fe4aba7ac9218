package leafturn.reports.trial;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import leafturn.records.exchange.Guarded;

/**
 * A table of a data package: its rows as CSV by RFC 4180, and its columns as the descriptor tells
 * them. A text that a spreadsheet might take for a formula has an apostrophe before it.
 *
 * @param rows cells as many as there are columns; empty for a missing value
 * @param primaryKey columns that tell rows apart; empty for none
 */
record PackageTable(List<Column> columns, List<List<String>> rows, List<String> primaryKey) {
  private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.]+([eE][-+]?[0-9]+)?");

  /**
   * A column.
   *
   * @param type of the Frictionless table schema: string, number, integer or date
   * @param description what it holds; empty where its name says it
   * @param constraints what its cells keep to, by the words of the table schema
   */
  record Column(String name, String type, String description, Map<String, Object> constraints) {
    Column(String name, String type, String description) {
      this(name, type, description, Map.of());
    }

    static Column text(String name) {
      return new Column(name, "string", "");
    }

    /** The same, each row of which has a cell. */
    Column required() {
      return with("required", true);
    }

    /** The same with a further constraint. */
    Column with(String constraint, Object value) {
      Map<String, Object> all = new LinkedHashMap<>(constraints);
      all.put(constraint, value);
      return new Column(name, type, description, all);
    }

    private Map<String, Object> field() {
      Map<String, Object> field = new LinkedHashMap<>();
      field.put("name", name);
      field.put("type", type);
      if (!description.isEmpty()) {
        field.put("description", description);
      }
      if (!constraints.isEmpty()) {
        field.put("constraints", constraints);
      }
      return field;
    }
  }

  PackageTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    primaryKey = List.copyOf(primaryKey);
  }

  /**
   * A table whose rows are told apart by the first of its columns that are named; without a key
   * where two rows are alike in all of them.
   *
   * @param candidates columns that may tell rows apart, in their order
   * @param fewest how many of them belong to the key anyhow
   */
  static PackageTable keyed(
      List<Column> columns, List<List<String>> rows, List<String> candidates, int fewest) {
    List<String> names = columns.stream().map(Column::name).toList();
    for (int size = fewest; size <= candidates.size(); size++) {
      List<String> key = candidates.subList(0, size);
      Set<List<String>> seen = new HashSet<>();
      if (rows.stream()
          .allMatch(row -> seen.add(key.stream().map(names::indexOf).map(row::get).toList()))) {
        return new PackageTable(columns, rows, key);
      }
    }
    return new PackageTable(columns, rows, List.of());
  }

  String csv() {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      csv.writeRecord(columns.stream().map(column -> cell(column.name())).toList());
      for (List<String> row : rows) {
        csv.writeRecord(row.stream().map(PackageTable::cell).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** A text as it stands in the file. */
  static String cell(String text) {
    return NUMBER.matcher(text).matches() ? text : Guarded.write(text);
  }

  /**
   * The table schema.
   *
   * @param ofPlots whether this is the table in which others look up their column {@code plot}
   */
  Map<String, Object> schema(boolean ofPlots) {
    List<Map<String, Object>> fields = new ArrayList<>();
    columns.forEach(column -> fields.add(column.field()));
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("fields", fields);
    schema.put("missingValues", List.of(""));
    if (!primaryKey.isEmpty()) {
      schema.put("primaryKey", primaryKey);
    }
    if (!ofPlots) {
      // Ordered maps: equal trials give equal bytes.
      Map<String, Object> reference = new LinkedHashMap<>();
      reference.put("resource", "plots");
      reference.put("fields", List.of("plot"));
      Map<String, Object> key = new LinkedHashMap<>();
      key.put("fields", List.of("plot"));
      key.put("reference", reference);
      schema.put("foreignKeys", List.of(key));
    }
    return schema;
  }
}
