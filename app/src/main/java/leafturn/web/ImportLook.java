package leafturn.web;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import leafturn.records.WeatherFile;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookTitle;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.exchange.LogImport;
import leafturn.records.exchange.Preview;
import leafturn.records.exchange.PropertyImport;
import leafturn.records.exchange.Reading;
import leafturn.records.exchange.ReadingImport;
import leafturn.records.exchange.WeatherImport;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import leafturn.records.trial.TrialClock;
import leafturn.records.trial.TrialGrounds;
import leafturn.records.trial.TrialImport;
import leafturn.records.trial.TrialShelf;

/** Looks at a kept file with the eyes of its kind. */
final class ImportLook {
  private static final int LONGEST_FIRST_LINE = 400;

  private final KeptFile file;
  private final Clock clock;
  private final TrialGrounds grounds;
  private final Units units;

  /**
   * @param clock tells the day on which it is looked at; its zone is that of a book without
   *     properties
   * @param grounds lays out the trial that readings belong to
   * @param units of whoever looks
   */
  ImportLook(KeptFile file, Clock clock, TrialGrounds grounds, Units units) {
    this.file = file;
    this.clock = clock;
    this.grounds = grounds;
    this.units = units;
  }

  /**
   * What importing the file would do.
   *
   * @throws InputException when the file as a whole cannot be read, or what it is for takes no more
   */
  Preview preview(BookReading book) {
    if (file.kind() == ImportKind.WEATHER && isOfTheArchive()) {
      SourceText text = SourceText.of(file.name(), file.bytes(), TableFile.LIMIT_BYTES);
      return WeatherImport.look(book, text, weather());
    }
    Today today = Today.of(BookTitle.of(book), clock);
    LocalDate here = today.in(clock.getZone());
    if (file.kind() == ImportKind.TRIAL) {
      return TrialImport.look(book, grounds, file.name(), file.bytes(), here);
    }
    Table table = TableFile.read(file.name(), file.bytes(), file.sheet());
    Map<Integer, Reading.Pick> picks = file.picks();
    Reading reading =
        picks == null
            ? Reading.byHeadings(table, file.kind().columns())
            : new Reading(file.kind().columns(), within(picks, table));
    return switch (file.kind()) {
      case LOG -> LogImport.look(book, table, reading, log(today));
      case PROPERTIES -> PropertyImport.look(book, table, reading, here.withDayOfYear(1));
      case READINGS -> ReadingImport.look(book, table, reading, readings(book));
      case WEATHER -> WeatherImport.look(book, table, reading, weather());
      case TRIAL -> throw new IllegalStateException("a package of a trial is no table");
    };
  }

  private WeatherImport.Ask weather() {
    return new WeatherImport.Ask(
        file.target(), file.replacing(), units, Today.begunAnywhere(clock));
  }

  private LogImport.Ask log(Today today) {
    return new LogImport.Ask(file.target().isEmpty() ? null : file.target(), today, units);
  }

  private ReadingImport.Ask readings(BookReading book) {
    Sheet<TrialSheet> trial =
        book.find(Kind.TRIAL, file.target())
            .filter(found -> !found.withdrawn())
            .orElseThrow(() -> new InputException("Choose the trial that the readings belong to."));
    String closed = TrialShelf.closed(trial.content());
    if (!closed.isEmpty()) {
      throw new InputException(closed);
    }
    String laboratory = file.laboratory();
    return new ReadingImport.Ask(
        trial.id(),
        grounds.of(trial.content()),
        laboratory == null ? null : book.find(Kind.LABORATORY, laboratory).orElse(null),
        Sha256.of(file.bytes()),
        new TrialClock(book, clock).today(trial.content()));
  }

  private static Map<Integer, Reading.Pick> within(Map<Integer, Reading.Pick> picks, Table table) {
    return picks.entrySet().stream()
        .filter(pick -> pick.getKey() < table.headings().size())
        .collect(java.util.stream.Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /** The forms of the archive have no header: their first line tells. */
  private boolean isOfTheArchive() {
    byte[] bytes = file.bytes();
    String beginning =
        new String(
            bytes, 0, Math.min(bytes.length, LONGEST_FIRST_LINE), StandardCharsets.ISO_8859_1);
    return WeatherFile.isStationForm(new SourceText(file.name(), beginning));
  }
}
