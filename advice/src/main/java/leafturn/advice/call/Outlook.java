package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;

/**
 * The lawn so far and to come, by the day, for the season figure.
 *
 * @param past from the first day shown to today, in order
 * @param toCome from tomorrow on if it is not mown: height over the possible seasons
 * @param rainNextSevenDaysMm rain from tomorrow over seven days, mm
 * @param growth how the lawn grew against what was expected
 * @param measured false where other days stand in for the weather of the last past days
 */
public record Outlook(
    List<PastDay> past,
    List<DayToCome> toCome,
    Spread rainNextSevenDaysMm,
    OwnGrowth growth,
    boolean measured) {
  /** Of a lawn whose weather was measured, its growth not. */
  public Outlook(List<PastDay> past, List<DayToCome> toCome, Spread rainNextSevenDaysMm) {
    this(past, toCome, rainNextSevenDaysMm, OwnGrowth.UNMEASURED, true);
  }

  public Outlook {
    past = List.copyOf(past);
    toCome = List.copyOf(toCome);
  }

  /**
   * @param heightMm height at the end of the day (after a cut), mm
   * @param heightBeforeCutMm height before the cut on a mown day, else NaN
   * @param rainMm rain, mm
   * @param soilWaterFraction water in the root zone over its capacity, 0-1
   * @param growthGPerM2 leaf growth of the day, g dry matter per m2
   * @param returned share of the clippings returned on a mown day, else NaN
   */
  public record PastDay(
      LocalDate day,
      double heightMm,
      double heightBeforeCutMm,
      double rainMm,
      double soilWaterFraction,
      double growthGPerM2,
      double returned) {}

  /**
   * @param heightMm height if left unmown, mm
   * @param rainMm rain of the possible seasons, mm
   * @param wetDayFraction share of the possible seasons with 1 mm of rain or more on the day, 0-1
   */
  public record DayToCome(LocalDate day, Spread heightMm, Spread rainMm, double wetDayFraction) {}
}
