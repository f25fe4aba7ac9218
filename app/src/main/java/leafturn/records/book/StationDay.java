package leafturn.records.book;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * The weather of one day as a station measured it.
 *
 * @param day the day
 * @param values the quantities that were measured, in the units of {@link Quantity}
 */
public record StationDay(LocalDate day, Map<Quantity, Double> values) {
  public StationDay {
    EnumMap<Quantity, Double> copy = new EnumMap<>(Quantity.class);
    copy.putAll(values);
    values = Map.copyOf(copy);
  }
}
