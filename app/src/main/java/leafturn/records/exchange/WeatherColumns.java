package leafturn.records.exchange;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.exchange.Column.Type;

/** The columns of a table of daily weather. */
public final class WeatherColumns {
  static final String DAY = "day";
  static final String LOCATION = "location";

  /** All of them. */
  public static final List<Column> ALL =
      List.of(
          of("date", "day", Type.DATE, "date").orCalled("day"),
          Column.place(LOCATION, "place"),
          temperature("tmin_c", "minimumC", "minimum temperature", "temp_min", "tmin_f"),
          temperature("tmax_c", "maximumC", "maximum temperature", "temp_max", "tmax_f"),
          of("rain_mm", "rainMm", Type.NUMBER, "rain and melted snow")
              .orCalled("precipitation", "rain")
              .measuring(Measure.WATER, "rain_in"),
          of("wind_m_s", "windMPerS", Type.NUMBER, "mean wind")
              .orCalled("wind")
              .measuring(Measure.WIND_SPEED, "wind_mph"),
          of(
              "humidity_max_percent",
              "humidityMaximumPercent",
              Type.NUMBER,
              "highest humidity, per cent"),
          of(
              "humidity_min_percent",
              "humidityMinimumPercent",
              Type.NUMBER,
              "lowest humidity, per cent"),
          temperature("dewpoint_c", "dewPointC", "mean dew point", "dew_point_c", "dewpoint_f"),
          of("radiation_mj_m2", "radiationMjPerM2", Type.NUMBER, "global radiation, MJ/m²"));

  private WeatherColumns() {}

  private static Column of(String name, String path, Type type, String meaning) {
    return Column.of(DAY, name, path, type, meaning);
  }

  private static Column temperature(
      String name, String path, String meaning, String other, String inFahrenheit) {
    return of(name, path, Type.NUMBER, meaning)
        .orCalled(other)
        .measuring(Measure.TEMPERATURE, inFahrenheit);
  }
}
