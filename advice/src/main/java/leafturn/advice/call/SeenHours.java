package leafturn.advice.call;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import leafturn.model.weather.hourly.DayWeather;
import leafturn.model.weather.hourly.RainTime;
import leafturn.model.weather.hourly.SeenToday;
import org.jspecify.annotations.Nullable;

/** What people saw of leaves, rain and frost, by the hour. */
record SeenHours(List<Sighting> sightings, LocalDate on) {
  /** Rain that was seen is at least this much, mm, where the weather has less (our judgement). */
  private static final double SEEN_RAIN_MM = 2;

  private static final double MINUTES = 60;

  /** Rain of the day without its hour fell in the morning (our judgement). */
  private static final double NOON = 12;

  /** The last looks of the day. */
  SeenToday today() {
    return new SeenToday(
        lastHour(seen -> means(seen, Sight.DRY_LEAVES, Sight.WET_LEAVES)),
        lastHour(seen -> means(seen, Sight.WET_LEAVES, Sight.DRY_LEAVES)),
        lastHour(seen -> seen.sight() == Sight.GROUND_FROST && seen.there()),
        lastHour(seen -> seen.sight() == Sight.GROUND_FROST && !seen.there()));
  }

  private static boolean means(Sighting seen, Sight sight, Sight opposite) {
    return seen.sight() == sight && seen.there() || seen.sight() == opposite && !seen.there();
  }

  private double lastHour(Predicate<Sighting> wanted) {
    double last = Double.NaN;
    for (Sighting seen : sightings) {
      double hour = hour(seen.at());
      if (seen.on().equals(on) && wanted.test(seen) && !(hour <= last) && !Double.isNaN(hour)) {
        last = hour;
      }
    }
    return last;
  }

  /** A day with its rain at the hours in which it was seen, or was seen not to fall. */
  DayWeather timed(DayWeather weather, LocalDate day, double wateredMm) {
    double rainMm = weather.water().rainMm();
    Optional<Sighting> look =
        sightings.stream()
            .filter(seen -> seen.sight() == Sight.RAIN && seen.on().equals(day))
            .max(Sighting.BY_TIME);
    boolean fell = look.map(Sighting::there).orElse(false);
    return weather.with(
        new DayWeather.Water(
            fell ? Math.max(rainMm, SEEN_RAIN_MM) : rainMm,
            look.map(SeenHours::rainTime).orElse(RainTime.ANY_HOUR),
            wateredMm));
  }

  private static RainTime rainTime(Sighting rain) {
    double hour = hour(rain.at());
    if (rain.there()) {
      return RainTime.ended(Double.isNaN(hour) ? NOON : Math.max(1, hour));
    }
    return Double.isNaN(hour) ? RainTime.ANY_HOUR : RainTime.after(hour);
  }

  /** The hour of the last look of today, which is past; 0 when nobody looked. */
  int past() {
    double latest = 0;
    for (Sighting seen : sightings) {
      if (seen.on().equals(on)) {
        double hour = hour(seen.at());
        double known = Double.isNaN(hour) && rained(seen) ? NOON : hour;
        latest = known > latest ? known : latest;
      }
    }
    return (int) latest;
  }

  private static boolean rained(Sighting seen) {
    return seen.sight() == Sight.RAIN && seen.there();
  }

  private static double hour(@Nullable LocalTime at) {
    return at == null ? Double.NaN : at.getHour() + at.getMinute() / MINUTES;
  }
}
