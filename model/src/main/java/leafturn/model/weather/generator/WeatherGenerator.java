package leafturn.model.weather.generator;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import leafturn.model.RandomStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Generates daily weather like that of a record. Holds no state of a series: one object may serve
 * many threads, each with its own {@link RandomStream}.
 *
 * @see leafturn.model.weather.generator
 */
public final class WeatherGenerator {
  /** Rain from which a day counts as wet, mm: the smallest tip of a common gauge. */
  public static final double LEAST_WET_DAY_MM = 0.2;

  /** Least distance of maximum and minimum temperature, °C. */
  private static final double LEAST_RANGE_C = 0.1;

  /** Most rain of a day, mm, as the checks of a series have it. */
  private static final double MOST_RAIN_MM = 2000;

  private static final long PLACE_OF_EVE = Long.MIN_VALUE;
  private static final int MAXIMUM = 0;
  private static final int MINIMUM = 1;

  /** How the rain of wet days is distributed. */
  public enum Amounts {
    /** Showers and downpours, each exponential; fits best where it was compared (Wilks 1999). */
    MIXED_EXPONENTIAL,
    /** A gamma distribution, as in the original. */
    GAMMA
  }

  private final RainClimate rain;
  private final List<QuantityCourse> courses;
  private final Residuals residuals;
  private final double[][] start;
  private final List<String> notes;

  private WeatherGenerator(GeneratorFit fit, RainClimate rain) {
    this.rain = rain;
    this.courses = fit.courses();
    this.residuals = fit.residuals(courses);
    this.start = Matrix.lowerTriangle(residuals.stationary());
    this.notes = fit.notes(rain);
  }

  /**
   * A generator fitted to a whole record.
   *
   * @param record 15 days or more of each month; 20 years or more make a good fit
   * @throws IllegalArgumentException when the record is too short
   * @source richardson1981
   */
  public static WeatherGenerator fitted(WeatherSeries record) {
    return fitted(record, day -> true, Amounts.MIXED_EXPONENTIAL);
  }

  /**
   * A generator fitted to some days of a record.
   *
   * @param usable the days to use, by their index; days next to each other count as following one
   *     another only when both are used
   * @throws IllegalArgumentException when they are too few
   * @source richardson1981
   */
  public static WeatherGenerator fitted(
      WeatherSeries record, IntPredicate usable, Amounts amounts) {
    GeneratorFit fit = new GeneratorFit(record, usable);
    return new WeatherGenerator(fit, RainClimate.fitted(record, usable, amounts));
  }

  /**
   * The weather of a day of a series as something to carry on from.
   *
   * @param series with the day
   * @param day its index
   */
  public WeatherEve eve(WeatherSeries series, int day) {
    int yearDay = YearDay.of(series.dayAt(day));
    boolean wet = RainClimate.wet(series.value(Quantity.RAIN_MM, day));
    double[] deviations = new double[courses.size()];
    for (int row = 0; row < deviations.length; row++) {
      QuantityCourse course = courses.get(row);
      deviations[row] = course.residual(series.value(course.quantity(), day), yearDay, wet);
    }
    return WeatherEve.of(wet, deviations);
  }

  /**
   * Days that follow an eve. A date draws the same random numbers whatever day the series begins
   * with, so that two series of one stream differ only in what they carry on from.
   *
   * @param random a stream, one per series
   * @param eve the day before
   * @param first date of the first day
   * @param days 1 or more
   * @source richardson1981
   */
  public WeatherSeries generate(RandomStream random, WeatherEve eve, LocalDate first, int days) {
    return generate(random, eve, first, days, null);
  }

  /**
   * Days that follow an eve, and a forecast as far as that reaches: with errors that grow with its
   * lead time, and carrying on from it afterwards, back to what the season has.
   *
   * @param forecast that holds the first day or the second, or null for none; how far it is trusted
   *     is assumed
   * @throws IllegalArgumentException when the forecast holds neither
   * @source richardson1981
   */
  public WeatherSeries generate(
      RandomStream random,
      WeatherEve eve,
      LocalDate first,
      int days,
      @Nullable WeatherForecast forecast) {
    if (days < 1) {
      throw new IllegalArgumentException("days to generate must be 1 or more, but are " + days);
    }
    if (forecast != null) {
      forecast
          .faultFrom(first, first)
          .ifPresent(
              fault -> {
                throw new IllegalArgumentException(fault);
              });
    }
    Chain chain = new Chain(random, eve, first, forecast);
    double[] rainMm = new double[days];
    double[][] values = new double[courses.size()][days];
    for (int day = 0; day < days; day++) {
      chain.live(first.plusDays(day), day + 1);
      rainMm[day] = chain.rainMm;
      for (int row = 0; row < values.length; row++) {
        values[row][day] = chain.values[row];
      }
    }
    return series(first, rainMm, values);
  }

  /** One series as it goes from day to day. */
  private final class Chain {
    private final RandomStream random;
    private final @Nullable WeatherForecast forecast;
    private final double[] normal = new double[courses.size()];
    private final double[] values = new double[courses.size()];
    private double[] yesterday;
    private double[] today = new double[courses.size()];
    private boolean wet;
    private double rainMm;

    private Chain(
        RandomStream random, WeatherEve eve, LocalDate first, @Nullable WeatherForecast forecast) {
      this.random = random;
      this.forecast = forecast;
      double[] known = eve.residuals();
      boolean told = forecast != null && forecast.on(first) != null;
      // the errors of a forecast have nothing to do with the day before it
      this.yesterday = told || known == null ? drawnStart(random) : known.clone();
      this.wet =
          known == null
              ? random.uniform() < rain.occurrence(YearDay.month(first)).wetFraction()
              : eve.wet();
    }

    /** Lives through a day that lies so many days after the last known one. */
    private void live(LocalDate date, int leadDays) {
      random.at(date.toEpochDay());
      int yearDay = YearDay.of(date);
      int month = YearDay.month(date);
      WeatherForecast.Day told = forecast == null ? null : forecast.on(date);
      if (forecast != null && leadDays > 1 && date.equals(forecast.first())) {
        yesterday = drawnStart(random);
      }
      double chance = rain.occurrence(month).chance(wet);
      wet =
          random.uniform() < (told == null ? chance : ForecastError.chance(told, chance, leadDays));
      for (int row = 0; row < normal.length; row++) {
        normal[row] = random.normal();
      }
      residuals.step(yesterday, normal, today);
      boolean lastTold = forecast != null && date.equals(forecast.last());
      for (int row = 0; row < today.length; row++) {
        QuantityCourse course = courses.get(row);
        double deviation =
            told == null
                ? today[row]
                : ForecastError.followed(
                    residual(told, course, yearDay, wet), today[row], leadDays);
        values[row] = course.value(deviation, yearDay, wet);
        today[row] = lastTold ? deviation : today[row];
      }
      rainMm = wet ? amountMm(random, month, told, leadDays) : 0;
      double[] spare = yesterday;
      yesterday = today;
      today = spare;
    }
  }

  /** What a forecast day tells of a quantity as a deviation from the season, or NaN. */
  private static double residual(
      WeatherForecast.Day told, QuantityCourse course, int yearDay, boolean wet) {
    double value = told.value(course.quantity());
    return Double.isNaN(value) ? Double.NaN : course.residual(value, yearDay, wet);
  }

  private double amountMm(
      RandomStream random, int month, WeatherForecast.@Nullable Day told, int leadDays) {
    double amountMm = LEAST_WET_DAY_MM;
    if (told != null && RainClimate.wet(told.rainMm())) {
      amountMm = told.rainMm() * ForecastError.amountFactor(random.normal(), leadDays);
    } else if (rain.everWet()) {
      amountMm = rain.amount(month).drawnMm(random);
    }
    return Math.min(MOST_RAIN_MM, Math.max(LEAST_WET_DAY_MM, amountMm));
  }

  private double[] drawnStart(RandomStream random) {
    random.at(PLACE_OF_EVE);
    double[] normal = new double[courses.size()];
    double[] drawn = new double[courses.size()];
    for (int row = 0; row < normal.length; row++) {
      normal[row] = random.normal();
      for (int column = 0; column <= row; column++) {
        drawn[row] += start[row][column] * normal[column];
      }
    }
    return drawn;
  }

  private WeatherSeries series(LocalDate first, double[] rainMm, double[][] values) {
    Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
    columns.put(Quantity.RAIN_MM, rainMm);
    for (int row = 0; row < values.length; row++) {
      columns.put(courses.get(row).quantity(), values[row]);
    }
    for (int day = 0; day < rainMm.length; day++) {
      keepApart(values[MAXIMUM], values[MINIMUM], day);
    }
    double[] dewPointC = columns.get(Quantity.DEW_POINT_C);
    for (int day = 0; dewPointC != null && day < dewPointC.length; day++) {
      dewPointC[day] = Math.min(dewPointC[day], values[MAXIMUM][day]);
    }
    return new WeatherSeries(first, columns);
  }

  /** Keeps the maximum above the minimum about the same mean. */
  private static void keepApart(double[] maximumC, double[] minimumC, int day) {
    if (maximumC[day] - minimumC[day] < LEAST_RANGE_C) {
      double mean = (maximumC[day] + minimumC[day]) / 2;
      maximumC[day] = mean + LEAST_RANGE_C / 2;
      minimumC[day] = mean - LEAST_RANGE_C / 2;
    }
  }

  /** How often it rains in a month, 1 to 12. */
  public RainOccurrence occurrence(int month) {
    return rain.occurrence(month - 1);
  }

  /** The day-to-day deviations it generates. */
  public Residuals residuals() {
    return residuals;
  }

  /** The quantities it generates besides rain, in the order of {@link #residuals()}. */
  public List<Quantity> quantities() {
    return courses.stream().map(QuantityCourse::quantity).toList();
  }

  List<QuantityCourse> courses() {
    return courses;
  }

  RainClimate rain() {
    return rain;
  }

  /** What the record was too short for, in sentences; empty for a good record. */
  public List<String> notes() {
    return notes;
  }
}
