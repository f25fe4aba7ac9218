package leafturn.advice.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.model.Parameters;
import leafturn.model.grass.AnnualBluegrassSeedHeads;
import leafturn.model.grass.Species;
import leafturn.model.weather.DailyEvapotranspiration;
import leafturn.model.weather.DegreeDays;
import leafturn.model.weather.GrowingPotential;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A weather record by the month and by the year: what fell, what a well-watered lawn would have
 * given back, and how many good growing days it had.
 *
 * @param months in order
 * @param years in order
 * @param evapotranspirationFromTemperature share of the days whose reference evapotranspiration
 *     rests on temperatures alone, 0-1; NaN when it was not worked out
 * @param lastDay the hours of the last day, or null without a site
 */
public record WeatherAccount(
    List<Span> months,
    List<Year> years,
    double evapotranspirationFromTemperature,
    @Nullable LastDay lastDay) {
  private static final int FIRST_MONTH_OF_SECOND_HALF = 7;

  public WeatherAccount {
    months = List.copyOf(months);
    years = List.copyOf(years);
  }

  /**
   * Sums and means of a month or year.
   *
   * @param name 2015 or 2015-05
   * @param days days of the record in it
   * @param complete true when that is all of its days
   * @param wetDays days with any rain
   * @param meanMaximumC mean of the maximum temperatures, °C
   * @param meanMinimumC mean of the minimum temperatures, °C
   * @param meanWindMPerS mean wind, m/s, NaN when not measured
   * @param referenceEtMm reference evapotranspiration, mm, NaN without a site
   * @param growthDaysCool sum of the growing potential of cool-season grasses, days
   * @param growthDaysWarm sum of the growing potential of warm-season grasses, days
   * @param warmth its degree-days
   */
  public record Span(
      String name,
      int days,
      boolean complete,
      double rainMm,
      int wetDays,
      double meanMaximumC,
      double meanMinimumC,
      double meanWindMPerS,
      double referenceEtMm,
      double growthDaysCool,
      double growthDaysWarm,
      Warmth warmth) {}

  /**
   * Degree-days by the mean of the day's extremes, °C d.
   *
   * @param aboveMinus5Cd above -5 °C, by which annual bluegrass flowers
   * @param above0Cd above 0 °C
   * @param above10Cd above 10 °C
   */
  public record Warmth(double aboveMinus5Cd, double above0Cd, double above10Cd) {}

  /**
   * A calendar year.
   *
   * @param total its sums and means
   * @param lastFrostBeforeJuly last day of its first half with a minimum of 0 °C or less, or null
   * @param firstFrostFromJuly first such day of its second half, or null
   */
  public record Year(
      Span total,
      @Nullable LocalDate lastFrostBeforeJuly,
      @Nullable LocalDate firstFrostFromJuly) {}

  /**
   * Sums a record.
   *
   * @param weather the record
   * @param site where it was measured, or null when unknown: then there is no evapotranspiration
   */
  public static WeatherAccount of(WeatherSeries weather, @Nullable Site site) {
    DailyValues daily = DailyValues.of(weather, site);
    List<Span> months = new ArrayList<>();
    List<Year> years = new ArrayList<>();
    int firstOfYear = 0;
    int firstOfMonth = 0;
    for (int day = 0; day < weather.days(); day++) {
      LocalDate date = weather.dayAt(day);
      boolean last = day == weather.days() - 1;
      if (last || weather.dayAt(day + 1).getMonth() != date.getMonth()) {
        YearMonth month = YearMonth.from(date);
        months.add(span(daily, month.toString(), firstOfMonth, day + 1, month.lengthOfMonth()));
        firstOfMonth = day + 1;
      }
      if (last || weather.dayAt(day + 1).getYear() != date.getYear()) {
        String name = Integer.toString(date.getYear());
        Span total = span(daily, name, firstOfYear, day + 1, date.lengthOfYear());
        years.add(year(weather, total, firstOfYear, day + 1));
        firstOfYear = day + 1;
      }
    }
    return new WeatherAccount(
        months,
        years,
        daily.fromTemperatureFraction(),
        site == null ? null : LastDay.of(weather, site));
  }

  private record DailyValues(
      WeatherSeries weather,
      double[] evapotranspirationMm,
      double[] cool,
      double[] warm,
      double fromTemperatureFraction) {

    static DailyValues of(WeatherSeries weather, @Nullable Site site) {
      double[] evapotranspirationMm = new double[weather.days()];
      double[] cool = new double[weather.days()];
      double[] warm = new double[weather.days()];
      Parameters fescue = Parameters.of(Species.TALL_FESCUE);
      Parameters bermuda = Parameters.of(Species.BERMUDAGRASS);
      int fromTemperature = 0;
      for (int day = 0; day < weather.days(); day++) {
        double meanC =
            (weather.value(Quantity.MINIMUM_C, day) + weather.value(Quantity.MAXIMUM_C, day)) / 2;
        cool[day] =
            GrowingPotential.gaussianFraction(meanC, fescue.get("gp_to"), fescue.get("gp_var"));
        warm[day] =
            GrowingPotential.gaussianHeldAboveOptimumFraction(
                meanC, bermuda.get("gp_to"), bermuda.get("gp_var"));
        if (site == null) {
          evapotranspirationMm[day] = Double.NaN;
          continue;
        }
        DailyEvapotranspiration terms = DailyEvapotranspiration.of(weather, site, day);
        evapotranspirationMm[day] = terms.referenceMm();
        fromTemperature += terms.restsOnTemperatureAlone() ? 1 : 0;
      }
      double share = site == null ? Double.NaN : (double) fromTemperature / weather.days();
      return new DailyValues(weather, evapotranspirationMm, cool, warm, share);
    }
  }

  private static Span span(DailyValues daily, String name, int from, int to, int fullDays) {
    WeatherSeries weather = daily.weather();
    int days = to - from;
    int wetDays = 0;
    for (int day = from; day < to; day++) {
      wetDays += weather.value(Quantity.RAIN_MM, day) > 0 ? 1 : 0;
    }
    return new Span(
        name,
        days,
        days == fullDays,
        sum(weather, Quantity.RAIN_MM, from, to),
        wetDays,
        sum(weather, Quantity.MAXIMUM_C, from, to) / days,
        sum(weather, Quantity.MINIMUM_C, from, to) / days,
        meanWindMPerS(weather, from, to),
        sum(daily.evapotranspirationMm(), from, to),
        sum(daily.cool(), from, to),
        sum(daily.warm(), from, to),
        new Warmth(
            degreeDaysCd(weather, AnnualBluegrassSeedHeads.BASE_C, from, to),
            degreeDaysCd(weather, 0, from, to),
            degreeDaysCd(weather, 10, from, to)));
  }

  private static double degreeDaysCd(WeatherSeries weather, double baseC, int from, int to) {
    double sum = 0;
    for (int day = from; day < to; day++) {
      sum +=
          DegreeDays.averageCd(
              weather.value(Quantity.MINIMUM_C, day),
              weather.value(Quantity.MAXIMUM_C, day),
              baseC);
    }
    return sum;
  }

  private static double meanWindMPerS(WeatherSeries weather, int from, int to) {
    return IntStream.range(from, to)
        .mapToDouble(day -> weather.value(Quantity.WIND_M_PER_S, day))
        .filter(wind -> !Double.isNaN(wind))
        .average()
        .orElse(Double.NaN);
  }

  private static double sum(WeatherSeries weather, Quantity quantity, int from, int to) {
    double sum = 0;
    for (int day = from; day < to; day++) {
      sum += weather.value(quantity, day);
    }
    return sum;
  }

  private static double sum(double[] values, int from, int to) {
    double sum = 0;
    for (int day = from; day < to; day++) {
      sum += values[day];
    }
    return sum;
  }

  private static Year year(WeatherSeries weather, Span total, int from, int to) {
    LocalDate lastOfFirstHalf = null;
    LocalDate firstOfSecondHalf = null;
    for (int day = from; day < to; day++) {
      if (weather.value(Quantity.MINIMUM_C, day) > 0) {
        continue;
      }
      LocalDate date = weather.dayAt(day);
      if (date.getMonthValue() < FIRST_MONTH_OF_SECOND_HALF) {
        lastOfFirstHalf = date;
      } else if (firstOfSecondHalf == null) {
        firstOfSecondHalf = date;
      }
    }
    return new Year(total, lastOfFirstHalf, firstOfSecondHalf);
  }
}
