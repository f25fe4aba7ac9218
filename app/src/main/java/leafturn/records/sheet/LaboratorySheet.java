package leafturn.records.sheet;

import java.util.List;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A laboratory and how its tables are read.
 *
 * @param name its name
 * @param columns what the columns of its tables hold; others are passed over
 * @param dates how its dates are written
 * @param duplicates how a second measurement of a sample comes
 * @param note anything to remember; may be null
 */
public record LaboratorySheet(
    String name,
    List<Column> columns,
    DateOrder dates,
    Duplicates duplicates,
    @Nullable String note)
    implements Content {
  private static final int MOST_COLUMNS = 60;

  public LaboratorySheet {
    columns = List.copyOf(columns);
  }

  /** How dates are written. */
  public enum DateOrder {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST
  }

  /** How a second measurement of a sample comes. */
  public enum Duplicates {
    /** Every sample stands once; a second row is a fault. */
    NONE,
    /** The sample stands again in a row of its own. */
    REPEATED_ROWS
  }

  /** What a column of a table holds. */
  public enum Holds {
    /** A value of the outcome that the mapping names. */
    VALUE("value of an outcome"),
    PLOT("plot"),
    SAMPLE("code on the bag"),
    DATE("day of sampling"),
    BATCH("batch"),
    DUPLICATE("number of the duplicate"),
    RATER("rater"),
    NOTE("note");

    private final String words;

    Holds(String words) {
      this.words = words;
    }

    /** What it holds, for people. */
    public String words() {
      return words;
    }
  }

  /**
   * A column.
   *
   * @param heading as the laboratory writes it
   * @param holds what is in it
   * @param outcome name of the outcome, for a value
   * @param unit unit of its values, for a value; "none" for one without
   * @param method extractant or method, for a value, or null
   * @param detectionLimit in that unit, 0 to 1e9, or null
   */
  public record Column(
      String heading,
      Holds holds,
      @Nullable String outcome,
      @Nullable String unit,
      @Nullable String method,
      @Nullable Double detectionLimit) {
    private static Column read(JsonObject json) {
      Column column =
          new Column(
              json.requiredText("heading", Limits.NAME, "the heading of the column"),
              Choice.required(json, "holds", Holds.class),
              json.text("outcome", Limits.NAME),
              json.text("unit", Limits.NAME),
              json.text("method", Limits.NAME),
              json.number("detectionLimit", 0, 1e9, "in the unit of the column"));
      if (column.holds == Holds.VALUE && !json.has("outcome")) {
        json.missing("outcome", "the outcome whose values it holds");
      }
      if (column.holds == Holds.VALUE && !json.has("unit")) {
        json.missing("unit", "the unit of its values, for instance mg/kg, or none");
      }
      json.refuseOthers();
      return column;
    }
  }

  static LaboratorySheet read(JsonObject json) {
    String name = json.requiredText("name", Limits.NAME, "the name of the laboratory");
    List<Column> columns = json.objects("columns").stream().map(Column::read).toList();
    if (columns.isEmpty()) {
      json.requireItems("columns", "the columns of its tables");
    }
    if (columns.size() > MOST_COLUMNS) {
      json.fault(
          "columns", "there are %d; give %d at most.".formatted(columns.size(), MOST_COLUMNS));
    }
    if (columns.stream().map(Column::heading).distinct().count() < columns.size()) {
      json.fault("columns", "two columns have the same heading; keep one of them.");
    }
    DateOrder dates = Choice.required(json, "dates", DateOrder.class);
    Duplicates duplicates = Choice.required(json, "duplicates", Duplicates.class);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new LaboratorySheet(name, columns, dates, duplicates, note);
  }
}
