package leafturn.advice.call;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import org.jspecify.annotations.Nullable;

/** Growth since the last mowing, as a height measured after it tells. */
final class MeasuredGrowth {
  private static final int WEEK = 7;

  /** A height so far below that of a mowing was not left by it, mm; our judgement. */
  private static final double NOT_THAT_CUT_MM = 10;

  private MeasuredGrowth() {}

  /**
   * Growth by a height measured within a week, mm a day; NaN without, or where the height is lower
   * than the mowing left it, which tells of another cut and not of growth.
   *
   * @param done the log up to a day
   * @param on the day
   * @param cutHeightMm height of mowings whose height was not logged, mm
   */
  static double mmPerDay(List<LogEntry> done, LocalDate on, double cutHeightMm) {
    LogEntry.Measured last = null;
    LogEntry.Mown mown = null;
    for (LogEntry entry : done) {
      if (entry instanceof LogEntry.Measured measured && !before(measured, last)) {
        last = measured;
      } else if (entry instanceof LogEntry.Mown cut && !before(cut, mown)) {
        mown = cut;
      }
    }
    if (last == null
        || mown == null
        || !last.day().isAfter(mown.day())
        || last.day().isBefore(on.minusDays(WEEK))) {
      return Double.NaN;
    }
    double cutToMm = Double.isNaN(mown.heightAfterMm()) ? cutHeightMm : mown.heightAfterMm();
    return last.heightMm() < cutToMm - NOT_THAT_CUT_MM
        ? Double.NaN
        : (last.heightMm() - cutToMm) / ChronoUnit.DAYS.between(mown.day(), last.day());
  }

  private static boolean before(LogEntry entry, @Nullable LogEntry other) {
    return other != null && entry.day().isBefore(other.day());
  }
}
