package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;
import org.jspecify.annotations.Nullable;

/** The log of a lawn as the book has it, to be asked whether it says something already. */
final class KnownLog {
  private final Map<LogSheet, Integer> times = new HashMap<>();
  private final Map<Work, LogSheet> standing = new HashMap<>();

  private record Work(LocalDate day, What what) {}

  /**
   * @param entries withdrawn ones too: they were said once
   */
  KnownLog(List<Sheet<LogSheet>> entries) {
    for (Sheet<LogSheet> sheet : entries) {
      LogSheet entry = sheet.content();
      times.merge(bare(entry), 1, Integer::sum);
      if (!sheet.withdrawn()) {
        standing.putIfAbsent(new Work(entry.day(), entry.what()), entry);
      }
    }
  }

  /** How often it says what an entry says. */
  int times(LogSheet entry) {
    return times.getOrDefault(bare(entry), 0);
  }

  /** An entry that tells of the same work on the same day. */
  Optional<LogSheet> alike(LogSheet entry) {
    return Optional.ofNullable(standing.get(new Work(entry.day(), entry.what())));
  }

  static boolean saysTheSame(LogSheet one, LogSheet other) {
    return bare(one).equals(bare(other));
  }

  /** What an entry says: photographs are in no table, and none of an element is 0 g/m2 of it. */
  static LogSheet bare(LogSheet entry) {
    Done done = entry.done();
    if (done instanceof Done.Fed fed) {
      done =
          new Done.Fed(
              orNull(fed.fastNGPerM2()),
              orNull(fed.slowNGPerM2()),
              orNull(fed.pGPerM2()),
              orNull(fed.kGPerM2()),
              fed.product(),
              fed.wateredIn(),
              fed.feedForm(),
              fed.waterInMm());
    }
    return new LogSheet(entry.lawn(), entry.day(), entry.time(), done, entry.note(), List.of());
  }

  private static @Nullable Double orNull(@Nullable Double amount) {
    return amount == null || amount == 0 ? null : amount;
  }
}
