package leafturn.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/** Reads daily weather from a CSV file with a header. */
final class WeatherCsv {
  private static final String DATE = "date";
  private static final String LOCATION = "location";
  private static final int MOST_NAMES_TOLD = 12;
  private static final Map<Quantity, List<String>> NAMES = names();

  private final CsvTable table;
  private final Faults faults;
  private final @Nullable String site;
  private final Map<Quantity, Integer> columns = new EnumMap<>(Quantity.class);
  private final MeasuredDays days = new MeasuredDays();
  private final Map<LocalDate, Long> lineOfDay = new HashMap<>();
  private final Set<String> places = new LinkedHashSet<>();
  private final List<String> notes = new ArrayList<>();
  private @Nullable LocalDate previousDay;
  private long firstLineOutOfOrder;
  private int outOfOrder;

  /**
   * @param site the location to read, or null when the file has only one
   */
  WeatherCsv(SourceText source, @Nullable String site, Faults faults) {
    this.faults = faults;
    this.site = site;
    this.table = new CsvTable(source, faults);
  }

  private static Map<Quantity, List<String>> names() {
    Map<Quantity, List<String>> names = new EnumMap<>(Quantity.class);
    names.put(Quantity.MAXIMUM_C, List.of("temp_max", "tmax_c"));
    names.put(Quantity.MINIMUM_C, List.of("temp_min", "tmin_c"));
    names.put(Quantity.RAIN_MM, List.of("precipitation", "rain_mm"));
    names.put(Quantity.WIND_M_PER_S, List.of("wind", "wind_m_s"));
    names.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, List.of("humidity_max_percent"));
    names.put(Quantity.HUMIDITY_MINIMUM_PERCENT, List.of("humidity_min_percent"));
    names.put(Quantity.DEW_POINT_C, List.of("dewpoint_c"));
    names.put(Quantity.RADIATION_MJ_PER_M2, List.of("radiation_mj_m2"));
    return names;
  }

  /** All days of the place, in order; faults are added to the collection given. */
  MeasuredDays read() {
    findColumns();
    faults.throwIfAny();
    table.forEachRow(this::row);
    checkPlaces();
    if (days.isEmpty() && faults.none()) {
      faults.add("it has a header but no days; add one line for each day.");
    }
    if (outOfOrder > 0) {
      notes.add(
          "%d days stand out of order (the first on line %d); they were sorted."
              .formatted(outOfOrder, firstLineOutOfOrder));
    }
    notes.addAll(table.notes());
    return days;
  }

  /** The place whose days were read, empty when the file names none. */
  String place() {
    return places.size() == 1 ? places.iterator().next() : site == null ? "" : site;
  }

  /** What is worth saying about the file. */
  List<String> notes() {
    return notes;
  }

  private void findColumns() {
    List<String> unused = new ArrayList<>(table.header());
    unused.removeAll(List.of(DATE, LOCATION));
    NAMES.forEach(
        (quantity, names) -> {
          List<String> present = names.stream().filter(name -> table.column(name) >= 0).toList();
          if (present.size() > 1) {
            faults.add(
                1, "%s mean the same; keep one column.".formatted(String.join(" and ", present)));
          }
          if (!present.isEmpty()) {
            columns.put(quantity, table.column(present.get(0)));
          }
          unused.removeAll(names);
        });
    unused.removeIf(String::isEmpty);
    if (table.column(DATE) < 0) {
      missingColumn(List.of(DATE), unused);
    }
    for (Quantity quantity : MeasuredDays.REQUIRED) {
      if (!columns.containsKey(quantity)) {
        missingColumn(NAMES.getOrDefault(quantity, List.of()), unused);
      }
    }
    if (site != null && table.column(LOCATION) < 0) {
      faults.add(1, "there is no column location, so no site can be picked; leave out --site.");
    }
    noteColumns(unused);
  }

  private void missingColumn(List<String> names, List<String> unused) {
    String found =
        names.stream()
            .flatMap(name -> NearestName.of(name, unused).stream())
            .findFirst()
            .map(near -> "it is perhaps the one called %s.".formatted(Faults.quoted(near)))
            .orElse("add it.");
    faults.add(1, "there is no column %s; %s".formatted(String.join(" or ", names), found));
  }

  private void noteColumns(List<String> unused) {
    if (!unused.isEmpty()) {
      notes.add("Columns not used: " + told(unused) + ".");
    }
    if (!columns.containsKey(Quantity.WIND_M_PER_S)) {
      notes.add("There is no wind; 2 m/s is assumed.");
    }
  }

  private void row(CsvTable.Row row) {
    if (table.column(LOCATION) >= 0) {
      String place = row.text(table.column(LOCATION));
      places.add(place);
      boolean wanted = site == null ? places.size() == 1 : place.equals(site);
      if (!wanted) {
        return;
      }
    }
    String text = row.text(table.column(DATE));
    LocalDate day = Dates.parse(text);
    if (day == null) {
      row.fault(table.column(DATE), Dates.fault(text));
      return;
    }
    Long before = lineOfDay.putIfAbsent(day, row.line());
    if (before != null) {
      row.fault(
          table.column(DATE),
          "%s stands here and on line %d; keep one of them.".formatted(day, before));
      return;
    }
    noteOrder(day, row.line());
    days.putDay(day);
    columns.forEach((quantity, column) -> value(row, day, quantity, column));
    checkHumidity(row, day);
    checkTemperatures(row, day);
  }

  private void noteOrder(LocalDate day, long line) {
    if (previousDay != null && day.isBefore(previousDay)) {
      firstLineOutOfOrder = outOfOrder == 0 ? line : firstLineOutOfOrder;
      outOfOrder++;
    }
    previousDay = day;
  }

  private void value(CsvTable.Row row, LocalDate day, Quantity quantity, int column) {
    double value = row.number(column);
    Range limits = WeatherLimits.of(quantity);
    if (Double.isNaN(value)) {
      return;
    }
    if (!limits.contains(value)) {
      row.fault(
          column,
          "%s is out of range; give %s %s %s, or leave the cell empty."
              .formatted(
                  Numbers.plain(value),
                  limits.name(),
                  Numbers.range(limits.low(), limits.high()),
                  limits.unit()));
      return;
    }
    days.put(day, quantity, value);
  }

  private void checkTemperatures(CsvTable.Row row, LocalDate day) {
    double maximum = days.value(day, Quantity.MAXIMUM_C);
    double minimum = days.value(day, Quantity.MINIMUM_C);
    if (maximum < minimum) {
      faults.add(
          row.line(),
          "the maximum of %s °C lies below the minimum of %s °C; correct or remove one."
              .formatted(Numbers.plain(maximum), Numbers.plain(minimum)));
    }
  }

  private void checkHumidity(CsvTable.Row row, LocalDate day) {
    double maximum = days.value(day, Quantity.HUMIDITY_MAXIMUM_PERCENT);
    double minimum = days.value(day, Quantity.HUMIDITY_MINIMUM_PERCENT);
    if (maximum < minimum) {
      faults.add(
          row.line(),
          "the highest humidity of %s %% lies below the lowest of %s %%; correct or remove one."
              .formatted(Numbers.plain(maximum), Numbers.plain(minimum)));
    }
  }

  private void checkPlaces() {
    if (site == null && places.size() > 1) {
      faults.add(
          "it holds %d locations (%s); choose one with --site."
              .formatted(places.size(), told(places)));
    } else if (site != null && !places.contains(site) && table.column(LOCATION) >= 0) {
      faults.add(
          "it has no location %s; it holds %s.".formatted(Faults.quoted(site), told(places)));
    }
  }

  /** Names for a message, the first dozen of them. */
  static String told(java.util.Collection<String> names) {
    String first =
        names.stream()
            .limit(MOST_NAMES_TOLD)
            .map(Faults::quoted)
            .collect(java.util.stream.Collectors.joining(", "));
    return names.size() > MOST_NAMES_TOLD ? first + ", ..." : first;
  }
}
