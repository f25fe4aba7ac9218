package leafturn.records.round;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.WeatherStation;

/** The weather of the stations that were asked for last, read once per change of their record. */
final class Climates {
  private static final int MOST_KEPT = 64;

  private final Map<Key, StationWeather> kept =
      new LinkedHashMap<>(MOST_KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, StationWeather> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private record Key(String station, long revision, LocalDate day) {}

  /**
   * A station's weather up to a day.
   *
   * @param revision the station's revision, read before this transaction or in it
   * @throws leafturn.records.InputException when the record cannot be used
   */
  synchronized StationWeather of(
      BookReading reading, Sheet<WeatherStation> station, long revision, LocalDate day) {
    Key key = new Key(station.id(), revision, day);
    StationWeather weather = kept.get(key);
    if (weather == null) {
      weather = StationWeather.upTo(reading, station, day);
      kept.put(key, weather);
    }
    return weather;
  }
}
