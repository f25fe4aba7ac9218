package leafturn.records.round;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Days that no station measured yet: the same dates of the whole calendar years on record, one year
 * after the other in turn; of a record without a whole calendar year, the same dates of the years
 * that hold them.
 */
final class StandIn {
  private static final MonthDay LEAP_DAY = MonthDay.of(2, 29);

  private final WeatherSeries record;
  private final int firstYear;
  private final List<Integer> wholeYears;

  private StandIn(WeatherSeries record) {
    this.record = record;
    this.firstYear = record.lastDay().plusDays(1).getYear();
    this.wholeYears = years().filter(this::whole).boxed().toList();
  }

  /**
   * A record with days that stand in after its end, up to a day.
   *
   * @return the record itself where it reaches the day, or as far as stand-ins are to be had
   */
  static WeatherSeries upTo(WeatherSeries record, LocalDate day) {
    int days = record.indexOf(day) + 1;
    return days <= record.days() ? record : new StandIn(record).extended(days);
  }

  private WeatherSeries extended(int days) {
    int[] sources = IntStream.range(0, days).map(this::source).toArray();
    int reached = 0;
    while (reached < days && sources[reached] >= 0) {
      reached++;
    }
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      values.put(
          quantity,
          Arrays.stream(sources, 0, reached)
              .mapToDouble(source -> record.value(quantity, source))
              .toArray());
    }
    return new WeatherSeries(record.firstDay(), values);
  }

  /** The day of the record to take for a day; -1 when there is none. */
  private int source(int index) {
    if (index < record.days()) {
      return index;
    }
    LocalDate day = record.firstDay().plusDays(index);
    MonthDay date = MonthDay.from(day);
    List<Integer> years =
        wholeYears.isEmpty()
            ? years().filter(year -> holds(date, year)).boxed().toList()
            : wholeYears;
    if (years.isEmpty()) {
      return -1;
    }
    return indexOf(date, years.get((day.getYear() - firstYear) % years.size()));
  }

  private IntStream years() {
    return IntStream.rangeClosed(record.firstDay().getYear(), record.lastDay().getYear());
  }

  private boolean whole(int year) {
    return holds(MonthDay.of(1, 1), year) && holds(MonthDay.of(12, 31), year);
  }

  private boolean holds(MonthDay date, int year) {
    int index = indexOf(date, year);
    return index >= 0 && index < record.days();
  }

  private int indexOf(MonthDay date, int year) {
    boolean shifted = date.equals(LEAP_DAY) && !date.isValidYear(year);
    return record.indexOf((shifted ? MonthDay.of(2, 28) : date).atYear(year));
  }
}
