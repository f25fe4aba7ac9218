package leafturn.model.weather.generator;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Range;

/**
 * A forecast of some days without a gap.
 *
 * @param first its first day
 * @param days from that day on, 1 to 16
 */
public record WeatherForecast(LocalDate first, List<Day> days) {
  /** Days beyond which a forecast tells no more of a day than the season does. */
  public static final int MOST_DAYS = 16;

  private static final Range TEMPERATURE = new Range("air temperature", -90, 60, "°C");
  private static final Range RAIN = new Range("rain", 0, 2000, "mm");
  private static final Range CHANCE = new Range("chance of rain", 0, 1, "");
  private static final Range WIND = new Range("wind speed", 0, 115, "m/s");

  public WeatherForecast {
    days = List.copyOf(days);
    if (days.isEmpty() || days.size() > MOST_DAYS) {
      throw new IllegalArgumentException(
          "a forecast has 1 to " + MOST_DAYS + " days, but this one has " + days.size());
    }
  }

  /**
   * A forecast day.
   *
   * @param minimumC °C
   * @param maximumC °C, not below the minimum
   * @param rainMm rain if it rains, mm, 0 for a dry day, or NaN when only the chance is told
   * @param rainChanceFraction chance of rain, 0-1, or NaN when only the amount is told
   * @param windMPerS wind at the height of the site's own, m/s, or NaN
   */
  public record Day(
      double minimumC,
      double maximumC,
      double rainMm,
      double rainChanceFraction,
      double windMPerS) {
    public Day {
      TEMPERATURE.checked(minimumC);
      TEMPERATURE.checked(maximumC);
      if (minimumC > maximumC) {
        throw new IllegalArgumentException(
            "the maximum of %s °C lies below the minimum of %s °C".formatted(maximumC, minimumC));
      }
      if (Double.isNaN(rainMm) && Double.isNaN(rainChanceFraction)) {
        throw new IllegalArgumentException("neither an amount nor a chance of rain is told");
      }
      if (rainMm > 0 && rainChanceFraction == 0) {
        throw new IllegalArgumentException(
            "%s mm of rain are told, but no chance of any".formatted(rainMm));
      }
      checkedIfTold(RAIN, rainMm);
      checkedIfTold(CHANCE, rainChanceFraction);
      checkedIfTold(WIND, windMPerS);
    }

    /** What the day tells of a quantity besides rain, or NaN. */
    double value(Quantity quantity) {
      return switch (quantity) {
        case MAXIMUM_C -> maximumC;
        case MINIMUM_C -> minimumC;
        case WIND_M_PER_S -> windMPerS;
        default -> Double.NaN;
      };
    }

    private static void checkedIfTold(Range range, double value) {
      if (!Double.isNaN(value)) {
        range.checked(value);
      }
    }
  }

  /** Last day. */
  public LocalDate last() {
    return first.plusDays(days.size() - 1L);
  }

  /** A day of it, or null for a date outside. */
  @org.jspecify.annotations.Nullable
  Day on(LocalDate date) {
    return date.isBefore(first) || date.isAfter(last())
        ? null
        : days.get((int) (date.toEpochDay() - first.toEpochDay()));
  }

  /**
   * Why it cannot be followed from a day on, in a sentence without its stop; empty when it can.
   * Days before that day are known by then and do no harm; the day itself may be left to the season
   * where the forecast begins on the next.
   *
   * @param firstUnknown the first day that no record holds
   * @param on the day asked about, that day or the one before it
   */
  public Optional<String> faultFrom(LocalDate firstUnknown, LocalDate on) {
    LocalDate latest = on.plusDays(1);
    if (first.isAfter(latest)) {
      return Optional.of(
          "the forecast begins on %s, but must hold %s, the day after the one asked about; nothing is guessed between them"
              .formatted(first, latest));
    }
    if (last().isBefore(firstUnknown)) {
      return Optional.of(
          "the forecast ends on %s, before %s, the first day that the weather record does not hold or may not be used"
              .formatted(last(), firstUnknown));
    }
    return Optional.empty();
  }
}
