package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leafturn.advice.call.Outlook;
import leafturn.advice.call.Outlook.DayToCome;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.advice.call.Spread;

/** A made-up season to render pages with: the right shapes, no science. */
final class SampleSeason {
  private static final LocalDate FIRST = LocalDate.of(2015, 3, 1);
  private static final long RAIN_SEED = 11;

  private final double cutHeightMm;
  private final double growthMmPerDay;
  private final int mowEveryDays;
  private final double[] returned;

  /**
   * @param returned share returned at one mowing after the other, over and over
   */
  SampleSeason(double cutHeightMm, double growthMmPerDay, int mowEveryDays, double... returned) {
    this.cutHeightMm = cutHeightMm;
    this.growthMmPerDay = growthMmPerDay;
    this.mowEveryDays = mowEveryDays;
    this.returned = returned;
  }

  Outlook outlook(LocalDate today, double heightTodayMm) {
    List<PastDay> past = past(today, heightTodayMm);
    return new Outlook(past, toCome(today, heightTodayMm), new Spread(3, 22, 58));
  }

  private List<PastDay> past(LocalDate today, double heightTodayMm) {
    Random rain = new Random(RAIN_SEED);
    List<PastDay> days = new ArrayList<>();
    double height = cutHeightMm * 1.02;
    double water = 0.9;
    int mowings = 0;
    for (LocalDate day = FIRST; !day.isAfter(today); day = day.plusDays(1)) {
      double rainMm =
          rain.nextDouble() < 0.27
              ? Math.round(10 * 30 * Math.pow(rain.nextDouble(), 2)) / 10.0
              : 0;
      water = Math.max(0.25, Math.min(1, water + rainMm / 90 - 0.045 * spring(day)));
      double growthMm = growthMmPerDay * spring(day) * Math.min(1, water / 0.5);
      height += growthMm;
      int daysLeft = (int) (today.toEpochDay() - day.toEpochDay());
      boolean mown =
          day.getMonthValue() >= 4 && daysLeft > 0 && daysLeft % mowEveryDays == mowEveryDays - 2;
      double before = mown ? height : Double.NaN;
      double share = mown ? returned[mowings++ % returned.length] : Double.NaN;
      height = mown ? cutHeightMm : height;
      height = daysLeft == 0 ? heightTodayMm : height;
      days.add(new PastDay(day, height, before, rainMm, water, 0.7 * growthMm, share));
    }
    return days;
  }

  private List<DayToCome> toCome(LocalDate today, double heightTodayMm) {
    List<DayToCome> days = new ArrayList<>();
    for (int ahead = 1; ahead <= 21; ahead++) {
      double middle = heightTodayMm + growthMmPerDay * ahead;
      Spread height =
          new Spread(
              middle - 0.5 * growthMmPerDay * ahead,
              middle,
              middle + 0.35 * growthMmPerDay * ahead);
      Spread rain = new Spread(0, ahead % 4 == 0 ? 0.6 : 0, 6 + 3 * (ahead % 5));
      days.add(new DayToCome(today.plusDays(ahead), height, rain, 0.25 + 0.02 * (ahead % 7)));
    }
    return days;
  }

  private static double spring(LocalDate day) {
    return Math.max(0.08, Math.min(1, (day.getDayOfYear() - 75) / 45.0));
  }
}
