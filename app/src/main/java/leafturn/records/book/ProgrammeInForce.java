package leafturn.records.book;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leafturn.records.Dates;
import leafturn.records.sheet.ProgrammeSheet;
import org.jspecify.annotations.Nullable;

/** Which of a lawn's programmes holds. */
public final class ProgrammeInForce {
  private ProgrammeInForce() {}

  /**
   * The programme that holds on a day; the first one where none has begun yet, and null where there
   * is none.
   */
  public static @Nullable ProgrammeSheet on(LocalDate day, List<Sheet<ProgrammeSheet>> byDay) {
    ProgrammeSheet found = null;
    for (Sheet<ProgrammeSheet> sheet : byDay) {
      if (found == null || !sheet.content().from().isAfter(day)) {
        found = sheet.content();
      }
    }
    return found;
  }

  /**
   * That another programme begins on a day already, in a sentence: of two that do, one would never
   * hold. Empty where none does.
   */
  public static String taken(LocalDate day, List<Sheet<ProgrammeSheet>> others) {
    return others.stream()
        .map(Sheet::content)
        .filter(other -> other.from().equals(day))
        .findFirst()
        .map(
            other ->
                "Another programme of this lawn%s begins on %s already; correct or withdraw that one, or give another day."
                    .formatted(
                        other.name() == null ? "" : ", “" + other.name() + "”,", Dates.words(day)))
        .orElse("");
  }

  /**
   * That a programme would begin before a lawn's first one, in a sentence: the first holds for all
   * days before its own, so another in front of it would change them. Empty where it does not.
   *
   * @param begun day on which it begins by now; the last of all days for a new one
   */
  public static String beforeFirst(
      LocalDate begun, ProgrammeSheet programme, List<Sheet<ProgrammeSheet>> others) {
    return first(others)
        .filter(first -> programme.from().isBefore(first) && !begun.isBefore(first))
        .map(
            first ->
                "The first programme of this lawn, from %s, holds for the days before it too; correct its first day, or give a later day here."
                    .formatted(Dates.words(first)))
        .orElse("");
  }

  private static Optional<LocalDate> first(List<Sheet<ProgrammeSheet>> programmes) {
    return programmes.stream()
        .map(programme -> programme.content().from())
        .min(Comparator.naturalOrder());
  }

  /** The first day, from one on, on which another of a lawn's programmes may begin. */
  public static LocalDate firstFree(LocalDate from, List<Sheet<ProgrammeSheet>> programmes) {
    LocalDate first = first(programmes).orElse(from);
    LocalDate day = first.isAfter(from) ? first : from;
    while (!taken(day, programmes).isEmpty()) {
      day = day.plusDays(1);
    }
    return day;
  }

  /** The programmes that held before that of a day, in order; each until the next one's day. */
  public static List<ProgrammeSheet> before(LocalDate day, List<Sheet<ProgrammeSheet>> byDay) {
    List<ProgrammeSheet> begun =
        byDay.stream().map(Sheet::content).filter(one -> !one.from().isAfter(day)).toList();
    return begun.isEmpty() ? begun : begun.subList(0, begun.size() - 1);
  }
}
