package leafturn.records.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Numbers;
import leafturn.records.book.BookReading;
import leafturn.records.book.ProgrammeInForce;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.ProgrammeSheet;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * Heights of a table beside those at which its lawns are kept: inches read as millimetres, and cuts
 * that the lawn or its deck hardly knows.
 */
final class LogHeights {
  private static final String BEFORE = "height_before_mm";
  private static final String AFTER = "height_after_mm";
  private static final double MM_PER_IN = 25.4;

  /**
   * Cut at less than half the usual height, or at more than twice of it, is worth a look; common
   * practice, no source.
   */
  private static final double FAR = 2;

  /** A wheel setting and a measured height differ by as much, mm; common practice, no source. */
  private static final double SETTINGS_DIFFER_MM = 10;

  private final BookReading book;
  private final Findings remarks;
  private final Map<String, List<Sheet<ProgrammeSheet>>> programmes = new HashMap<>();
  private int inInches;

  LogHeights(BookReading book, Findings remarks) {
    this.book = book;
    this.remarks = remarks;
  }

  /** The column of the height that a mowing measured, or else of the one it left. */
  static String measuredIn(LogSheet entry) {
    boolean measured = entry.done() instanceof Done.Mown mown && mown.heightBeforeMm() != null;
    return measured ? BEFORE : AFTER;
  }

  /** Looks at the heights of an entry that would be added. */
  void look(Table.Row row, LogSheet entry) {
    ProgrammeSheet programme =
        ProgrammeInForce.on(
            entry.day(),
            programmes.computeIfAbsent(entry.lawn(), id -> book.ofLawn(Kind.PROGRAMME, id)));
    Double kept = programme == null ? null : programme.mowing().heightMm(entry.day().getMonth());
    if (programme == null || kept == null) {
      return;
    }
    if (entry.done() instanceof Done.Mown mown) {
      boolean inches = inches(row, BEFORE, mown.heightBeforeMm(), kept);
      inches |= inches(row, AFTER, mown.heightAfterMm(), kept);
      if (!inches && mown.heightAfterMm() != null) {
        cut(row, mown.heightAfterMm(), kept, programme.deckHeightsMm());
      }
    } else if (entry.done() instanceof Done.Observed seen) {
      inches(row, "height_mm", seen.heightMm(), kept);
    }
  }

  private boolean inches(Table.Row row, String column, @Nullable Double heightMm, double keptMm) {
    if (heightMm == null) {
      return false;
    }
    boolean likely =
        heightMm * FAR < keptMm
            && heightMm * MM_PER_IN * FAR > keptMm
            && heightMm * MM_PER_IN < keptMm * FAR * FAR;
    if (likely) {
      inInches++;
      remarks.add(
          row,
          column,
          "%s mm looks like %s in: this lawn is kept at %s mm, which is %s in."
              .formatted(
                  Numbers.plain(heightMm),
                  Numbers.plain(heightMm),
                  Numbers.plain(keptMm),
                  Measure.HEIGHT.typed(keptMm, Units.US)));
    }
    return likely;
  }

  private void cut(Table.Row row, double afterMm, double keptMm, List<Double> deckMm) {
    double lowest = deckMm.stream().min(Double::compare).orElse(0.0);
    double highest = deckMm.stream().max(Double::compare).orElse(Double.MAX_VALUE);
    Units units = remarks.reading().unitsOf(AFTER);
    String after = Measure.HEIGHT.read(afterMm, units);
    if (afterMm < lowest - SETTINGS_DIFFER_MM || afterMm > highest + SETTINGS_DIFFER_MM) {
      remarks.add(
          row,
          AFTER,
          "%s is no height of this mower, whose deck goes from %s to %s; look whether it is right."
              .formatted(
                  after, Measure.HEIGHT.typed(lowest, units), Measure.HEIGHT.told(highest, units)));
    } else if (afterMm * FAR < keptMm || afterMm > keptMm * FAR) {
      remarks.add(
          row,
          AFTER,
          "%s is far from the %s at which this lawn is kept; look whether it is right."
              .formatted(after, Measure.HEIGHT.read(keptMm, units)));
    }
  }

  /** What is to be said of the table as a whole. */
  List<String> notes() {
    if (inInches == 0) {
      return List.of();
    }
    String which =
        inInches == 1
            ? "One of its heights looks like inches read as millimetres: choose inches for its column"
            : "%d of its heights look like inches read as millimetres: choose inches for their columns"
                .formatted(inInches);
    return List.of(which + " below, before anything is imported.");
  }
}
