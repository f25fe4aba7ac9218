package leafturn.model.weather.generator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Rain of a site by the month: how often and how much. A month with too few days on record borrows
 * from its two neighbours, and if they have too few as well from the whole year.
 */
final class RainClimate {
  private static final int FEWEST_DAYS_BEFORE = 10;
  private static final int FEWEST_WET_DAYS = 20;
  private static final int[] REACHES = {0, 1, YearDay.MONTHS / 2};

  private final List<RainOccurrence> occurrence = new ArrayList<>();
  private final List<RainAmount> amount = new ArrayList<>();
  private final List<Integer> borrowing = new ArrayList<>();

  private final int[][][] counts = new int[YearDay.MONTHS][2][2];
  private final double[][] wetDaysMm = new double[YearDay.MONTHS][0];
  private int wetDays;

  private RainClimate() {}

  static RainClimate fitted(
      WeatherSeries weather, IntPredicate usable, WeatherGenerator.Amounts amounts) {
    RainClimate climate = new RainClimate();
    for (int day = 0; day < weather.days(); day++) {
      if (usable.test(day)) {
        climate.count(weather, day, day > 0 && usable.test(day - 1));
      }
    }
    for (int month = 0; month < YearDay.MONTHS; month++) {
      climate.occurrence.add(climate.occurrenceOf(month));
      if (climate.everWet()) {
        climate.amount.add(climate.amountOf(month, amounts));
      }
    }
    return climate;
  }

  private void count(WeatherSeries weather, int day, boolean dayBefore) {
    LocalDate date = weather.dayAt(day);
    int month = YearDay.month(date);
    double rainMm = weather.value(Quantity.RAIN_MM, day);
    boolean wet = wet(rainMm);
    if (wet) {
      wetDays++;
      double[] longer = Arrays.copyOf(wetDaysMm[month], wetDaysMm[month].length + 1);
      longer[longer.length - 1] = rainMm;
      wetDaysMm[month] = longer;
    }
    if (dayBefore) {
      boolean wetBefore = wet(weather.value(Quantity.RAIN_MM, day - 1));
      counts[month][wetBefore ? 1 : 0][wet ? 1 : 0]++;
    }
  }

  static boolean wet(double rainMm) {
    return rainMm >= WeatherGenerator.LEAST_WET_DAY_MM;
  }

  private RainOccurrence occurrenceOf(int month) {
    if (wetDays == 0) {
      return new RainOccurrence(0, 0);
    }
    double afterDry = chance(month, 0, 1);
    return new RainOccurrence(afterDry, chance(month, 1, afterDry));
  }

  /** Chance of a wet day after a dry (0) or wet (1) one. */
  private double chance(int month, int before, double whereNeverSeen) {
    for (int reach : REACHES) {
      int dry = 0;
      int wet = 0;
      for (int away = -reach; away <= Math.min(reach, YearDay.MONTHS - 1 - reach); away++) {
        int[] after = counts[Math.floorMod(month + away, YearDay.MONTHS)][before];
        dry += after[0];
        wet += after[1];
      }
      if (dry + wet >= FEWEST_DAYS_BEFORE) {
        note(month, reach);
        return share(wet, dry + wet);
      }
    }
    return whereNeverSeen;
  }

  /** Share of some days; what was never seen keeps the chance of half a day more. */
  private static double share(int some, int all) {
    return some == 0 || some == all ? (some + 0.5) / (all + 1) : (double) some / all;
  }

  private RainAmount amountOf(int month, WeatherGenerator.Amounts amounts) {
    double[] values = {};
    for (int reach : REACHES) {
      List<double[]> parts = new ArrayList<>();
      for (int away = -reach; away <= Math.min(reach, YearDay.MONTHS - 1 - reach); away++) {
        parts.add(wetDaysMm[Math.floorMod(month + away, YearDay.MONTHS)]);
      }
      values = parts.stream().flatMapToDouble(Arrays::stream).toArray();
      if (values.length >= FEWEST_WET_DAYS) {
        note(month, reach);
        break;
      }
    }
    boolean differ = Arrays.stream(values).distinct().count() > 1;
    return amounts == WeatherGenerator.Amounts.GAMMA && differ
        ? GammaAmount.fitted(values)
        : MixedExponentialAmount.fitted(values);
  }

  private void note(int month, int reach) {
    if (reach > 0 && !borrowing.contains(month)) {
      borrowing.add(month);
    }
  }

  RainOccurrence occurrence(int month) {
    return occurrence.get(month);
  }

  /** Amounts of a month; asked only where it can rain. */
  RainAmount amount(int month) {
    return amount.get(month);
  }

  boolean everWet() {
    return wetDays > 0;
  }

  /** Months, 0 to 11, whose rain rests on other months too. */
  List<Integer> borrowing() {
    return borrowing.stream().sorted().toList();
  }
}
