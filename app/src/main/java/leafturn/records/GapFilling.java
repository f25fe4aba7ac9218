package leafturn.records;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.FilledValue.FillRule;

/**
 * Fills what a weather file leaves out, and lists every value it fills.
 *
 * <p>Up to three days in a row: temperatures on the straight line between the neighbours, no rain.
 * Longer gaps only when asked to: the mean of the same calendar day in the file's other years, else
 * as for short gaps. Rain that was read once for several days is shared equally among them. Wind,
 * humidity and radiation stay missing: the model has rules of its own for them.
 */
final class GapFilling {
  static final int LONGEST_SHORT_GAP = 3;

  private final MeasuredDays measured;
  private final boolean fillLongGaps;
  private final Faults faults;
  private final Map<Quantity, double[]> columns;
  private final List<FilledValue> filled = new ArrayList<>();
  private final Map<Gap, List<Quantity>> tooLong = new LinkedHashMap<>();

  private record Gap(int first, int last) {
    int days() {
      return last - first + 1;
    }
  }

  GapFilling(MeasuredDays measured, boolean fillLongGaps, Faults faults) {
    this.measured = measured;
    this.fillLongGaps = fillLongGaps;
    this.faults = faults;
    this.columns = measured.columns();
  }

  /**
   * The complete series.
   *
   * @throws InputException when gaps stay open, with all other faults of the file
   */
  WeatherSeries fill() {
    for (Quantity quantity : MeasuredDays.REQUIRED) {
      if (Arrays.stream(column(quantity)).allMatch(Double::isNaN)) {
        faults.add(WeatherLimits.of(quantity).name() + " is missing on every day; add it.");
      }
    }
    faults.throwIfAny();
    measured.rainTotals().forEach(this::shareTotal);
    MeasuredDays.REQUIRED.forEach(this::fillGaps);
    tooLong.forEach(this::reportGap);
    faults.throwIfAny();
    keepMinimumBelowMaximum();
    filled.sort(Comparator.comparing(FilledValue::day).thenComparing(FilledValue::quantity));
    return new WeatherSeries(measured.firstDay(), columns);
  }

  /** Values that were filled, by day. */
  List<FilledValue> filled() {
    return filled;
  }

  private double[] column(Quantity quantity) {
    double[] column = columns.get(quantity);
    if (column == null) {
      throw new IllegalStateException("there is no column for " + quantity);
    }
    return column;
  }

  private void shareTotal(MeasuredDays.RainTotal total) {
    double[] rain = column(Quantity.RAIN_MM);
    long end = ChronoUnit.DAYS.between(measured.firstDay(), total.lastDay());
    if (end < 0 || end >= rain.length) {
      return;
    }
    int last = (int) end;
    int first = last;
    int most = total.days() > 0 ? total.days() : rain.length;
    while (first > 0 && last - first + 1 < most && Double.isNaN(rain[first - 1])) {
      first--;
    }
    Gap gap = new Gap(first, last);
    if (!Double.isNaN(rain[last]) || (total.days() > 0 && gap.days() < total.days())) {
      faults.add(
          "the rain total of %s for %d days overlaps days with rain of their own; remove one of them."
              .formatted(total.lastDay(), Math.max(1, total.days())));
    } else if (gap.days() > LONGEST_SHORT_GAP && !fillLongGaps) {
      tooLong.computeIfAbsent(gap, key -> new ArrayList<>()).add(Quantity.RAIN_MM);
    } else {
      for (int day = first; day <= last; day++) {
        take(Quantity.RAIN_MM, day, total.rainMm() / gap.days(), FillRule.SHARE_OF_TOTAL);
      }
    }
  }

  private void fillGaps(Quantity quantity) {
    double[] column = column(quantity);
    double[] before = column.clone();
    int day = 0;
    while (day < column.length) {
      if (!Double.isNaN(before[day])) {
        day++;
        continue;
      }
      int last = day;
      while (last + 1 < column.length && Double.isNaN(before[last + 1])) {
        last++;
      }
      fillGap(quantity, before, new Gap(day, last));
      day = last + 1;
    }
  }

  private void fillGap(Quantity quantity, double[] before, Gap gap) {
    boolean isLong = gap.days() > LONGEST_SHORT_GAP;
    if (isLong && !fillLongGaps) {
      List<Quantity> missing = tooLong.computeIfAbsent(gap, key -> new ArrayList<>());
      if (!missing.contains(quantity)) {
        missing.add(quantity);
      }
      return;
    }
    for (int day = gap.first(); day <= gap.last(); day++) {
      double otherYears = isLong ? meanOfOtherYears(quantity, day) : Double.NaN;
      if (!Double.isNaN(otherYears)) {
        take(quantity, day, otherYears, FillRule.SAME_DAY_OF_OTHER_YEARS);
      } else if (quantity == Quantity.RAIN_MM) {
        take(quantity, day, 0, FillRule.NO_RAIN);
      } else {
        take(quantity, day, betweenNeighbours(before, gap, day), FillRule.BETWEEN_NEIGHBOURS);
      }
    }
  }

  private static double betweenNeighbours(double[] values, Gap gap, int day) {
    double left = gap.first() > 0 ? values[gap.first() - 1] : Double.NaN;
    double right = gap.last() + 1 < values.length ? values[gap.last() + 1] : Double.NaN;
    if (Double.isNaN(left)) {
      return right;
    }
    if (Double.isNaN(right)) {
      return left;
    }
    double share = (day - gap.first() + 1.0) / (gap.days() + 1);
    return left + share * (right - left);
  }

  private double meanOfOtherYears(Quantity quantity, int index) {
    LocalDate day = measured.firstDay().plusDays(index);
    MonthDay calendarDay = MonthDay.from(day);
    double sum = 0;
    int years = 0;
    for (int year = measured.firstDay().getYear(); year <= measured.lastDay().getYear(); year++) {
      if (!calendarDay.isValidYear(year)) {
        continue;
      }
      double value = measured.value(calendarDay.atYear(year), quantity);
      if (!Double.isNaN(value)) {
        sum += value;
        years++;
      }
    }
    return years == 0 ? Double.NaN : sum / years;
  }

  /** A filled temperature must not cross the measured one of the same day. */
  private void keepMinimumBelowMaximum() {
    double[] minimum = column(Quantity.MINIMUM_C);
    double[] maximum = column(Quantity.MAXIMUM_C);
    for (int place = 0; place < filled.size(); place++) {
      FilledValue value = filled.get(place);
      int day = Math.toIntExact(ChronoUnit.DAYS.between(measured.firstDay(), value.day()));
      if (minimum[day] <= maximum[day] || value.quantity() == Quantity.RAIN_MM) {
        continue;
      }
      boolean isMinimum = value.quantity() == Quantity.MINIMUM_C;
      double kept = isMinimum ? maximum[day] : minimum[day];
      column(value.quantity())[day] = kept;
      filled.set(place, new FilledValue(value.day(), value.quantity(), kept, value.rule()));
    }
  }

  private void take(Quantity quantity, int index, double value, FillRule rule) {
    column(quantity)[index] = value;
    filled.add(new FilledValue(measured.firstDay().plusDays(index), quantity, value, rule));
  }

  private void reportGap(Gap gap, List<Quantity> quantities) {
    String what =
        quantities.stream()
            .map(quantity -> WeatherLimits.of(quantity).name())
            .collect(Collectors.joining(", "));
    faults.add(
        "%s to %s: %d days lack %s; at most %d in a row are filled in, so add them or use --fill."
            .formatted(
                measured.firstDay().plusDays(gap.first()),
                measured.firstDay().plusDays(gap.last()),
                gap.days(),
                what,
                LONGEST_SHORT_GAP));
  }
}
