package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.DailyEvapotranspiration;
import leafturn.model.weather.DailyEvapotranspiration.HumidityRoute;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.model.weather.hourly.GrassDay.WetFrom;
import leafturn.model.weather.hourly.GrassLimits;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * The hours of today and tomorrow in which the grass is fit for mowing, as a call shows them.
 *
 * @param timeZone IANA name of the zone on whose clock the hours are, or null when they are in
 *     solar time
 * @param leastFraction share of the possible weathers in which a named hour is fit, 0-1
 * @param typicalErrorHours how far an hour named is typically off, h (our judgement)
 * @param limits what "dry enough" means and how sure it is, in sentences
 * @param days today and tomorrow
 */
public record DryHours(
    @Nullable String timeZone,
    double leastFraction,
    double typicalErrorHours,
    String limits,
    List<Day> days) {
  public DryHours {
    days = List.copyOf(days);
  }

  /**
   * A day.
   *
   * @param date the day
   * @param words its hours in words, a sentence without its stop
   * @param fit spans in which the grass is fit
   * @param frostGoneAt o'clock at which frost has gone: 0 without frost, 24 when it stays
   * @param sun the day's sun
   * @param hours its 24 hours
   */
  public record Day(
      LocalDate date,
      String words,
      List<Span> fit,
      int frostGoneAt,
      GrassDay.Sun sun,
      List<Hour> hours) {
    public Day {
      fit = List.copyOf(fit);
      hours = List.copyOf(hours);
    }
  }

  /**
   * An hour over the possible weathers; each share is of all of them, 0-1.
   *
   * @param hour o'clock at its start
   * @param fit share in which the grass is dry and free of frost
   * @param dew share in which it is wet with dew or the air near saturation
   * @param rain share in which it is wet with rain
   * @param watering share in which it is wet with watering
   * @param frost share in which blades may be frozen
   * @param temperatureC mean air temperature, °C
   */
  public record Hour(
      int hour,
      double fit,
      double dew,
      double rain,
      double watering,
      double frost,
      double temperatureC) {}

  /** Error where humidity was measured; the rule alone was 1.2 h a day off at best. */
  private static final double MEASURED_ERROR_HOURS = 1.5;

  /** Share for the hours of a recorded day: more likely fit than not. */
  private static final double RECORDED_FRACTION = 0.5;

  /** Error where the night's minimum stands in for the dew point. */
  private static final double ASSUMED_ERROR_HOURS = 2.5;

  /** The hours as a call shows them. */
  static DryHours of(
      MowingHours hours, SiteClimate climate, LocalDate on, Reader reader, double leastFraction) {
    int eve = climate.weather().indexOf(on) - 1; // the day itself may not be on record yet
    return of(
            hours, climate.site(), humidityMeasured(climate.weather(), eve), reader, leastFraction)
        .of(MowingHours.DAYS);
  }

  /**
   * The hours of one day of a record, for a reader of given units.
   *
   * @param index day of the record, 0 for the first
   */
  public static DryHours recorded(WeatherSeries weather, Site site, int index, Units units) {
    MowingHours hours = MowingHours.recorded(weather, site, index);
    boolean measured = humidityMeasured(weather, index);
    return of(hours, site, measured, new Reader(units), RECORDED_FRACTION).of(1);
  }

  private DryHours of(int dayCount) {
    return new DryHours(
        timeZone, leastFraction, typicalErrorHours, limits, days.subList(0, dayCount));
  }

  private static DryHours of(
      MowingHours hours, Site site, boolean measured, Reader reader, double leastFraction) {
    HourWords words = new HourWords(hours, reader, leastFraction);
    List<Day> days = new ArrayList<>();
    for (int day = 0; day < MowingHours.DAYS; day++) {
      GrassDay grass = hours.day(day);
      days.add(
          new Day(
              grass.date(),
              words.of(day),
              hours.fit(day, leastFraction),
              grass.frostGoneAt(),
              grass.sun(),
              hoursOf(grass)));
    }
    String zone = hours.day(0).sun().clock() ? String.valueOf(site.timeZone()) : null;
    return new DryHours(
        zone,
        leastFraction,
        measured ? MEASURED_ERROR_HOURS : ASSUMED_ERROR_HOURS,
        limits(reader, leastFraction, measured, zone),
        days);
  }

  private static List<Hour> hoursOf(GrassDay day) {
    List<Hour> hours = new ArrayList<>();
    for (int hour = 0; hour < 24; hour++) {
      hours.add(
          new Hour(
              hour,
              day.fitFraction(hour),
              day.wetFraction(hour, WetFrom.DEW),
              day.wetFraction(hour, WetFrom.RAIN),
              day.wetFraction(hour, WetFrom.WATERING),
              day.frostFraction(hour),
              day.temperatureC(hour)));
    }
    return hours;
  }

  private static String limits(
      Reader reader, double leastFraction, boolean measured, @Nullable String zone) {
    GrassLimits limits = GrassLimits.standard();
    return say(
            "Dry enough means at most %s of water on the leaves and air below %s %% humidity, in at least %.0f %% of the possible weathers.",
            reader.waterLimit(limits.dryEnoughMm()),
            Words.figure(limits.wetHumidityPercent()),
            100 * leastFraction)
        + say(
            " Reckoned from daily weather, so an hour named is easily %s h off, and shade dries later%s: the hand on the grass decides.",
            Words.figure(measured ? MEASURED_ERROR_HOURS : ASSUMED_ERROR_HOURS),
            measured ? "" : "; the air's moisture was not measured")
        + (zone == null
            ? " Hours are in solar time, noon at the sun's highest; give longitude and time zone for the clock."
            : " Hours are on the clock of " + zone + ".");
  }

  private static boolean humidityMeasured(WeatherSeries weather, int index) {
    return DailyEvapotranspiration.humidityRoute(weather, index)
        != HumidityRoute.MINIMUM_TEMPERATURE;
  }
}
