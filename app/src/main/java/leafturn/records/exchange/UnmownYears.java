package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import leafturn.records.Dates;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;

/** Years in which a log, with what is to be added, tells no mowing: the model lets them grow. */
final class UnmownYears {
  private UnmownYears() {}

  /**
   * A sentence for each gap of more than a year between two mowings of a lawn, or between its last
   * one and today.
   *
   * @param today the day it is at a lawn, by its id
   */
  static List<String> of(
      BookReading book, List<LogSheet> added, Function<String, LocalDate> today) {
    Map<String, TreeSet<LocalDate>> byLawn = new TreeMap<>();
    added.forEach(entry -> note(byLawn, entry));
    List<String> sentences = new ArrayList<>();
    for (Map.Entry<String, TreeSet<LocalDate>> lawn : byLawn.entrySet()) {
      book.ofLawn(Kind.LOG, lawn.getKey()).forEach(sheet -> note(byLawn, sheet.content()));
      String name =
          book.find(Kind.LAWN, lawn.getKey())
              .map(Sheet::content)
              .map(content -> content.name())
              .orElse("this lawn");
      gaps(name, lawn.getValue(), sentences);
      upTo(today.apply(lawn.getKey()), name, lawn.getValue().last()).ifPresent(sentences::add);
    }
    return sentences;
  }

  private static void note(Map<String, TreeSet<LocalDate>> byLawn, LogSheet entry) {
    if (entry.what() == What.MOWN) {
      byLawn.computeIfAbsent(entry.lawn(), lawn -> new TreeSet<>()).add(entry.day());
    }
  }

  private static void gaps(String lawn, TreeSet<LocalDate> days, List<String> sentences) {
    LocalDate before = days.first();
    for (LocalDate day : days) {
      if (isLong(before, day)) {
        sentences.add(
            ("Between %s and %s the log of %s tells no mowing, so the model lets its grass stand"
                    + " all that time; add what was mown then, or leave out what is older.")
                .formatted(Dates.words(before), Dates.words(day), lawn));
      }
      before = day;
    }
  }

  private static Optional<String> upTo(LocalDate today, String lawn, LocalDate last) {
    return isLong(last, today)
        ? Optional.of(
            ("Since %s the log of %s tells no mowing, so the model lets its grass stand up to"
                    + " today; add what was mown since, or measure the height.")
                .formatted(Dates.words(last), lawn))
        : Optional.empty();
  }

  private static boolean isLong(LocalDate before, LocalDate after) {
    return before.plusYears(1).isBefore(after);
  }
}
