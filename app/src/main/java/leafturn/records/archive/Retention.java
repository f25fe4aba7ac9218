package leafturn.records.archive;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.book.ArchiveShelf.Kept;

/** Which archives stay: the newest of each of the last 14 days and 12 months that have one. */
final class Retention {
  private static final int DAYS = 14;
  private static final int MONTHS = 12;

  private Retention() {}

  /**
   * The archives that need not stay.
   *
   * @param archives the newest first
   * @param zone in which days and months are told
   */
  static List<Kept> toDelete(List<Kept> archives, ZoneId zone) {
    Map<LocalDate, Kept> days = new LinkedHashMap<>();
    Map<YearMonth, Kept> months = new LinkedHashMap<>();
    for (Kept kept : archives) {
      LocalDate day = kept.madeAt().atZone(zone).toLocalDate();
      days.putIfAbsent(day, kept);
      months.putIfAbsent(YearMonth.from(day), kept);
    }
    Set<Kept> stay = new HashSet<>();
    days.values().stream().limit(DAYS).forEach(stay::add);
    months.values().stream().limit(MONTHS).forEach(stay::add);
    return archives.stream().filter(kept -> !stay.contains(kept)).toList();
  }
}
