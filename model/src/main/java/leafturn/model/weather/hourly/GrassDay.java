package leafturn.model.weather.hourly;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A day's grass by the hour over the weathers that may be. Hour h runs from h to h + 1 o'clock. */
public final class GrassDay {
  /** What wet leaves are wet from. */
  public enum WetFrom {
    /** Dew, or air near saturation. */
    DEW,
    /** Rain. */
    RAIN,
    /** Watering. */
    WATERING
  }

  /**
   * The sun of the day.
   *
   * @param clock true when hours are on the site's clock, false when in solar time
   * @param riseHour hour of sunrise
   * @param setHour hour of sunset
   */
  public record Sun(boolean clock, double riseHour, double setHour) {}

  /**
   * Whole hours of a day.
   *
   * @param from first hour, 0 to 23
   * @param to o'clock at its end, after {@code from}, at most 24
   */
  public record Span(int from, int to) {
    /** Its length, h. */
    public int hours() {
      return to - from;
    }
  }

  record Shares(double[] dry, double[] frost, double[] fit, double[][] wetFrom) {}

  record Course(
      double[] temperatureC, double[] humidityPercent, double[] windMPerS, double[] leafWaterMm) {}

  private static final double ROUNDING = 1e-9;

  private final LocalDate date;
  private final Sun sun;
  private final Shares shares;
  private final Course course;

  GrassDay(LocalDate date, Sun sun, Shares shares, Course course) {
    this.date = date;
    this.sun = sun;
    this.shares = shares;
    this.course = course;
  }

  /** The day. */
  public LocalDate date() {
    return date;
  }

  /** The sun of the day. */
  public Sun sun() {
    return sun;
  }

  /** Share of the weathers in which an hour is dry enough from its start to its end, 0-1. */
  public double dryFraction(int hour) {
    return share(shares.dry[hour]);
  }

  /** Share of the weathers in which blades may be frozen in an hour, 0-1. */
  public double frostFraction(int hour) {
    return share(shares.frost[hour]);
  }

  /** Share of the weathers in which leaves are wet in an hour and from that, 0-1. */
  public double wetFraction(int hour, WetFrom from) {
    return share(shares.wetFrom[from.ordinal()][hour]);
  }

  private static double share(double sum) {
    return sum > 1 - ROUNDING ? 1 : sum;
  }

  /** Mean air temperature of an hour, °C. */
  public double temperatureC(int hour) {
    return course.temperatureC[hour];
  }

  /** Mean relative humidity of an hour, %. */
  public double humidityPercent(int hour) {
    return course.humidityPercent[hour];
  }

  /** Mean wind of an hour at 2 m, m/s. */
  public double windMPerS(int hour) {
    return course.windMPerS[hour];
  }

  /** Mean water on the leaves at the end of an hour, mm. */
  public double leafWaterMm(int hour) {
    return course.leafWaterMm[hour];
  }

  /** True when the middle of an hour lies in daylight. */
  public boolean light(int hour) {
    return hour + 0.5 >= sun.riseHour && hour + 0.5 <= sun.setHour;
  }

  /**
   * Daylight hours that are dry enough and free of frost in at least a share of the weathers.
   *
   * @param leastFraction share, above 0 to 1; one half for "about", more for "surely"
   * @param fromHour first hour that still counts, 0 to 24
   * @return spans in order, perhaps none
   */
  public List<Span> fit(double leastFraction, int fromHour) {
    List<Span> spans = new ArrayList<>();
    int from = -1;
    for (int hour = fromHour; hour <= 24; hour++) {
      boolean fit = hour < 24 && light(hour) && fitFraction(hour) >= leastFraction - ROUNDING;
      if (fit && from < 0) {
        from = hour;
      } else if (!fit && from >= 0) {
        spans.add(new Span(from, hour));
        from = -1;
      }
    }
    return spans;
  }

  /**
   * Share of the weathers in which an hour is fit for mowing: dry enough and free of frost, 0-1.
   */
  public double fitFraction(int hour) {
    return share(shares.fit[hour]);
  }

  /** What the leaves of an hour are most often wet from. */
  public WetFrom mostlyWetFrom(int hour) {
    WetFrom most = WetFrom.DEW;
    for (WetFrom from : WetFrom.values()) {
      if (shares.wetFrom[from.ordinal()][hour] > shares.wetFrom[most.ordinal()][hour]) {
        most = from;
      }
    }
    return most;
  }

  /**
   * O'clock at which the blades have thawed in more than half of the weathers: 0 when there is no
   * frost at sunrise, 24 when it outlasts the daylight.
   */
  public int frostGoneAt() {
    int rise = (int) Math.max(0, Math.floor(sun.riseHour));
    int hour = rise;
    while (hour < 24 && frostFraction(hour) >= 0.5) {
      hour++;
    }
    return hour == rise ? 0 : hour >= sun.setHour ? 24 : hour;
  }
}
