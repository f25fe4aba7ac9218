package leafturn.advice.call;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The days on which whoever mows can come: days of the week and dates together; any day when
 * neither is given.
 *
 * @param weekdays days of the week
 * @param dates single days
 * @param further the days for further cuts, once a first one is made; null where they are the same
 */
public record Visits(Set<DayOfWeek> weekdays, Set<LocalDate> dates, @Nullable Visits further) {
  /** Whoever mows can come on any day. */
  public static final Visits ANY_DAY = new Visits(Set.of(), Set.of());

  /** Days in which a visit is looked for. */
  public static final int LOOK_AHEAD_DAYS = 21;

  public Visits {
    weekdays = Set.copyOf(weekdays);
    dates = Set.copyOf(dates);
  }

  /** The same days for a first cut and for further ones. */
  public Visits(Set<DayOfWeek> weekdays, Set<LocalDate> dates) {
    this(weekdays, dates, null);
  }

  /** Visits on some days of the week. */
  public static Visits every(DayOfWeek... weekdays) {
    return new Visits(Set.of(weekdays), Set.of());
  }

  /** Visits on single days. */
  public static Visits on(LocalDate... dates) {
    return new Visits(Set.of(), Set.of(dates));
  }

  /** A first cut on one day alone, and further ones on these days. */
  public Visits firstOn(LocalDate day) {
    return new Visits(Set.of(), Set.of(day), this);
  }

  /** True where one day was chosen for the first cut. */
  boolean firstDayIsChosen() {
    return further != null;
  }

  /** The days for further cuts. */
  Visits forFurtherCuts() {
    return further == null ? this : further;
  }

  public boolean anyDay() {
    return weekdays.isEmpty() && dates.isEmpty();
  }

  /** True when whoever mows can come on a day. */
  public boolean possible(LocalDate day) {
    return anyDay() || weekdays.contains(day.getDayOfWeek()) || dates.contains(day);
  }
}
