package leafturn.advice.call;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Possible seasons kept for the lawns of a site: they are made for the first lawn and day that asks
 * and serve the others. Keeps the ones asked for last; safe for use from several threads. A few
 * megabytes each, so keep as many as sites are worked on at a time.
 */
public final class SharedSeasons {
  private final Map<Key, WeatherToCome> kept;

  private record Key(WeatherToCome.Start start, SeasonsAsked asked) {}

  private SharedSeasons(int most) {
    this.kept =
        new LinkedHashMap<>(most, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<Key, WeatherToCome> eldest) {
            return size() > most;
          }
        };
  }

  /** Keeps so many, 1 or more. */
  public static SharedSeasons keeping(int most) {
    return new SharedSeasons(most);
  }

  /** Seasons after a start; the climate counts as the same only when it is the same object. */
  synchronized WeatherToCome after(WeatherToCome.Start start, SeasonsAsked asked) {
    Key key = new Key(start, asked);
    WeatherToCome seasons = kept.get(key);
    if (seasons == null) {
      seasons = WeatherToCome.after(start, asked);
      kept.put(key, seasons);
    }
    return seasons;
  }
}
