package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.Dates;
import leafturn.records.Numbers;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import org.jspecify.annotations.Nullable;

/** An entry of a log in a line, in the units of whoever reads it. */
final class LogWords {
  private final Units units;
  private final List<String> parts = new ArrayList<>();

  private LogWords(Units units) {
    this.units = units;
  }

  static String of(LogSheet entry, Units units) {
    LogWords words = new LogWords(units);
    String time = entry.time() == null ? "" : " at " + entry.time();
    words.parts.add(Dates.words(entry.day()) + time + " " + Choice.word(entry.what()));
    words.add(entry.done());
    if (entry.note() != null) {
      words.parts.add(entry.note());
    }
    return String.join(", ", words.parts);
  }

  private void add(Done done) {
    if (done instanceof Done.Mown mown) {
      add("from ", mown.heightBeforeMm(), Measure.HEIGHT);
      add("to ", mown.heightAfterMm(), Measure.HEIGHT);
      parts.add(units.told(clippings(mown.returnedShare())));
      if (mown.bags() != null) {
        parts.add(Numbers.plain(mown.bags()) + (mown.bags() == 1 ? " bag" : " bags"));
      }
      add("", mown.weightKg(), Measure.WEIGHT);
      if (mown.minutes() != null) {
        parts.add(Numbers.plain(mown.minutes()) + (mown.minutes() == 1 ? " minute" : " minutes"));
      }
    } else if (done instanceof Done.Fed fed) {
      add("fast N ", fed.fastNGPerM2(), Measure.MASS_PER_AREA);
      add("slow N ", fed.slowNGPerM2(), Measure.MASS_PER_AREA);
      add("P ", fed.pGPerM2(), Measure.MASS_PER_AREA);
      add("K ", fed.kGPerM2(), Measure.MASS_PER_AREA);
    } else if (done instanceof Done.Watered watered) {
      add("", watered.waterMm(), Measure.WATER);
    } else if (done instanceof Done.Treated treated) {
      parts.add(treated.product());
    } else if (done instanceof Done.Observed seen) {
      add(seen);
    }
    parts.removeIf(String::isEmpty);
  }

  private void add(Done.Observed seen) {
    parts.add(words(seen.things()));
    if (!seen.notThere().isEmpty()) {
      parts.add("not there: " + words(seen.notThere()));
    }
    if (seen.leafCoverFraction() != null) {
      parts.add("leaves on " + Numbers.plain(100 * seen.leafCoverFraction()) + " % of the turf");
    }
    add("grass at ", seen.heightMm(), Measure.HEIGHT);
  }

  private static String words(List<Sight> sights) {
    return sights.stream().map(Choice::word).collect(Collectors.joining(", "));
  }

  private static String clippings(double returnedShare) {
    if (returnedShare == 1) {
      return "returned";
    }
    return returnedShare == 0 ? "collected" : Numbers.plain(100 * returnedShare) + " % returned";
  }

  private void add(String before, @Nullable Double value, Measure measure) {
    if (value != null) {
      parts.add(before + measure.read(value, units));
    }
  }
}
