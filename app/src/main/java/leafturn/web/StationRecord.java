package leafturn.web;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.book.StationDay;

/** What a station has measured, and what it has not: its span, its gaps and its months. */
public final class StationRecord {
  private static final List<Quantity> NEEDED =
      List.of(Quantity.MINIMUM_C, Quantity.MAXIMUM_C, Quantity.RAIN_MM);

  private final List<StationDay> days;
  private final List<Gap> gaps;

  /**
   * Days in a row of which temperatures or rain are missing.
   *
   * @param days how many
   */
  public record Gap(LocalDate first, LocalDate last, int days) {}

  /**
   * A month of the record; NaN where nothing was measured.
   *
   * @param days of the month within the span of the record
   * @param missing days of these that lack temperatures or rain
   */
  public record Month(
      YearMonth month,
      int days,
      int missing,
      double meanMinimumC,
      double meanMaximumC,
      double rainMm) {}

  /**
   * @param days in order
   */
  StationRecord(List<StationDay> days) {
    this.days = List.copyOf(days);
    this.gaps = findGaps();
  }

  public boolean isEmpty() {
    return days.isEmpty();
  }

  /** How many days it has. */
  public int size() {
    return days.size();
  }

  public LocalDate firstDay() {
    return days.get(0).day();
  }

  public LocalDate lastDay() {
    return days.get(days.size() - 1).day();
  }

  /** Days from the end of the record to the day before today that are not there. */
  public long daysBehind(LocalDate today) {
    return Math.max(0, ChronoUnit.DAYS.between(lastDay(), today) - 1);
  }

  public List<Gap> gaps() {
    return gaps;
  }

  /** The last days, the latest first. */
  public List<StationDay> latest(int most) {
    List<StationDay> latest =
        new ArrayList<>(days.subList(Math.max(0, days.size() - most), days.size()));
    Collections.reverse(latest);
    return latest;
  }

  private List<Gap> findGaps() {
    List<Gap> found = new ArrayList<>();
    LocalDate next = null;
    for (StationDay day : days) {
      if (!day.values().keySet().containsAll(NEEDED)) {
        continue;
      }
      if (next == null ? day.day().isAfter(firstDay()) : day.day().isAfter(next)) {
        LocalDate first = next == null ? firstDay() : next;
        found.add(gap(first, day.day().minusDays(1)));
      }
      next = day.day().plusDays(1);
    }
    LocalDate first = days.isEmpty() ? null : next == null ? firstDay() : next;
    if (first != null && !first.isAfter(lastDay())) {
      found.add(gap(first, lastDay()));
    }
    return List.copyOf(found);
  }

  private static Gap gap(LocalDate first, LocalDate last) {
    return new Gap(first, last, Math.toIntExact(ChronoUnit.DAYS.between(first, last)) + 1);
  }

  /** Its months, the latest first. */
  public List<Month> months() {
    Map<YearMonth, List<StationDay>> byMonth = new TreeMap<>(Collections.reverseOrder());
    if (!isEmpty()) {
      YearMonth last = YearMonth.from(lastDay());
      for (YearMonth month = YearMonth.from(firstDay());
          !month.isAfter(last);
          month = month.plusMonths(1)) {
        byMonth.put(month, new ArrayList<>());
      }
    }
    days.forEach(
        day -> byMonth.computeIfAbsent(YearMonth.from(day.day()), m -> new ArrayList<>()).add(day));
    return byMonth.entrySet().stream()
        .map(entry -> month(entry.getKey(), entry.getValue()))
        .toList();
  }

  private Month month(YearMonth month, List<StationDay> measured) {
    LocalDate first = latest(month.atDay(1), firstDay());
    LocalDate last = month.atEndOfMonth().isAfter(lastDay()) ? lastDay() : month.atEndOfMonth();
    int length = Math.toIntExact(ChronoUnit.DAYS.between(first, last)) + 1;
    long complete =
        measured.stream().filter(day -> day.values().keySet().containsAll(NEEDED)).count();
    OptionalDouble rain = values(measured, Quantity.RAIN_MM).reduce(Double::sum);
    return new Month(
        month,
        length,
        length - (int) complete,
        values(measured, Quantity.MINIMUM_C).average().orElse(Double.NaN),
        values(measured, Quantity.MAXIMUM_C).average().orElse(Double.NaN),
        rain.orElse(Double.NaN));
  }

  private static LocalDate latest(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }

  private static java.util.stream.DoubleStream values(List<StationDay> days, Quantity quantity) {
    return days.stream()
        .map(day -> day.values().get(quantity))
        .filter(java.util.Objects::nonNull)
        .mapToDouble(Double::doubleValue);
  }
}
