package leafturn.records;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import leafturn.model.lawn.LogEntry;
import org.jspecify.annotations.Nullable;

/**
 * Reads a lawn's log: a CSV with one line for each thing done.
 *
 * <p>Columns {@code date} and {@code what} are required. A line that is {@code mown} takes {@code
 * height_before_mm}, {@code height_after_mm} and {@code clippings}, one that is {@code fed} takes
 * {@code fast_n_g_m2}, {@code slow_n_g_m2}, {@code p_g_m2} and {@code k_g_m2}, one that is {@code
 * watered} takes {@code water_mm}. {@code note} is free text. A log that a book wrote may have more
 * columns and tell of more; what the model does not use of it is passed over and noted.
 */
public final class LogFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 5_000_000;

  private static final String DATE = "date";
  private static final String WHAT = "what";
  private static final String BEFORE = "height_before_mm";
  private static final String AFTER = "height_after_mm";
  private static final String CLIPPINGS = "clippings";
  private static final String FAST_N = "fast_n_g_m2";
  private static final String SLOW_N = "slow_n_g_m2";
  private static final String PHOSPHORUS = "p_g_m2";
  private static final String POTASSIUM = "k_g_m2";
  private static final String WATER = "water_mm";
  private static final String NOTE = "note";

  private static final String MOWN = "mown";
  private static final String FED = "fed";
  private static final String WATERED = "watered";

  private static final List<String> KINDS = List.of(MOWN, FED, WATERED);
  private static final Map<String, Set<String>> COLUMNS_OF =
      Map.of(
          MOWN, Set.of(BEFORE, AFTER, CLIPPINGS),
          FED, Set.of(FAST_N, SLOW_N, PHOSPHORUS, POTASSIUM),
          WATERED, Set.of(WATER));
  private static final List<String> COLUMNS =
      List.of(
          DATE, WHAT, BEFORE, AFTER, CLIPPINGS, FAST_N, SLOW_N, PHOSPHORUS, POTASSIUM, WATER, NOTE);

  private final CsvTable table;
  private final Faults faults;
  private final List<LogReading.Line> lines = new ArrayList<>();
  private final Map<LogEntry, Long> lineOf = new HashMap<>();
  private final PassedOver passedOver = new PassedOver();
  private long firstLineOutOfOrder;

  private LogFile(SourceText source) {
    this.faults = new Faults(source.name());
    this.table = new CsvTable(source, faults);
  }

  /**
   * Reads a log from a file.
   *
   * @throws InputException with one sentence for each fault of the file
   */
  public static LogReading read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a log from text; a header without lines is a log in which nothing was done yet.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static LogReading read(SourceText source) {
    return new LogFile(source).reading();
  }

  private LogReading reading() {
    checkHeader();
    faults.throwIfAny();
    table.forEachRow(this::row);
    faults.throwIfAny();
    List<String> notes = new ArrayList<>(table.notes());
    if (firstLineOutOfOrder > 0) {
      notes.add(
          "The entries are not in order of their dates (from line %d on); they were sorted."
              .formatted(firstLineOutOfOrder));
    }
    lines.sort(Comparator.comparing(line -> line.entry().day()));
    return new LogReading(lines, notes, passedOver.notes(table.header()));
  }

  private void checkHeader() {
    for (String name : List.of(DATE, WHAT)) {
      if (table.column(name) < 0) {
        faults.add(1, "there is no column %s; add it.".formatted(name));
      }
    }
    for (String name : table.header()) {
      if (!name.isEmpty() && !COLUMNS.contains(name) && !PassedOver.isColumn(name)) {
        faults.add(
            1,
            "a log has no column %s; %s"
                .formatted(Faults.quoted(name), NearestName.advice(name, COLUMNS)));
      }
    }
  }

  private void row(CsvTable.Row row) {
    long faultsBefore = faults.count();
    String text = row.text(table.column(DATE));
    LocalDate day = Dates.parse(text);
    if (day == null) {
      row.fault(table.column(DATE), Dates.fault(text));
    }
    String kind = row.text(table.column(WHAT)).toLowerCase(Locale.ROOT);
    if (passedOver.takes(kind)) {
      return;
    }
    if (!KINDS.contains(kind)) {
      row.fault(
          table.column(WHAT),
          "%s is nothing a log knows; give one of %s.".formatted(Faults.quoted(kind), known()));
      return;
    }
    refuseCellsOfOtherKinds(row, kind);
    LogEntry entry = entry(row, kind, day == null ? LocalDate.EPOCH : day);
    if (faults.count() == faultsBefore) {
      keep(
          new LogReading.Line(row.line(), entry, text(row, NOTE)),
          text(row, PassedOver.ID) == null);
    }
  }

  private static String known() {
    return "%s, or of what the model does not use %s"
        .formatted(String.join(", ", KINDS), String.join(", ", PassedOver.kinds()));
  }

  private LogEntry entry(CsvTable.Row row, String kind, LocalDate day) {
    return switch (kind) {
      case MOWN -> mown(row, day);
      case FED -> fed(row, day);
      default -> new LogEntry.Watered(day, required(row, WATER, 0, Amounts.MOST_WATER_MM, "mm"));
    };
  }

  private @Nullable String text(CsvTable.Row row, String name) {
    int column = table.column(name);
    return column < 0 || row.text(column).isEmpty() ? null : row.text(column);
  }

  /** Keeps a line; without ids, two lines that say the same may be one entered twice. */
  private void keep(LogReading.Line line, boolean withoutId) {
    Long before = lineOf.putIfAbsent(line.entry(), line.number());
    if (before != null && withoutId) {
      faults.add(
          line.number(),
          "the same was entered on line %d; remove one, or tell them apart by their heights."
              .formatted(before));
      return;
    }
    if (firstLineOutOfOrder == 0 && isLate(line)) {
      firstLineOutOfOrder = line.number();
    }
    lines.add(line);
  }

  private boolean isLate(LogReading.Line line) {
    return !lines.isEmpty()
        && line.entry().day().isBefore(lines.get(lines.size() - 1).entry().day());
  }

  private void refuseCellsOfOtherKinds(CsvTable.Row row, String kind) {
    COLUMNS_OF.forEach(
        (other, columns) -> {
          if (other.equals(kind)) {
            return;
          }
          for (String name : columns) {
            int column = table.column(name);
            if (column >= 0 && !row.text(column).isEmpty()) {
              row.fault(
                  column,
                  "it belongs to %s, but this line is %s; empty it.".formatted(other, kind));
            }
          }
        });
  }

  private LogEntry mown(CsvTable.Row row, LocalDate day) {
    double before = number(row, BEFORE, Amounts.LOWEST_GRASS_MM, Amounts.HIGHEST_GRASS_MM, "mm");
    double after = number(row, AFTER, Amounts.LOWEST_GRASS_MM, Amounts.HIGHEST_GRASS_MM, "mm");
    double returned = returnedShare(row);
    if (after > before) {
      row.fault(
          table.column(AFTER),
          "%s mm is above the height before, %s mm; give a lower one."
              .formatted(Numbers.plain(after), Numbers.plain(before)));
      return new LogEntry.Mown(day, Double.NaN, Double.NaN, returned);
    }
    return new LogEntry.Mown(day, before, after, returned);
  }

  private double returnedShare(CsvTable.Row row) {
    int column = table.column(CLIPPINGS);
    String text = column < 0 ? "" : row.text(column).toLowerCase(Locale.ROOT);
    String right = "give returned, collected, or the share returned from 0 to 1.";
    switch (text) {
      case "returned":
        return 1;
      case "collected":
        return 0;
      case "":
        faults.add(row.line(), CLIPPINGS, "it is missing; " + right);
        return 0;
      default:
        if (!Character.isDigit(text.charAt(0)) && text.charAt(0) != '.') {
          row.fault(column, "%s is not usable; %s".formatted(Faults.quoted(text), right));
          return 0;
        }
        double share = number(row, CLIPPINGS, 0, 1, "");
        return Double.isNaN(share) ? 0 : share;
    }
  }

  private LogEntry fed(CsvTable.Row row, LocalDate day) {
    double fast = number(row, FAST_N, 0, Amounts.MOST_G_PER_M2, "g/m²");
    double slow = number(row, SLOW_N, 0, Amounts.MOST_G_PER_M2, "g/m²");
    double phosphorus = number(row, PHOSPHORUS, 0, Amounts.MOST_G_PER_M2, "g/m²");
    double potassium = number(row, POTASSIUM, 0, Amounts.MOST_G_PER_M2, "g/m²");
    if (DoubleStream.of(fast, slow, phosphorus, potassium).allMatch(Double::isNaN)) {
      faults.add(row.line(), "the line is fed but has no amount; give at least one in g/m².");
    }
    return new LogEntry.Fed(day, orNone(fast), orNone(slow), orNone(phosphorus), orNone(potassium));
  }

  private static double orNone(double amount) {
    return Double.isNaN(amount) ? 0 : amount;
  }

  private double required(CsvTable.Row row, String name, double low, double high, String unit) {
    int column = table.column(name);
    if (column < 0 || row.text(column).isEmpty()) {
      faults.add(
          row.line(),
          name,
          "it is missing; give a number %s %s.".formatted(Numbers.range(low, high), unit));
      return 0;
    }
    return number(row, name, low, high, unit);
  }

  /** A number within limits; NaN when the cell is empty or its fault was reported. */
  private double number(CsvTable.Row row, String name, double low, double high, String unit) {
    int column = table.column(name);
    if (column < 0) {
      return Double.NaN;
    }
    double value = row.number(column);
    if (value < low || value > high) {
      row.fault(
          column,
          "%s is out of range; give a number %s %s."
              .formatted(Numbers.plain(value), Numbers.range(low, high), unit)
              .replace(" .", "."));
      return Double.NaN;
    }
    return value;
  }
}
