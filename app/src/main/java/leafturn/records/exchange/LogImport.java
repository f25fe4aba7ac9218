package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.quantity.Units;
import leafturn.records.Choice;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.Ids;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.exchange.Arrivals.NewSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.What;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * Looks at a table of past log entries, of one lawn or of many. An entry is known by its id where
 * the table gives one, else by what it says: the same said twice in the table are two entries, and
 * those the book has already count. Only a mowing is not done twice alike on one day: of two rows
 * without ids one is too many.
 */
public final class LogImport {
  /** Stands for the day of rows while no column is taken for it. */
  private static final String ANY_DAY = "2000-01-01";

  private final BookReading book;
  private final TableLook look;
  private final Ask ask;
  private final Lawns lawns;
  private final Map<String, KnownLog> logs = new HashMap<>();
  private final Map<LogSheet, Integer> saidBefore = new HashMap<>();
  private final Map<LogSheet, Table.Row> firstRow = new HashMap<>();
  private final Set<String> ids = new HashSet<>();
  private final Set<String> idsInBook;
  private final List<NewSheet<?>> sheets = new ArrayList<>();

  private final LogHeights heights;
  private final Map<String, LocalDate> todays = new HashMap<>();

  private LogImport(BookReading book, TableLook look, Ask ask) {
    this.book = book;
    this.look = look;
    this.ask = ask;
    this.lawns = new Lawns(book);
    this.idsInBook = book.ids();
    this.heights = new LogHeights(book, look.remarks);
  }

  /**
   * What is asked.
   *
   * @param lawn id of the lawn that all entries belong to, or null when each row names its own
   * @param today which day it is; at each lawn it is that of its time zone
   * @param units of whoever asks
   */
  public record Ask(@Nullable String lawn, Today today, Units units) {}

  /** Looks at a table. */
  public static Preview look(BookReading book, Table table, Reading reading, Ask ask) {
    TableLook look = new TableLook(table, reading);
    LogImport logs = new LogImport(book, look, ask);
    if (logs.mayBeRead()) {
      table.rows().forEach(logs::row);
    } else {
      table.rows().forEach(logs::cells);
    }
    List<LogSheet> added =
        logs.sheets.stream().map(NewSheet::content).map(LogSheet.class::cast).toList();
    List<String> notes = new ArrayList<>(logs.heights.notes());
    notes.addAll(UnmownYears.of(book, added, logs::today));
    return look.preview(Arrivals.of(logs.sheets), notes);
  }

  private boolean mayBeRead() {
    if (ask.lawn == null) {
      return look.hasColumns("date", "what", "lawn");
    }
    if (lawns.today(ask.lawn, ask.today).isEmpty()) {
      look.faults.add("the lawn it is for is no longer in the book; choose another one.");
      return false;
    }
    return look.hasColumns("date", "what");
  }

  /** The day it is at a lawn of the book. */
  private LocalDate today(String of) {
    return todays.computeIfAbsent(of, id -> lawns.today(id, ask.today).orElseThrow());
  }

  /** What is wrong in a row while columns are missing that every row must have. */
  private void cells(Table.Row row) {
    RowDocument document = RowDocument.of(LogColumns.LOG, row, look.faults);
    document.put("lawn", Arrivals.idOf("no lawn"));
    if (!look.faults.has("date")) {
      document.put("day", ANY_DAY);
    }
    document.check(Kind.LOG::read);
  }

  private void row(Table.Row row) {
    RowDocument document = RowDocument.of(LogColumns.LOG, row, look.faults);
    String of = ask.lawn == null ? lawns.of(row, look.faults).map(Sheet::id).orElse("") : ask.lawn;
    document.put("lawn", of.isEmpty() ? Arrivals.idOf("no lawn") : of);
    LogSheet entry = document.read(Kind.LOG::read);
    String id = id(row);
    if (entry == null || of.isEmpty()) {
      return;
    }
    if (entry.day().isAfter(today(of))) {
      look.faults.add(
          row,
          "date",
          "%s has not come yet: at this lawn it is %s. Give the day it was done, or take the row out."
              .formatted(Dates.words(entry.day()), Dates.words(today(of))));
    } else if (id != null) {
      entry(row, id, entry);
    }
  }

  /** The id a row gives; empty where it gives none, null after a fault. */
  private @Nullable String id(Table.Row row) {
    String id = look.faults.text(row, LogColumns.ID);
    if (!id.isEmpty() && !Ids.isId(id)) {
      look.faults.add(
          row, LogColumns.ID, Faults.quoted(id) + " is no id of an entry; empty the cell.");
      return null;
    }
    if (!id.isEmpty() && !ids.add(id)) {
      look.faults.add(row, LogColumns.ID, "this id stands in a row above; remove one of the rows.");
      return null;
    }
    return id;
  }

  private void entry(Table.Row row, String givenId, LogSheet entry) {
    int times = saidBefore.merge(entry.bare(), 1, Integer::sum);
    Table.Row first = firstRow.putIfAbsent(entry.bare(), row);
    Optional<Sheet<?>> known = find(givenId);
    if (known.isPresent()) {
      known(row, known.get(), entry);
      return;
    }
    int counting = log(entry.lawn()).times(entry);
    if (times <= counting) {
      look.alreadyThere++;
      return;
    }
    // A row with an id of its own is another entry than the one that was withdrawn.
    if (givenId.isEmpty() && times <= counting + log(entry.lawn()).timesWithdrawn(entry)) {
      withdrawn(row, entry);
      return;
    }
    String id =
        givenId.isEmpty() ? Arrivals.idOf("log " + Kind.LOG.write(entry) + " " + times) : givenId;
    Optional<Sheet<?>> imported = find(id);
    if (imported.isPresent()) {
      conflict(row, imported.get());
      return;
    }
    if (fits(row, givenId.isEmpty() ? first : null, entry)) {
      remark(row, first, entry);
      heights.look(row, entry);
      log(entry.lawn()).add(look.table.place(row), entry);
      String where = ask.lawn == null ? lawns.title(entry.lawn()) + ": " : "";
      sheets.add(new NewSheet<>(Kind.LOG, id, entry, where + words(entry)));
    }
  }

  /**
   * False after a fault: a mowing that is doubled, or cuts of one day that cannot both be, which
   * the log's own page refuses too.
   *
   * @param same a row above that says the same where no id tells the two apart, or null
   */
  private boolean fits(Table.Row row, Table.@Nullable Row same, LogSheet entry) {
    if (same != null && entry.what() == What.MOWN) {
      look.faults.add(
          row,
          "it says the same as %s; remove one of them. A second mowing of a day differs in its time or heights, and two passes of one mowing are one row with yes under two_passes."
              .formatted(look.table.place(same)));
      return false;
    }
    Optional<KnownLog.Said> other = log(entry.lawn()).contradicting(entry);
    other.ifPresent(
        said ->
            look.faults.add(
                row,
                LogHeights.measuredIn(entry),
                "that day %s has this: %s. Both cannot be, whichever came first: give the height the grass stood at, or remove one of them."
                    .formatted(said.where(), words(said.entry()))));
    return other.isEmpty();
  }

  private String words(LogSheet entry) {
    return LogWords.of(entry, ask.units);
  }

  private Optional<Sheet<?>> find(String id) {
    return idsInBook.contains(id) ? book.find(id) : Optional.empty();
  }

  private void known(Table.Row row, Sheet<?> sheet, LogSheet entry) {
    if (sheet.content() instanceof LogSheet kept && kept.bare().equals(entry.bare())) {
      if (sheet.withdrawn()) {
        withdrawn(row, kept);
      } else {
        look.alreadyThere++;
      }
    } else {
      conflict(row, sheet);
    }
  }

  private void withdrawn(Table.Row row, LogSheet entry) {
    look.conflicts.add(
        row,
        "this entry is in the book but withdrawn, so it does not count: %s. It stays so; to bring it back, restore it on its own page."
            .formatted(words(entry)));
  }

  private void conflict(Table.Row row, Sheet<?> sheet) {
    String standing = sheet.withdrawn() ? "was changed and withdrawn since" : "says something else";
    String words = sheet.content() instanceof LogSheet kept ? ": " + words(kept) : "";
    look.conflicts.add(
        row, "this entry %s in the book%s. The book stays as it is.".formatted(standing, words));
  }

  private void remark(Table.Row row, Table.@Nullable Row first, LogSheet entry) {
    if (first != null) {
      look.remarks.add(
          row,
          "it says the same as %s; both count unless you remove one."
              .formatted(look.table.place(first)));
      return;
    }
    log(entry.lawn())
        .alike(entry)
        .ifPresent(
            other ->
                look.remarks.add(
                    row,
                    "that day %s has %s too: %s. Both count unless you remove one."
                        .formatted(
                            other.where(),
                            Choice.word(other.entry().what()),
                            words(other.entry()))));
  }

  private KnownLog log(String of) {
    return logs.computeIfAbsent(of, id -> new KnownLog(book.everOfLawn(Kind.LOG, id)));
  }
}
