package leafturn.records.round;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.ExampleWeather;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.WeatherStation;

/** The weather that comes with the program, as a station of a book. */
public final class ExampleStation {
  /** Where it was recorded, in words. */
  public static final String ORIGIN = "New York, NOAA daily records 2012-2015";

  private static final String ID =
      UUID.nameUUIDFromBytes("leafturn example station".getBytes(StandardCharsets.UTF_8))
          .toString();

  private ExampleStation() {}

  /** Puts it into a book as a stand-in for a record of one's own, once; its id. */
  public static String standIn(BookWriting writing) {
    if (writing.find(Kind.STATION, ID).isEmpty()) {
      writing.add(
          Kind.STATION, ID, new WeatherStation("New York", ORIGIN, 2, 40.78, null, 40.0, true));
      StationDays.put(writing, ID, days());
    }
    return ID;
  }

  /** Its days. */
  static List<StationDay> days() {
    WeatherSeries weather = ExampleWeather.newYork();
    List<StationDay> days = new ArrayList<>();
    for (int day = 0; day < weather.days(); day++) {
      Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
      for (Quantity quantity : Quantity.values()) {
        double value = weather.value(quantity, day);
        if (!Double.isNaN(value)) {
          values.put(quantity, value);
        }
      }
      days.add(new StationDay(weather.dayAt(day), values));
    }
    return days;
  }
}
