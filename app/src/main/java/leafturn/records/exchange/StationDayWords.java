package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.Dates;
import leafturn.records.Numbers;
import leafturn.records.book.StationDay;

/** A day of weather in a line. */
final class StationDayWords {
  private StationDayWords() {}

  static String of(StationDay day) {
    List<String> parts = new ArrayList<>();
    add(parts, day, Quantity.MINIMUM_C, "from %s °C");
    add(parts, day, Quantity.MAXIMUM_C, "to %s °C");
    add(parts, day, Quantity.RAIN_MM, "rain %s mm");
    add(parts, day, Quantity.WIND_M_PER_S, "wind %s m/s");
    add(parts, day, Quantity.HUMIDITY_MAXIMUM_PERCENT, "humidity to %s %%");
    add(parts, day, Quantity.HUMIDITY_MINIMUM_PERCENT, "humidity from %s %%");
    add(parts, day, Quantity.DEW_POINT_C, "dew point %s °C");
    add(parts, day, Quantity.RADIATION_MJ_PER_M2, "radiation %s MJ/m²");
    return Dates.words(day.day()) + ": " + String.join(", ", parts);
  }

  private static void add(List<String> parts, StationDay day, Quantity quantity, String words) {
    Double value = day.values().get(quantity);
    if (value != null) {
      parts.add(words.formatted(Numbers.plain(value)));
    }
  }
}
