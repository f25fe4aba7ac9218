package leafturn.advice.call;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.LogEntry.Measured;
import leafturn.model.lawn.LogEntry.Mown;
import org.jspecify.annotations.Nullable;

/** Growth of late, as a height measured after the last mowing or right before it tells. */
final class MeasuredGrowth {
  private static final int WEEK = 7;

  /** Growth up to a mowing speaks of the weather of late only so far back, days; our judgement. */
  private static final int MOST_DAYS_BEFORE = 2 * WEEK;

  /** A height so far below that of a mowing was not left by it, mm; our judgement. */
  static final double NOT_THAT_CUT_MM = 10;

  private final double cutHeightMm;
  private @Nullable Mown cut;
  private @Nullable LocalDate read;
  private double mmPerDay = Double.NaN;

  private MeasuredGrowth(double cutHeightMm) {
    this.cutHeightMm = cutHeightMm;
  }

  /**
   * Growth by the last height measured within a week, from the mowing before it on, mm a day; NaN
   * without, or where the height is lower than the mowing left it, which tells of another cut and
   * not of growth.
   *
   * @param done the log up to a day, in any order
   * @param on the day
   * @param cutHeightMm height of mowings whose height was not logged, mm
   */
  static double mmPerDay(List<LogEntry> done, LocalDate on, double cutHeightMm) {
    MeasuredGrowth growth = new MeasuredGrowth(cutHeightMm);
    done.stream().sorted(Comparator.comparing(LogEntry::day)).forEach(growth::take);
    boolean lately = growth.read != null && !growth.read.isBefore(on.minusDays(WEEK));
    return lately ? growth.mmPerDay : Double.NaN;
  }

  private void take(LogEntry entry) {
    if (entry instanceof Measured measured) {
      read(measured.day(), measured.heightMm(), Integer.MAX_VALUE);
    } else if (entry instanceof Mown mown) {
      if (!Double.isNaN(mown.heightBeforeMm())) {
        read(mown.day(), mown.heightBeforeMm(), MOST_DAYS_BEFORE);
      }
      cut = mown;
    }
  }

  private void read(LocalDate day, double heightMm, int mostDays) {
    if (cut == null || !day.isAfter(cut.day())) {
      return; // of the day of a mowing nobody knows whether it was read before or after it
    }
    long days = ChronoUnit.DAYS.between(cut.day(), day);
    double fromMm = Double.isNaN(cut.heightAfterMm()) ? cutHeightMm : cut.heightAfterMm();
    boolean tells = days <= mostDays && heightMm >= fromMm - NOT_THAT_CUT_MM;
    read = day;
    mmPerDay = tells ? (heightMm - fromMm) / days : Double.NaN;
  }
}
