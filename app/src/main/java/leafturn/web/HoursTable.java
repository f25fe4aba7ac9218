package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.DryHours;
import leafturn.quantity.ClockHour;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.DayWords;
import leafturn.reports.figure.HoursFigure;
import leafturn.reports.figure.HoursFormat;

/** The hours of today and tomorrow, as a figure and as a table. */
public final class HoursTable {
  private final DryHours hours;
  private final Units units;

  HoursTable(DryHours hours, Units units) {
    this.hours = hours;
    this.units = units;
  }

  /**
   * A day.
   *
   * @param shortName "Today" or "Tomorrow"
   * @param name "Today, Monday 4 May"
   * @param words its hours in words
   * @param hours its hours of daylight and those beside them
   */
  public record DayLine(String shortName, String name, String words, List<HourLine> hours) {}

  /** An hour in figures, each a share of the possible weathers in %. */
  public record HourLine(
      String from,
      String fit,
      String dew,
      String rain,
      String watering,
      String frost,
      String air) {}

  /** Today and tomorrow. */
  public List<DayLine> days() {
    List<DayLine> days = new ArrayList<>();
    for (DryHours.Day day : hours.days()) {
      String name = days.isEmpty() ? "Today" : "Tomorrow";
      days.add(
          new DayLine(
              name,
              name + ", " + DayWords.day(day.date()),
              day.words(),
              day.hours().stream().map(this::line).toList()));
    }
    return days;
  }

  /** "Today wet with dew until about 9, then dry." */
  public String today() {
    return "Today " + hours.days().get(0).words() + ".";
  }

  private HourLine line(DryHours.Hour hour) {
    return new HourLine(
        ClockHour.shown(hour.hour(), units),
        percent(hour.fit()),
        percent(hour.dew()),
        percent(hour.rain()),
        percent(hour.watering()),
        percent(hour.frost()),
        Long.toString(Math.round(Measure.TEMPERATURE.shown(hour.temperatureC(), units))));
  }

  private static String percent(double fraction) {
    return Long.toString(Math.round(100 * fraction));
  }

  /** The figure in one of its shapes; the style sheet shows the one that fits. */
  public String figure(HoursFormat format) {
    return HoursFigure.draw(hours, units, format);
  }

  /** What "dry enough" means and how sure it is. */
  public String limits() {
    return hours.limits();
  }

  /** Share of the weathers in which a named hour is fit: "75 %". */
  public String least() {
    return percent(hours.leastFraction()) + " %";
  }

  public String temperatureUnit() {
    return units == Units.US ? "°F" : "°C";
  }
}
