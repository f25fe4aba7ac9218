package leafturn.model.weather.generator;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** Fits the parts of a generator to a record. */
final class GeneratorFit {
  /** Days of each month that a fit needs. */
  private static final int FEWEST_DAYS_OF_MONTH = 15;

  /** Share of days with a quantity that its generation needs. */
  private static final double LEAST_COVER = 0.8;

  /** Days that correlations of their own need. */
  private static final int DAYS_FOR_CORRELATIONS = 730;

  private static final double DAYS_PER_YEAR = 365.25;
  private static final double YEARS_FOR_TWO_WAVES = 3;
  private static final double YEARS_FOR_THREE_WAVES = 10;

  private static final List<Quantity> TEMPERATURES =
      List.of(Quantity.MAXIMUM_C, Quantity.MINIMUM_C);

  /** Radiation stands third, as in the standard correlations. */
  private static final List<Quantity> OPTIONAL =
      List.of(
          Quantity.RADIATION_MJ_PER_M2,
          Quantity.WIND_M_PER_S,
          Quantity.HUMIDITY_MAXIMUM_PERCENT,
          Quantity.HUMIDITY_MINIMUM_PERCENT,
          Quantity.DEW_POINT_C);

  private final WeatherSeries weather;
  private final int[] days;
  private final int[] yearDays;
  private final boolean[] wet;
  private final List<String> notes = new ArrayList<>();

  GeneratorFit(WeatherSeries weather, IntPredicate usable) {
    this.weather = weather;
    this.days = IntStream.range(0, weather.days()).filter(usable).toArray();
    this.yearDays = new int[days.length];
    this.wet = new boolean[days.length];
    for (int place = 0; place < days.length; place++) {
      yearDays[place] = YearDay.of(weather.dayAt(days[place]));
      wet[place] = RainClimate.wet(weather.value(Quantity.RAIN_MM, days[place]));
    }
    checkMonths();
  }

  private void checkMonths() {
    int[] counts = new int[YearDay.MONTHS];
    for (int day : days) {
      counts[YearDay.month(weather.dayAt(day))]++;
    }
    for (int month = 0; month < YearDay.MONTHS; month++) {
      if (counts[month] < FEWEST_DAYS_OF_MONTH) {
        throw new IllegalArgumentException(
            "weather can be generated from %d days or more of each month, but the record from %s to %s has %d usable days of %s"
                .formatted(
                    FEWEST_DAYS_OF_MONTH,
                    weather.firstDay(),
                    weather.lastDay(),
                    counts[month],
                    name(month)));
      }
    }
  }

  List<QuantityCourse> courses() {
    List<QuantityCourse> courses = new ArrayList<>();
    for (Quantity quantity : TEMPERATURES) {
      courses.add(course(quantity));
    }
    for (Quantity quantity : OPTIONAL) {
      long measured = Arrays.stream(days).filter(day -> measured(quantity, day)).count();
      if (measured >= LEAST_COVER * days.length) {
        courses.add(course(quantity));
      } else if (measured > 0) {
        notes.add(
            "%s stands on %d of %d days of the record, too few to generate it."
                .formatted(words(quantity), measured, days.length));
      }
    }
    return courses;
  }

  private QuantityCourse course(Quantity quantity) {
    double years = days.length / DAYS_PER_YEAR;
    int meanWaves = years >= YEARS_FOR_THREE_WAVES ? 3 : years >= YEARS_FOR_TWO_WAVES ? 2 : 1;
    return course(quantity, meanWaves, years >= YEARS_FOR_THREE_WAVES ? 2 : 1);
  }

  QuantityCourse course(Quantity quantity, int meanWaves, int spreadWaves) {
    int count = 0;
    int[] measuredDays = new int[days.length];
    boolean[] measuredWet = new boolean[days.length];
    double[] values = new double[days.length];
    for (int place = 0; place < days.length; place++) {
      if (measured(quantity, days[place])) {
        measuredDays[count] = yearDays[place];
        measuredWet[count] = wet[place];
        values[count++] = weather.value(quantity, days[place]);
      }
    }
    return QuantityCourse.fitted(
        quantity,
        new QuantityCourse.Days(
            Arrays.copyOf(measuredDays, count),
            Arrays.copyOf(measuredWet, count),
            Arrays.copyOf(values, count)),
        meanWaves,
        spreadWaves);
  }

  Residuals residuals(List<QuantityCourse> courses) {
    Correlations own = correlations(courses);
    double[][] sameDay = own.sameDay();
    double[][] dayBefore = own.dayBefore();
    if (days.length < DAYS_FOR_CORRELATIONS) {
      notes.add(
          "The record is too short for day-to-day correlations of its own; Richardson's stand in.");
      own.standardFor(standing(courses));
    }
    for (double kept = 1; kept > 0.05; kept *= 0.9) {
      try {
        return Residuals.of(towardsNone(sameDay, kept, true), towardsNone(dayBefore, kept, false));
      } catch (ArithmeticException impossible) {
        // gaps make correlations that no series can have: try them a little smaller
      }
    }
    throw new IllegalArgumentException(
        "the record from %s to %s gives no day-to-day correlations; are its temperatures all the same?"
            .formatted(weather.firstDay(), weather.lastDay()));
  }

  /** Quantities that the standard correlations speak of: the temperatures, and radiation. */
  private static int standing(List<QuantityCourse> courses) {
    return courses.size() > 2 && courses.get(2).quantity() == Quantity.RADIATION_MJ_PER_M2 ? 3 : 2;
  }

  private static double[][] towardsNone(double[][] correlations, double kept, boolean ones) {
    double[][] smaller = new double[correlations.length][correlations.length];
    for (int row = 0; row < smaller.length; row++) {
      for (int column = 0; column < smaller.length; column++) {
        smaller[row][column] = ones && row == column ? 1 : kept * correlations[row][column];
      }
    }
    return smaller;
  }

  Correlations correlations(List<QuantityCourse> courses) {
    double[][] residuals = new double[courses.size()][days.length];
    for (int row = 0; row < residuals.length; row++) {
      QuantityCourse course = courses.get(row);
      for (int place = 0; place < days.length; place++) {
        double value = weather.value(course.quantity(), days[place]);
        residuals[row][place] =
            Double.isNaN(value) ? Double.NaN : course.residual(value, yearDays[place], wet[place]);
      }
    }
    return Correlations.of(residuals, days);
  }

  private boolean measured(Quantity quantity, int day) {
    return !Double.isNaN(weather.value(quantity, day));
  }

  List<String> notes(RainClimate rain) {
    List<String> all = new ArrayList<>(notes);
    if (!rain.everWet()) {
      all.add("The record has no wet day, so none is generated.");
    } else if (!rain.borrowing().isEmpty()) {
      all.add(
          "Too few wet or dry days stand on record in "
              + rain.borrowing().stream().map(GeneratorFit::name).collect(Collectors.joining(", "))
              + ": their rain rests on neighbouring months too.");
    }
    return List.copyOf(all);
  }

  private static String name(int month) {
    return Month.of(month + 1).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
  }

  private static String words(Quantity quantity) {
    return switch (quantity) {
      case WIND_M_PER_S -> "Wind";
      case RADIATION_MJ_PER_M2 -> "Radiation";
      case DEW_POINT_C -> "Dew point";
      case HUMIDITY_MAXIMUM_PERCENT -> "Highest humidity";
      case HUMIDITY_MINIMUM_PERCENT -> "Lowest humidity";
      case MINIMUM_C, MAXIMUM_C -> "Temperature";
      case RAIN_MM -> "Rain";
    };
  }
}
