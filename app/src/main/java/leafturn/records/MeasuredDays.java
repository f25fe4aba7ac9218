package leafturn.records;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import leafturn.model.weather.WeatherSeries.Quantity;

/** What a weather file says of the days of one place, with the gaps it has. */
final class MeasuredDays {
  static final List<Quantity> REQUIRED =
      List.of(Quantity.MAXIMUM_C, Quantity.MINIMUM_C, Quantity.RAIN_MM);

  private static final int MOST_DAYS_IN_TOTAL = 366;

  private final NavigableMap<LocalDate, double[]> days = new TreeMap<>();
  private final List<RainTotal> rainTotals = new ArrayList<>();

  /**
   * Rain that was read once for several days.
   *
   * @param lastDay day of the reading
   * @param days number of days up to and with that day, or 0 when the file does not say
   * @param rainMm rain of all these days, mm
   */
  record RainTotal(LocalDate lastDay, int days, double rainMm) {}

  /** Books a value; true when the day had none of this quantity before. */
  boolean put(LocalDate day, Quantity quantity, double value) {
    double[] values = days.computeIfAbsent(day, key -> emptyDay());
    boolean first = Double.isNaN(values[quantity.ordinal()]);
    values[quantity.ordinal()] = value;
    return first;
  }

  private static double[] emptyDay() {
    double[] values = new double[Quantity.values().length];
    Arrays.fill(values, Double.NaN);
    return values;
  }

  /** Books a day of which nothing needs to have been measured. */
  void putDay(LocalDate day) {
    days.computeIfAbsent(day, key -> emptyDay());
  }

  void putRainTotal(RainTotal total) {
    rainTotals.add(total);
  }

  List<RainTotal> rainTotals() {
    return rainTotals;
  }

  /** Shares rain that was read once for several days equally among those that have none. */
  void shareRainTotals() {
    for (RainTotal total : rainTotals) {
      List<LocalDate> without = new ArrayList<>();
      LocalDate day = total.lastDay();
      int most = total.days() > 0 ? total.days() : MOST_DAYS_IN_TOTAL;
      while (without.size() < most
          && !day.isBefore(firstDay())
          && Double.isNaN(value(day, Quantity.RAIN_MM))) {
        without.add(day);
        day = day.minusDays(1);
      }
      if (without.size() == total.days() || total.days() == 0) {
        without.forEach(each -> put(each, Quantity.RAIN_MM, total.rainMm() / without.size()));
      }
    }
  }

  boolean isEmpty() {
    return days.isEmpty();
  }

  /** The measured value, or NaN. */
  double value(LocalDate day, Quantity quantity) {
    double[] values = days.get(day);
    return values == null ? Double.NaN : values[quantity.ordinal()];
  }

  /** Hands over the days in order with their values by the ordinal of the quantity, NaN in gaps. */
  void forEach(BiConsumer<LocalDate, double[]> use) {
    days.forEach(use);
  }

  LocalDate firstDay() {
    return days.firstKey();
  }

  LocalDate lastDay() {
    return days.lastKey();
  }

  /**
   * Forgets the days before the first and after the last on which all that is required is there.
   */
  int trimToCompleteDays() {
    int before = days.size();
    while (!days.isEmpty() && !complete(days.firstEntry().getValue())) {
      days.pollFirstEntry();
    }
    while (!days.isEmpty() && !complete(days.lastEntry().getValue())) {
      days.pollLastEntry();
    }
    return before - days.size();
  }

  private static boolean complete(double[] values) {
    return REQUIRED.stream().noneMatch(quantity -> Double.isNaN(values[quantity.ordinal()]));
  }

  /** One column a quantity from first to last day, NaN in the gaps. */
  Map<Quantity, double[]> columns() {
    int length = Math.toIntExact(ChronoUnit.DAYS.between(firstDay(), lastDay())) + 1;
    Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      double[] column = new double[length];
      Arrays.fill(column, Double.NaN);
      columns.put(quantity, column);
    }
    days.forEach(
        (day, values) -> {
          int index = Math.toIntExact(ChronoUnit.DAYS.between(firstDay(), day));
          columns.forEach((quantity, column) -> column[index] = values[quantity.ordinal()]);
        });
    return columns;
  }

  /** What was measured, by day; days of which nothing was are left out. */
  SortedMap<LocalDate, Map<Quantity, Double>> byDay() {
    SortedMap<LocalDate, Map<Quantity, Double>> measured = new TreeMap<>();
    days.forEach(
        (day, values) -> {
          Map<Quantity, Double> present = new EnumMap<>(Quantity.class);
          for (Quantity quantity : Quantity.values()) {
            double value = values[quantity.ordinal()];
            if (!Double.isNaN(value)) {
              present.put(quantity, value);
            }
          }
          if (!present.isEmpty()) {
            measured.put(day, present);
          }
        });
    return measured;
  }

  /** Reports each day whose maximum lies below its minimum. */
  void checkTemperatures(Faults faults) {
    days.forEach(
        (day, values) -> {
          double maximum = values[Quantity.MAXIMUM_C.ordinal()];
          double minimum = values[Quantity.MINIMUM_C.ordinal()];
          if (maximum < minimum) {
            faults.add(
                "on %s the maximum of %s °C lies below the minimum of %s °C; correct or remove one."
                    .formatted(day, Numbers.plain(maximum), Numbers.plain(minimum)));
          }
        });
  }
}
