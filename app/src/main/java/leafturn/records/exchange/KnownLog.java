package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.LogFit;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;

/**
 * The log of a lawn, to be asked whether it says something already: as the book has it, and with
 * the mowings that a table would add.
 */
final class KnownLog {
  private static final String BOOK = "the book";

  private final Map<LogSheet, Integer> times = new HashMap<>();
  private final Map<LogSheet, Integer> withdrawn = new HashMap<>();
  private final Map<Work, Said> standing = new HashMap<>();
  private final Map<LocalDate, List<Said>> mowings = new HashMap<>();

  private record Work(LocalDate day, What what) {}

  /**
   * An entry that counts.
   *
   * @param where the book, or the row that tells it
   */
  record Said(String where, LogSheet entry) {}

  /**
   * @param entries withdrawn ones too: they were said once, but no longer count
   */
  KnownLog(List<Sheet<LogSheet>> entries) {
    for (Sheet<LogSheet> sheet : entries) {
      LogSheet entry = sheet.content();
      if (sheet.withdrawn()) {
        withdrawn.merge(entry.bare(), 1, Integer::sum);
      } else {
        times.merge(entry.bare(), 1, Integer::sum);
        standing.putIfAbsent(new Work(entry.day(), entry.what()), new Said(BOOK, entry));
        noteMowing(new Said(BOOK, entry));
      }
    }
  }

  /** How often the book says what an entry says, in entries that were withdrawn. */
  int timesWithdrawn(LogSheet entry) {
    return withdrawn.getOrDefault(entry.bare(), 0);
  }

  /** How often the book says what an entry says, in entries that count. */
  int times(LogSheet entry) {
    return times.getOrDefault(entry.bare(), 0);
  }

  /** Takes note of an entry that a row would add. */
  void add(String row, LogSheet entry) {
    if (entry.what() == What.MOWN) {
      standing.putIfAbsent(new Work(entry.day(), What.MOWN), new Said(row, entry));
      noteMowing(new Said(row, entry));
    }
  }

  private void noteMowing(Said said) {
    if (said.entry().what() == What.MOWN) {
      mowings.computeIfAbsent(said.entry().day(), day -> new ArrayList<>()).add(said);
    }
  }

  /** An entry that tells of the same work on the same day. */
  Optional<Said> alike(LogSheet entry) {
    return Optional.ofNullable(standing.get(new Work(entry.day(), entry.what())));
  }

  /** A mowing of the same day beside which an entry cannot stand, whichever came first. */
  Optional<Said> contradicting(LogSheet entry) {
    return mowings.getOrDefault(entry.day(), List.of()).stream()
        .filter(said -> LogFit.contradicted(entry, List.of(said.entry())).isPresent())
        .findFirst();
  }
}
