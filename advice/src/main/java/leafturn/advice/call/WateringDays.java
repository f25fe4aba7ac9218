package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The days and hours on which a lawn may be watered, in words.
 *
 * @param limits what the local rules allow
 * @param on the day of the call
 */
record WateringDays(WateringLimits limits, LocalDate on) {
  private static final int WEEK = 7;

  /** First day of a week from one on, on which watering is allowed. */
  Optional<Integer> allowed(int from) {
    return first(from, WEEK);
  }

  private Optional<Integer> first(int from, int days) {
    return limits.firstAllowed(on.plusDays(from), days).map(later -> from + later);
  }

  /**
   * Day to water for growth: not that of mowing, for the mower wants dry leaves, and after it where
   * that is a few days later at most.
   *
   * @param from first day on which it may be watered
   * @param mown days until it is mown, -1 where no mowing is to be heeded
   */
  Optional<Integer> forGrowth(int from, int mown) {
    return allowed(from).map(day -> day > mown ? day : afterMowing(day, mown));
  }

  private int afterMowing(int day, int mown) {
    return first(mown + 1, WEEK - 2) // the same weekday a week later is no other day
        .filter(after -> day == mown || after - day <= WateringAdvice.RAIN_LOOK_DAYS + 1)
        .orElse(day);
  }

  /** When to water for growth: its day and hours, told from the mowing where that comes first. */
  String whenForGrowth(int day, int mown) {
    boolean after = mown >= 0 && day >= mown;
    String when = after ? "once it is mown, " + after(day, mown) : when(day);
    return after && day == mown || !limits.earlyMorning()
        ? when
        : when + ", best early in the morning, so that leaves are dry by noon";
  }

  private String after(int day, int mown) {
    return day == mown || !limits.weekdays().isEmpty()
        ? when(day)
        : say("from %s on%s", new DayNames(on).name(day), limits.hours());
  }

  /** A day after a verb, with its hours. */
  String when(int day) {
    return new DayNames(on).when(day) + limits.hours();
  }
}
