package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.Numbers;
import leafturn.records.book.StationDay;

/** A day of weather in a line, in the units of whoever reads it. */
final class StationDayWords {
  private final StationDay day;
  private final Units units;
  private final List<String> parts = new ArrayList<>();

  private StationDayWords(StationDay day, Units units) {
    this.day = day;
    this.units = units;
  }

  static String of(StationDay day, Units units) {
    StationDayWords words = new StationDayWords(day, units);
    words.measured("from ", Quantity.MINIMUM_C, Measure.TEMPERATURE);
    words.measured("to ", Quantity.MAXIMUM_C, Measure.TEMPERATURE);
    words.measured("rain ", Quantity.RAIN_MM, Measure.WATER);
    words.measured("wind ", Quantity.WIND_M_PER_S, Measure.WIND_SPEED);
    words.alike("humidity to %s %%", Quantity.HUMIDITY_MAXIMUM_PERCENT);
    words.alike("humidity from %s %%", Quantity.HUMIDITY_MINIMUM_PERCENT);
    words.measured("dew point ", Quantity.DEW_POINT_C, Measure.TEMPERATURE);
    words.alike("radiation %s MJ/m²", Quantity.RADIATION_MJ_PER_M2);
    return Dates.words(day.day()) + ": " + String.join(", ", words.parts);
  }

  private void measured(String before, Quantity quantity, Measure measure) {
    Double value = day.values().get(quantity);
    if (value != null) {
      parts.add(before + measure.read(value, units));
    }
  }

  /** What everybody reads in the same unit. */
  private void alike(String words, Quantity quantity) {
    Double value = day.values().get(quantity);
    if (value != null) {
      parts.add(words.formatted(Numbers.plain(value)));
    }
  }
}
