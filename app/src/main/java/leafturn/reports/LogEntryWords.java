package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.IngredientGroup;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Sight;
import org.jspecify.annotations.Nullable;

/** An entry of a log in words. */
public final class LogEntryWords {
  private final Units units;
  private final List<String> details = new ArrayList<>();

  private LogEntryWords(Units units) {
    this.units = units;
  }

  /** What was done, in a few words: "Mown, returned". */
  public static String headline(LogSheet entry, Units units) {
    String what = Choice.word(entry.what());
    String word = Character.toUpperCase(what.charAt(0)) + what.substring(1);
    if (entry.done() instanceof Done.Mown mown) {
      return word + ", " + ClippingsFate.words(mown.returnedShare(), units);
    }
    return entry.done() instanceof Done.Observed seen ? seen(word, seen) : word;
  }

  /** "Observed: wet leaves; no frost on the ground". */
  private static String seen(String word, Done.Observed seen) {
    String looked =
        Stream.concat(
                seen.things().stream().map(Sight::words),
                seen.notThere().stream().map(sight -> "no " + sight.words()))
            .collect(Collectors.joining(", "));
    return looked.isEmpty() ? word : word + ": " + looked;
  }

  /** All it tells but its note: "Mown, returned, to 64 mm". */
  public static String line(LogSheet entry, Units units) {
    return Stream.concat(Stream.of(headline(entry, units)), details(entry, units).stream())
        .collect(Collectors.joining(", "));
  }

  /** What else the entry tells, each with its unit; empty where that is all. */
  public static List<String> details(LogSheet entry, Units units) {
    LogEntryWords words = new LogEntryWords(units);
    Done done = entry.done();
    if (done instanceof Done.Mown mown) {
      words.mown(mown);
    } else if (done instanceof Done.Fed fed) {
      words.fed(fed);
    } else if (done instanceof Done.Watered watered) {
      words.quantity("", watered.waterMm(), Measure.WATER);
    } else if (done instanceof Done.Treated treated) {
      words.treated(treated);
    } else if (done instanceof Done.Seeded seeded) {
      words.text("", seeded.seed());
      words.quantity("", seeded.gPerM2(), Measure.MASS_PER_AREA);
    } else if (done instanceof Done.Worked worked) {
      words.quantity("depth ", worked.depthMm(), Measure.HEIGHT);
    } else if (done instanceof Done.Limed limed) {
      words.quantity("", limed.gPerM2(), Measure.MASS_PER_AREA);
      words.text("", limed.product());
    } else if (done instanceof Done.Observed seen) {
      words.observed(seen);
    }
    return List.copyOf(words.details);
  }

  private void mown(Done.Mown mown) {
    String from = words("from ", mown.heightBeforeMm(), Measure.HEIGHT);
    String to = words("to ", mown.heightAfterMm(), Measure.HEIGHT);
    text("", (from + " " + to).isBlank() ? null : (from + " " + to).strip());
    if (mown.twoPasses()) {
      details.add("in two passes");
    }
    number(mown.bags(), mown.bags() != null && mown.bags() == 1 ? "bag" : "bags");
    quantity("", mown.weightKg(), Measure.WEIGHT);
    text("to ", mown.wentTo());
    number(mown.minutes(), "minutes");
  }

  private void fed(Done.Fed fed) {
    nutrient("quick N", fed.fastNGPerM2());
    nutrient("slow N", fed.slowNGPerM2());
    nutrient("P", fed.pGPerM2());
    nutrient("K", fed.kGPerM2());
    text("", fed.product());
    if (fed.wateredIn() != null) {
      details.add(fed.wateredIn() ? "watered in" : "not watered in yet");
    }
    text("", fed.feedForm() == null ? null : Choice.word(fed.feedForm()));
    quantity("to be washed in with ", fed.waterInMm(), Measure.WATER);
  }

  private void nutrient(String name, @Nullable Double gPerM2) {
    if (gPerM2 != null && gPerM2 > 0) {
      quantity(name + " ", gPerM2, Measure.MASS_PER_AREA);
    }
  }

  private void treated(Done.Treated treated) {
    details.add(treated.product());
    details.add(Choice.word(treated.productKind()));
    if (treated.ingredientGroup() == IngredientGroup.PYRIDINE_ACID) {
      details.add("a pyridine acid, which outlasts composting");
    }
    if (treated.labelSaysNone()) {
      details.add("the label says nothing of clippings");
    } else if (treated.neverUse()) {
      details.add("by the label clippings are never to be used elsewhere");
    } else {
      number(treated.clippingsIntervalDays(), "days until clippings may be used, by the label");
      number(treated.mowingsBeforeUse(), "mowings until clippings may be used, by the label");
    }
    number(treated.waitBeforeMowingDays(), "days before mowing, by the label");
  }

  private void observed(Done.Observed seen) {
    if (seen.leafCoverFraction() != null) {
      details.add(
          "leaves hide " + QuantityWords.percent(seen.leafCoverFraction()) + " of the turf");
    }
    quantity("stands at ", seen.heightMm(), Measure.HEIGHT);
  }

  private void quantity(String before, @Nullable Double kept, Measure measure) {
    if (kept != null) {
      details.add(words(before, kept, measure));
    }
  }

  private String words(String before, @Nullable Double kept, Measure measure) {
    return kept == null
        ? ""
        : before
            + QuantityWords.plain(measure.shown(kept, units))
            + QuantityWords.THIN
            + measure.unit(units).symbol();
  }

  private void number(@Nullable Number number, String unit) {
    if (number != null) {
      details.add(QuantityWords.plain(number.doubleValue()) + " " + unit);
    }
  }

  private void text(String before, @Nullable String text) {
    if (text != null) {
      details.add(before + text);
    }
  }
}
