package leafturn.reports.trial;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
   */
  record Column(String name, String type, String description) {
    static Column text(String name) {
      return new Column(name, "string", "");
    }

    private Map<String, Object> field() {
      Map<String, Object> field = new LinkedHashMap<>();
      field.put("name", name);
      field.put("type", type);
      if (!description.isEmpty()) {
        field.put("description", description);
      }
      return field;
    }
  }

  PackageTable {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    primaryKey = List.copyOf(primaryKey);
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

  private static String cell(String text) {
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
