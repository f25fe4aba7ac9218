package leafturn.records.round;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import leafturn.advice.call.LawnOnRound;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.soil.Soil;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.sheet.LawnSheet;

/** A lawn of the round in words. */
final class LawnWords {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final int SAME_YEAR_DAYS = 300;

  private LawnWords() {}

  static LawnOnRound.Description description(
      Lawn lawn, LawnSheet sheet, String soilStart, Units units) {
    return new LawnOnRound.Description(
        sheet.grasses(),
        lawn.ground().areaM2(),
        soil(lawn.ground().soil(), units),
        Objects.requireNonNullElse(sheet.habit(), ""),
        soilStart);
  }

  private static String soil(Soil soil, Units units) {
    double heldFraction = soil.water().fieldCapacity() - soil.water().wiltingPoint();
    String held =
        units == Units.US
            ? String.format(Locale.ROOT, "%.1f in of water for plants in a foot", 12 * heldFraction)
            : String.format(
                Locale.ROOT, "%.0f mm of water for plants in a metre", 1000 * heldFraction);
    return "holds %s, %s %% organic matter"
        .formatted(held, DisplayNumber.plain(hundredths(soil.test().organicMatterPercent())));
  }

  private static double hundredths(double value) {
    return Math.round(100 * value) / 100.0;
  }

  /** The last entry up to a day in words; empty when there is none. */
  static String lastEntry(List<LogEntry> log, LocalDate day, Units units) {
    LogEntry last = null;
    for (LogEntry entry : log) {
      if (!entry.day().isAfter(day) && (last == null || !entry.day().isBefore(last.day()))) {
        last = entry;
      }
    }
    return last == null ? "" : inWords(last, day, units);
  }

  private static String inWords(LogEntry entry, LocalDate today, Units units) {
    boolean recent = entry.day().isAfter(today.minusDays(SAME_YEAR_DAYS));
    String date = recent ? DATE.format(entry.day()) : Dates.words(entry.day());
    if (entry instanceof LogEntry.Mown mown) {
      return "Mown on " + date + ", " + units.told(fate(mown.returnedShare()));
    }
    if (entry instanceof LogEntry.Measured) {
      return "Measured on " + date;
    }
    return (entry instanceof LogEntry.Fed ? "Fed on " : "Watered on ") + date;
  }

  private static String fate(double returnedShare) {
    if (returnedShare == 1 || returnedShare == 0) {
      return returnedShare == 1 ? "returned" : "collected";
    }
    return String.format(Locale.ROOT, "%.0f %% returned", 100 * returnedShare);
  }
}
