package leafturn.records.book;

import java.time.LocalDate;
import java.util.List;
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

  /** The programmes that held before that of a day, in order; each until the next one's day. */
  public static List<ProgrammeSheet> before(LocalDate day, List<Sheet<ProgrammeSheet>> byDay) {
    List<ProgrammeSheet> begun =
        byDay.stream().map(Sheet::content).filter(one -> !one.from().isAfter(day)).toList();
    return begun.isEmpty() ? begun : begun.subList(0, begun.size() - 1);
  }
}
