package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.model.weather.hourly.GrassDay.WetFrom;
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
  static DryHours of(MowingHours hours, Reader reader, CallRules rules) {
    return of(hours, reader, HourWords.Told.by(rules), MowingHours.DAYS);
  }

  /**
   * The hours of one day of a record, for a reader of given units.
   *
   * @param index day of the record, 0 for the first
   */
  public static DryHours recorded(WeatherSeries weather, Site site, int index, Units units) {
    MowingHours hours = MowingHours.recorded(weather, site, index);
    double leastHours = CallRules.standard().threshold(CallRule.DRY_HOURS);
    HourWords.Told told = new HourWords.Told(RECORDED_FRACTION, leastHours);
    return of(hours, new Reader(units), told, 1);
  }

  private static DryHours of(MowingHours hours, Reader reader, HourWords.Told told, int dayCount) {
    HourWords words = new HourWords(hours, reader, told);
    double leastFraction = told.leastFraction();
    List<Day> days = new ArrayList<>();
    for (int day = 0; day < dayCount; day++) {
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
    MowingHours.Setting setting = hours.setting();
    String zone = hours.day(0).sun().clock() ? String.valueOf(setting.site().timeZone()) : null;
    return new DryHours(
        zone,
        leastFraction,
        setting.humidityMeasured() ? MEASURED_ERROR_HOURS : ASSUMED_ERROR_HOURS,
        limits(setting, reader, leastFraction) + clock(zone),
        days);
  }

  private static List<Hour> hoursOf(GrassDay day) {
    List<Hour> hours = new ArrayList<>();
    for (int hour = 0; hour < 24; hour++) {
      hours.add(
          new Hour(
              hour,
              rounded(day.fitFraction(hour)),
              rounded(day.wetFraction(hour, WetFrom.DEW)),
              rounded(day.wetFraction(hour, WetFrom.RAIN)),
              rounded(day.wetFraction(hour, WetFrom.WATERING)),
              rounded(day.frostFraction(hour)),
              Math.round(10 * day.temperatureC(hour)) / 10.0));
    }
    return hours;
  }

  /** More digits would mean nothing. */
  private static double rounded(double fraction) {
    return Math.round(1000 * fraction) / 1000.0;
  }

  private static String limits(MowingHours.Setting setting, Reader reader, double leastFraction) {
    boolean measured = setting.humidityMeasured();
    return say(
        "Dry enough means at most %s of water on the leaves and air below %s %% humidity, in at least %.0f %% of the possible weathers. Reckoned from daily weather, so an hour named is easily %s h off, and shade dries later%s: the hand on the grass decides.",
        reader.waterLimit(setting.limits().dryEnoughMm()),
        Words.figure(setting.limits().wetHumidityPercent()),
        100 * leastFraction,
        Words.figure(measured ? MEASURED_ERROR_HOURS : ASSUMED_ERROR_HOURS),
        measured ? "" : "; the air's moisture was not measured");
  }

  private static String clock(@Nullable String zone) {
    return zone == null
        ? " Hours are in solar time, noon at the sun's highest; give longitude and time zone for the clock."
        : " Hours are on the clock of " + zone + ".";
  }
}
