package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.Choice;
import leafturn.records.Dates;
import leafturn.records.Numbers;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import org.jspecify.annotations.Nullable;

/** An entry of a log in a line. */
final class LogWords {
  private LogWords() {}

  static String of(LogSheet entry) {
    List<String> parts = new ArrayList<>();
    parts.add(Dates.words(entry.day()) + " " + Choice.word(entry.what()));
    add(parts, entry.done());
    if (entry.note() != null) {
      parts.add(entry.note());
    }
    return String.join(", ", parts);
  }

  private static void add(List<String> parts, Done done) {
    if (done instanceof Done.Mown mown) {
      add(parts, mown.heightBeforeMm(), "from %s mm");
      add(parts, mown.heightAfterMm(), "to %s mm");
      parts.add(clippings(mown.returnedShare()));
    } else if (done instanceof Done.Fed fed) {
      add(parts, fed.fastNGPerM2(), "fast N %s g/m²");
      add(parts, fed.slowNGPerM2(), "slow N %s g/m²");
      add(parts, fed.pGPerM2(), "P %s g/m²");
      add(parts, fed.kGPerM2(), "K %s g/m²");
    } else if (done instanceof Done.Watered watered) {
      add(parts, watered.waterMm(), "%s mm");
    } else if (done instanceof Done.Treated treated) {
      parts.add(treated.product());
    } else if (done instanceof Done.Observed seen) {
      parts.add(seen.things().stream().map(Choice::word).collect(Collectors.joining(", ")));
      add(parts, seen.heightMm(), "%s mm high");
    }
    parts.removeIf(String::isEmpty);
  }

  private static String clippings(double returnedShare) {
    if (returnedShare == 1) {
      return "returned";
    }
    return returnedShare == 0 ? "collected" : Numbers.plain(100 * returnedShare) + " % returned";
  }

  private static void add(List<String> parts, @Nullable Double value, String words) {
    if (value != null) {
      parts.add(words.formatted(Numbers.plain(value)));
    }
  }
}
