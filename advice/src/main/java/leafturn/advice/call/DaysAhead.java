package leafturn.advice.call;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import leafturn.model.Flows;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ProgrammeKeeper;

/**
 * The lawn left unmown through each possible season, from the day of the call (day 0) on. Arrays
 * are indexed by day.
 */
final class DaysAhead {

  /**
   * One possible season.
   *
   * @param heightMm grass height at the end of the day, mm; never falling, since leaves that die at
   *     the base of long grass do not lower its tips (our judgement)
   * @param rainMm rain, mm; NaN on day 0 when the record holds it
   * @param waterMm rain and logged watering, mm, from three days before day 0 on
   * @param soilWaterFraction water in the root zone over its capacity, 0-1
   * @param minimumC minimum air temperature, °C
   * @param maximumC maximum air temperature, °C
   */
  record Season(
      double[] heightMm,
      double[] rainMm,
      double[] waterMm,
      double[] soilWaterFraction,
      double[] minimumC,
      double[] maximumC) {

    /** Rain and logged watering of a day, which may lie up to three days before the call, mm. */
    double waterMm(int day) {
      return waterMm[day + DAYS_BEFORE];
    }

    /**
     * Days from the evening of day 0 until the grass reaches a height, a day's growth being spread
     * evenly over it; 0 where it stands there already, NaN where it does not get there.
     */
    double daysToHeight(double wantedMm) {
      for (int day = 0; day < heightMm.length; day++) {
        if (heightMm[day] >= wantedMm) {
          double before = day == 0 ? wantedMm : heightMm[day - 1];
          return day == 0 ? 0 : day - 1 + (wantedMm - before) / (heightMm[day] - before);
        }
      }
      return Double.NaN;
    }

    /** Rain and logged watering of the three days before a day, mm. */
    double waterOfThreeDaysBeforeMm(int day) {
      return waterMm(day - 1) + waterMm(day - 2) + waterMm(day - 3);
    }
  }

  private static final int DAYS_BEFORE = 3;
  private static final int LAST_DAY = WeatherToCome.DAYS;

  private DaysAhead() {}

  /** First day from the day of the call on, on which a condition holds, or -1. */
  static int first(IntPredicate holds) {
    return IntStream.rangeClosed(0, LAST_DAY).filter(holds).findFirst().orElse(-1);
  }

  /** All possible seasons in order. */
  static List<Season> of(LawnToday lawn, Programme programme, List<PossibleSeason> seasons) {
    return seasons.stream().map(season -> unmown(lawn, programme, season)).toList();
  }

  private static Season unmown(LawnToday lawn, Programme programme, PossibleSeason season) {
    int firstDay = lawn.weatherKnown() ? 1 : 0;
    Season days = today(lawn);
    LawnRun run = new LawnRun(season.equations(), lawn.state(), season.terms());
    PlanKeeper keeper =
        new PlanKeeper(
            Plan.unmown(),
            new ProgrammeKeeper(programme, season.equations()),
            season,
            firstDay,
            new ClippingsLeft(
                season.equations().parameters(),
                Sinking.of(CallRules.standard()),
                day -> false,
                null));
    run.live(
        0,
        LAST_DAY + 1 - firstDay,
        keeper,
        today -> {
          int day = firstDay + today.day();
          if (day > 0) {
            days.heightMm[day] = Math.max(days.heightMm[day - 1], today.heightMm());
          }
          days.rainMm[day] = today.flow(Flows.RAIN_MM);
          days.waterMm[day + DAYS_BEFORE] = today.flow(Flows.RAIN_MM);
          days.soilWaterFraction[day] = today.flow(Flows.ROOT_ZONE_WATER);
          days.minimumC[day] = season.minimumC(today.day());
          days.maximumC[day] = season.maximumC(today.day());
        });
    return days;
  }

  /** The days up to the day of the call, as far as they are known. */
  private static Season today(LawnToday lawn) {
    int days = LAST_DAY + 1;
    Season result =
        new Season(
            new double[days],
            new double[days],
            new double[days + DAYS_BEFORE],
            new double[days],
            new double[days],
            new double[days]);
    double[] recent = lawn.recentWaterMm();
    int from = lawn.weatherKnown() ? 0 : 1;
    System.arraycopy(recent, from, result.waterMm, 0, recent.length - from);
    result.heightMm[0] = lawn.heightMm();
    if (lawn.weatherKnown()) {
      result.rainMm[0] = Double.NaN;
      result.soilWaterFraction[0] = lawn.soilWaterFraction();
      result.minimumC[0] = lawn.minimumC();
      result.maximumC[0] = lawn.maximumC();
    }
    return result;
  }
}
