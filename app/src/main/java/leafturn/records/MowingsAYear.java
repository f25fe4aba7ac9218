package leafturn.records;

import leafturn.advice.season.ProgrammeOutcome;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;
import org.jspecify.annotations.Nullable;

/** How often a programme can mow at most. */
public final class MowingsAYear {
  private static final int COMMON_YEAR = 2015;
  private static final int DAYS = 365;

  /** Most days between two mowings: with more, a year can pass without one. */
  static final int MOST_DAYS_APART = DAYS;

  private MowingsAYear() {}

  /** What is said of a mowing season of a single day that somebody gives. */
  public static final String SINGLE_DAY =
      "the mowing season ends on the day it begins on, which leaves one mowing a year; give a later day.";

  /** Mowings for which its days between them and its season leave room, 1 or more. */
  public static int most(Programme.Mowing mowing) {
    int apart = mowing.byOneThirdRule() ? 1 : mowing.everyDays();
    return most(apart, season(mowing.from(), mowing.to()));
  }

  /** As {@link #most(Programme.Mowing)}, of a mowing of which not all need be told. */
  public static int most(ProgrammeFields.Mowing mowing) {
    Integer apart = ProgrammeSection.everyDays(mowing.trigger());
    CalendarDay from = mowing.from();
    CalendarDay to = mowing.to();
    return most(
        apart == null || apart == 0 ? 1 : apart,
        from == null || to == null ? UsualSeason.DAYS : season(from, to));
  }

  private static int season(CalendarDay from, CalendarDay to) {
    return Math.floorMod(to.in(COMMON_YEAR) - from.in(COMMON_YEAR), DAYS) + 1;
  }

  private static int most(int daysApart, int seasonDays) {
    return (seasonDays - 1) / daysApart + 1;
  }

  /** What is said of a programme that mows too seldom for a lawn; empty of any other. */
  public static String words(int most) {
    return most >= ProgrammeOutcome.FEWEST_MOWINGS
        ? ""
        : "It mows %s a year at most: fewer than %d mowings keep a meadow and no lawn."
            .formatted(most == 1 ? "once" : most + " times", ProgrammeOutcome.FEWEST_MOWINGS);
  }

  /** Reports a mowing season that ends on the day it begins on. */
  public static void checkSeason(
      JsonObject section, @Nullable CalendarDay from, @Nullable CalendarDay to) {
    if (isSingleDay(from, to)) {
      section.fault("to", SINGLE_DAY);
    }
  }

  /** True of a mowing season that ends on the day it begins on. */
  public static boolean isSingleDay(@Nullable CalendarDay from, @Nullable CalendarDay to) {
    return from != null && to != null && season(from, to) == 1;
  }
}
