package leafturn.advice.call;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * When the local rules let a lawn be watered.
 *
 * @param banned true when they do not at all
 * @param weekdays days of the week on which they do; every day when empty
 * @param from first hour of those days, or null for any
 * @param to last hour, which may lie past midnight, or null for any
 */
public record WateringLimits(
    boolean banned, Set<DayOfWeek> weekdays, @Nullable LocalTime from, @Nullable LocalTime to) {
  /** Hour from which the early morning of the day is over. */
  static final LocalTime LATE = LocalTime.of(10, 0);

  private static final LocalTime DAWN = LocalTime.of(4, 0);

  /** No limits known. */
  public static final WateringLimits NONE = new WateringLimits(false, Set.of(), null, null);

  /** No watering at all. */
  public static final WateringLimits BAN = new WateringLimits(true, Set.of(), null, null);

  public WateringLimits {
    weekdays = Set.copyOf(weekdays);
    if ((from == null) != (to == null)) {
      throw new IllegalArgumentException(
          "hours of watering need their first and their last, but got " + from + " and " + to);
    }
  }

  /** Days from one on until watering is allowed, or empty when it is not within so many days. */
  Optional<Integer> firstAllowed(LocalDate from, int days) {
    return IntStream.rangeClosed(0, days)
        .filter(day -> allowed(from.plusDays(day)))
        .boxed()
        .findFirst();
  }

  /** " between 6 and 8"; empty where any hour will do. */
  String hours() {
    return from == null || to == null ? "" : Words.say(" between %s and %s", from, to);
  }

  /** True when watering is allowed on a day. */
  public boolean allowed(LocalDate day) {
    return !banned && (weekdays.isEmpty() || weekdays.contains(day.getDayOfWeek()));
  }

  /** True when its hours let the lawn be watered early in the morning. */
  boolean earlyMorning() {
    if (from == null || to == null) {
      return true;
    }
    boolean pastMidnight = !from.isBefore(to);
    return pastMidnight
        ? from.isBefore(LATE) || to.isAfter(DAWN)
        : from.isBefore(LATE) && to.isAfter(DAWN);
  }
}
