package leafturn.records.book;

import java.time.LocalDate;
import java.util.List;
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

  /** The first day, from one on, on which none of a lawn's programmes begins. */
  public static LocalDate firstFree(LocalDate from, List<Sheet<ProgrammeSheet>> programmes) {
    LocalDate day = from;
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
