package leafturn.advice.call;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.DailyEvapotranspiration;
import leafturn.model.weather.DailyEvapotranspiration.HumidityRoute;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.hourly.DayWeather;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.model.weather.hourly.GrassHours;
import leafturn.model.weather.hourly.GrassLimits;

/**
 * The hours of today and tomorrow in which a lawn is dry and free of frost, over the possible
 * seasons; what people saw today outweighs them. Later days have no hours: daily weather does not
 * tell them so far ahead.
 */
final class MowingHours {
  /** Days that have hours: today and tomorrow. */
  static final int DAYS = 2;

  private final GrassDay today;
  private final GrassDay tomorrow;
  private final int past;
  private final Setting setting;

  /**
   * What the hours rest on.
   *
   * @param site where the weather was measured
   * @param limits when grass counts as dry enough
   * @param humidityMeasured false when the night's minimum stands in for the dew point
   */
  record Setting(Site site, GrassLimits limits, boolean humidityMeasured) {
    /** Of a day of a record. */
    static Setting of(WeatherSeries weather, Site site, int index, GrassLimits limits) {
      HumidityRoute route = DailyEvapotranspiration.humidityRoute(weather, index);
      return new Setting(site, limits, route != HumidityRoute.MINIMUM_TEMPERATURE);
    }
  }

  private MowingHours(GrassHours hours, int past, Setting setting) {
    this.setting = setting;
    this.today = hours.today();
    this.tomorrow = hours.tomorrow();
    this.past = past;
  }

  /**
   * The hours of a lawn.
   *
   * @param seasons possible seasons from the lawn's first day to come on
   */
  static MowingHours of(
      LawnToday lawn, SiteClimate climate, List<PossibleSeason> seasons, Asked asked) {
    GrassLimits limits = limits(asked.rules());
    SeenHours seen = new SeenHours(asked.circumstances().sightings(), lawn.on());
    GrassHours hours = new GrassHours(climate.site(), lawn.on(), limits, seen.today());
    Recorded known = new Recorded(lawn, climate, seen);
    DayWeather yesterday = known.day(-1);
    if (lawn.weatherKnown()) {
      DayWeather ofToday = known.day(0);
      seasons.forEach(season -> hours.add(yesterday, ofToday, season.dayWeather(0)));
    } else {
      for (PossibleSeason season : seasons) {
        DayWeather ofToday = seen.timed(season.dayWeather(0), lawn.on(), 0);
        hours.add(yesterday, ofToday, season.dayWeather(1));
      }
    }
    int eve = climate.weather().indexOf(lawn.on()) - 1; // today may not be on record yet
    return new MowingHours(
        hours, seen.past(), Setting.of(climate.weather(), climate.site(), eve, limits));
  }

  private static GrassLimits limits(CallRules rules) {
    GrassLimits standard = GrassLimits.standard();
    return new GrassLimits(
        rules.threshold(CallRule.DRY_LEAVES),
        rules.threshold(CallRule.WET_HUMIDITY),
        rules.threshold(CallRule.FROST),
        standard.canopyMm());
  }

  /**
   * The hours of a day of a record, whose rain fell at any hour.
   *
   * @param index day of the record, 0 for the first
   */
  static MowingHours recorded(WeatherSeries weather, Site site, int index) {
    return new MowingHours(
        GrassHours.recorded(weather, site, index),
        0,
        Setting.of(weather, site, index, GrassLimits.standard()));
  }

  /** The days up to the day of the call that the record holds. */
  private record Recorded(LawnToday lawn, SiteClimate climate, SeenHours seen) {
    /** A day, 0 for that of the call, with the watering logged for it. */
    DayWeather day(int day) {
      int index = climate.weather().indexOf(lawn.on()) + day;
      DayWeather weather =
          DayWeather.of(climate.weather(), climate.site(), index, climate.radiationMj(index));
      double[] waterMm = lawn.recentWaterMm(); // its last day is today's when known, else its eve
      int recent = waterMm.length - (lawn.weatherKnown() ? 1 : 0) + day;
      double wateredMm = Math.max(0, waterMm[recent] - weather.water().rainMm());
      return seen.timed(weather, lawn.on().plusDays(day), wateredMm);
    }
  }

  /** True for the days that have hours. */
  static boolean has(int day) {
    return day < DAYS;
  }

  /** What the hours rest on. */
  Setting setting() {
    return setting;
  }

  /** The hours of a day, 0 for today and 1 for tomorrow. */
  GrassDay day(int day) {
    return day == 0 ? today : tomorrow;
  }

  /** First hour of a day that is not known to be past: that of the last look at the lawn. */
  int firstHour(int day) {
    return day == 0 ? past : 0;
  }

  /** Spans to come in which the grass is fit in at least a share of the possible weathers. */
  List<Span> fit(int day, double leastFraction) {
    return day(day).fit(leastFraction, firstHour(day));
  }

  /** The longest of these spans, the earlier of two alike. */
  Optional<Span> longest(int day, double leastFraction) {
    return fit(day, leastFraction).stream()
        .max(
            Comparator.comparingInt(Span::hours)
                .thenComparing(Span::from, Comparator.reverseOrder()));
  }

  /** True when the grass is fit for so many hours in a row. */
  boolean fitFor(int day, int hours, double leastFraction) {
    return longest(day, leastFraction).map(span -> span.hours() >= hours).orElse(false);
  }
}
