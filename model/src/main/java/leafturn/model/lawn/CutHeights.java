package leafturn.model.lawn;

import java.time.LocalDate;
import java.time.Month;
import java.time.Year;
import java.util.EnumMap;
import java.util.Map;

/**
 * Cut heights through the year.
 *
 * @param usualMm cut height of every month not named, mm, 3 to 200
 * @param byMonth months with a height of their own, mm, 3 to 200
 */
public record CutHeights(double usualMm, Map<Month, Double> byMonth) {
  public CutHeights {
    within("mowing.heightMm", usualMm);
    byMonth.forEach((month, heightMm) -> within("mowing.heightMmByMonth", heightMm));
    byMonth = Map.copyOf(byMonth);
  }

  /** The same height all year. */
  public static CutHeights always(double heightMm) {
    return new CutHeights(heightMm, Map.of());
  }

  /** Cut height of a month, mm. */
  public double in(Month month) {
    Double own = byMonth.get(month);
    return own == null ? usualMm : own;
  }

  /** Cut height of a day, mm. */
  public double on(LocalDate day) {
    return in(day.getMonth());
  }

  /** True when some month differs from the others. */
  public boolean vary() {
    return byMonth.values().stream().anyMatch(heightMm -> heightMm != usualMm);
  }

  /** These heights, all of them raised or, where negative, lowered, within 3 to 200 mm. */
  public CutHeights raised(double byMm) {
    Map<Month, Double> months = new EnumMap<>(Month.class);
    byMonth.forEach((month, heightMm) -> months.put(month, kept(heightMm + byMm)));
    return new CutHeights(kept(usualMm + byMm), months);
  }

  /** Heights of a year's days by their number in the year; place 0 is not used. */
  double[] daysOf(int year) {
    double[] heightsMm = new double[Year.of(year).length() + 1];
    for (int day = 1; day < heightsMm.length; day++) {
      heightsMm[day] = on(LocalDate.ofYearDay(year, day));
    }
    return heightsMm;
  }

  private static double kept(double heightMm) {
    return Math.min(200, Math.max(3, heightMm));
  }

  private static void within(String name, double heightMm) {
    if (!(heightMm >= 3 && heightMm <= 200)) {
      throw new IllegalArgumentException(
          "%s is %s, but must lie from 3 to 200".formatted(name, heightMm));
    }
  }
}
