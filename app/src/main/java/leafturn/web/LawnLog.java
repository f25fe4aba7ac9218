package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Analyte;
import leafturn.records.sheet.Determination;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Readings;
import leafturn.records.sheet.SoilTestSheet;
import leafturn.records.sheet.SoilUnit;
import leafturn.records.sheet.VisitSheet;
import leafturn.reports.DayWords;
import leafturn.reports.LogEntryWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/**
 * What people have entered about a lawn.
 *
 * @param latest the latest entries of its log, the newest first
 * @param earlier how many entries there are before these
 * @param thatch the latest measurement of its thatch in words; empty without one
 * @param soilTest the latest soil test in words; empty without one
 * @param visit the height measured on the latest visit, in words; empty without one
 */
public record LawnLog(
    List<Entry> latest, int earlier, String thatch, String soilTest, String visit) {
  private static final int SHOWN = 12;

  /**
   * One entry.
   *
   * @param id of its sheet
   * @param day when it was done
   * @param headline what was done
   * @param details what else it tells
   * @param note what was remembered; may be empty
   * @param photographs ids of its photographs
   * @param by who wrote it last
   * @param changed true when it was corrected
   * @param withdrawn true when it no longer counts
   */
  public record Entry(
      String id,
      String day,
      String headline,
      List<String> details,
      String note,
      List<String> photographs,
      String by,
      boolean changed,
      boolean withdrawn) {}

  public LawnLog {
    latest = List.copyOf(latest);
  }

  /** Whether nothing was entered yet. */
  public boolean empty() {
    return latest.isEmpty();
  }

  /**
   * Reads what the book holds of a lawn.
   *
   * @param all true for the whole log, false for its latest entries
   */
  static LawnLog of(BookReading reading, String lawn, Visitor visitor, boolean all) {
    Units units = visitor.person().units();
    List<Sheet<LogSheet>> log = reading.everOfLawn(Kind.LOG, lawn);
    int first = all ? 0 : Math.max(0, log.size() - SHOWN);
    List<Entry> latest = new ArrayList<>();
    for (int i = log.size() - 1; i >= first; i--) {
      latest.add(entry(log.get(i), units));
    }
    return new LawnLog(
        latest,
        first,
        thatch(reading, lawn, units),
        last(reading.ofLawn(Kind.SOIL_TEST, lawn)).map(LawnLog::soilTest).orElse(""),
        last(reading.ofLawn(Kind.VISIT, lawn)).map(sheet -> visit(sheet, units)).orElse(""));
  }

  private static Entry entry(Sheet<LogSheet> sheet, Units units) {
    LogSheet entry = sheet.content();
    return new Entry(
        sheet.id(),
        DayWords.dayAndYear(entry.day()),
        LogEntryWords.headline(entry, units),
        LogEntryWords.details(entry, units),
        entry.note() == null ? "" : entry.note(),
        entry.photographs(),
        sheet.writtenBy(),
        sheet.version() > 1 && !sheet.withdrawn(),
        sheet.withdrawn());
  }

  private static <T> Optional<T> last(List<T> sheets) {
    return sheets.isEmpty() ? Optional.empty() : Optional.of(sheets.get(sheets.size() - 1));
  }

  /** The newest plugs, of a thatch measurement or of a visit. */
  private static String thatch(BookReading reading, String lawn, Units units) {
    Stream<Plugs> measured =
        reading.ofLawn(Kind.THATCH, lawn).stream()
            .map(Sheet::content)
            .map(sheet -> new Plugs(sheet.day(), sheet.plugsMm()));
    Stream<Plugs> visited =
        reading.ofLawn(Kind.VISIT, lawn).stream()
            .map(Sheet::content)
            .map(visit -> new Plugs(visit.day(), visit.thatchPlugsMm()));
    return Stream.concat(visited, measured)
        .filter(plugs -> !plugs.mm().isEmpty())
        .reduce((one, other) -> other.day().isBefore(one.day()) ? one : other)
        .map(plugs -> plugs.words(units))
        .orElse("");
  }

  /** Plugs whose thatch was measured on a day. */
  private record Plugs(LocalDate day, List<Double> mm) {
    String words(Units units) {
      return "%s on %s, the mean of %d %s"
          .formatted(
              new UnitWords(units).depth(Readings.mean(mm).orElse(0)),
              DayWords.dayAndYear(day),
              mm.size(),
              mm.size() == 1 ? "plug" : "plugs");
    }
  }

  private static String visit(Sheet<VisitSheet> sheet, Units units) {
    VisitSheet visit = sheet.content();
    return visit.heightsMm().isEmpty()
        ? ""
        : "%s on %s, the mean of %d"
            .formatted(
                new UnitWords(units).height(Readings.mean(visit.heightsMm()).orElse(0)),
                DayWords.dayAndYear(visit.day()),
                visit.heightsMm().size());
  }

  private static String soilTest(Sheet<SoilTestSheet> sheet) {
    SoilTestSheet test = sheet.content();
    List<String> words = new ArrayList<>();
    test.determinations().forEach(found -> words.add(determination(found)));
    words.add(test.laboratory() + " on " + DayWords.dayAndYear(test.day()));
    if (test.extractant() != null) {
      words.add(test.extractant());
    }
    return String.join(", ", words);
  }

  /** "pH 6.3", "phosphorus <50 mg/kg as P2O5". */
  private static String determination(Determination found) {
    Double value = found.value();
    String figure =
        value == null
            ? "<" + QuantityWords.plain(Objects.requireNonNullElse(found.detectionLimit(), 0.0))
            : QuantityWords.plain(value);
    String unit = found.unit() == SoilUnit.PH ? "" : QuantityWords.THIN + found.unit().word();
    String oxide = found.asOxide() ? " as " + oxide(found.analyte()) : "";
    return Choice.word(found.analyte()) + " " + figure + unit + oxide;
  }

  private static String oxide(Analyte analyte) {
    return analyte == Analyte.PHOSPHORUS ? "P2O5" : "K2O";
  }
}
