package leafturn.records.round;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.Kind;
import org.jspecify.annotations.Nullable;

/** The forecasts of a book. */
public final class Forecasts {
  /** Older ones are of no use any more, not even to tell that they have expired. */
  private static final int LOOKED_BACK_DAYS = 2 * ForecastSheet.MOST_DAYS;

  private Forecasts() {}

  /** The latest forecast for a station's place that began not long before a day, if any. */
  public static Optional<Sheet<ForecastSheet>> latest(
      BookReading reading, String station, LocalDate on) {
    return reading.allSince(Kind.FORECAST, on.minusDays(LOOKED_BACK_DAYS)).stream()
        .filter(sheet -> sheet.content().station().equals(station))
        .max(
            Comparator.comparing((Sheet<ForecastSheet> sheet) -> sheet.content().issued())
                .thenComparing(Sheet::writtenAt));
  }

  /** A forecast as the model takes it. */
  static WeatherForecast forModel(ForecastSheet sheet) {
    List<WeatherForecast.Day> days =
        sheet.days().stream()
            .map(
                day ->
                    new WeatherForecast.Day(
                        day.minimumC(),
                        day.maximumC(),
                        orNaN(day.rainMm()),
                        orNaN(day.rainChanceFraction()),
                        orNaN(day.windMPerS())))
            .toList();
    return new WeatherForecast(sheet.first(), days);
  }

  private static double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
