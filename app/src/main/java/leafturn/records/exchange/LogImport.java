package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.records.Choice;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.Ids;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Arrivals.NewSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.LogSheet;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/**
 * Looks at a table of past log entries, of one lawn or of many. An entry is known by its id where
 * the table gives one, else by what it says: the same said twice in the table are two entries, and
 * those the book has already count.
 */
public final class LogImport {
  private final BookReading book;
  private final TableLook look;
  private final @Nullable String lawn;
  private final Lawns lawns;
  private final Map<String, KnownLog> logs = new HashMap<>();
  private final Map<LogSheet, Integer> saidBefore = new HashMap<>();
  private final Map<LogSheet, Table.Row> firstRow = new HashMap<>();
  private final Set<String> ids = new HashSet<>();
  private final Set<String> idsInBook;
  private final List<NewSheet<?>> sheets = new ArrayList<>();

  private final LogHeights heights;
  private final LocalDate today;

  private LogImport(BookReading book, TableLook look, @Nullable String lawn, LocalDate today) {
    this.book = book;
    this.look = look;
    this.lawn = lawn;
    this.lawns = new Lawns(book);
    this.idsInBook = book.ids();
    this.heights = new LogHeights(book, look.remarks);
    this.today = today;
  }

  /**
   * Looks at a table.
   *
   * @param lawn id of the lawn that all entries belong to, or null when each row names its own
   * @param today the day on which it is looked at
   */
  public static Preview look(
      BookReading book, Table table, Reading reading, @Nullable String lawn, LocalDate today) {
    TableLook look = new TableLook(table, reading);
    LogImport logs = new LogImport(book, look, lawn, today);
    if (lawn == null ? look.hasColumns("date", "what", "lawn") : look.hasColumns("date", "what")) {
      table.rows().forEach(logs::row);
    }
    List<LogSheet> added =
        logs.sheets.stream().map(NewSheet::content).map(LogSheet.class::cast).toList();
    List<String> notes = new ArrayList<>(logs.heights.notes());
    notes.addAll(UnmownYears.of(book, added, today));
    return look.preview(Arrivals.of(logs.sheets), notes);
  }

  private void row(Table.Row row) {
    RowDocument document = RowDocument.of(LogColumns.LOG, row, look.faults);
    Optional<Sheet<LawnSheet>> named = lawn == null ? lawns.of(row, look.faults) : Optional.empty();
    String of = lawn == null ? named.map(Sheet::id).orElse("") : lawn;
    document.put("lawn", of.isEmpty() ? Arrivals.idOf("no lawn") : of);
    LogSheet entry = document.read(Kind.LOG::read);
    String id = id(row);
    if (entry != null && entry.day().isAfter(today)) {
      look.faults.add(
          row,
          "date",
          "%s has not come yet: today is %s. Give the day it was done, or take the row out."
              .formatted(Dates.words(entry.day()), Dates.words(today)));
    } else if (entry != null && !of.isEmpty() && id != null) {
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
    int times = saidBefore.merge(KnownLog.bare(entry), 1, Integer::sum);
    Table.Row first = firstRow.putIfAbsent(KnownLog.bare(entry), row);
    Optional<Sheet<?>> known = find(givenId);
    if (known.isPresent()) {
      known(row, known.get(), entry);
      return;
    }
    if (times <= log(entry.lawn()).times(entry)) {
      look.alreadyThere++;
      return;
    }
    String id =
        givenId.isEmpty() ? Arrivals.idOf("log " + Kind.LOG.write(entry) + " " + times) : givenId;
    Optional<Sheet<?>> imported = find(id);
    if (imported.isPresent()) {
      conflict(row, imported.get());
      return;
    }
    remark(row, first, entry);
    heights.look(row, entry);
    sheets.add(new NewSheet<>(Kind.LOG, id, entry, LogWords.of(entry)));
  }

  private Optional<Sheet<?>> find(String id) {
    return idsInBook.contains(id) ? book.find(id) : Optional.empty();
  }

  private void known(Table.Row row, Sheet<?> sheet, LogSheet entry) {
    if (sheet.content() instanceof LogSheet kept && KnownLog.saysTheSame(kept, entry)) {
      look.alreadyThere++;
    } else {
      conflict(row, sheet);
    }
  }

  private void conflict(Table.Row row, Sheet<?> sheet) {
    String standing = sheet.withdrawn() ? "was withdrawn" : "says something else";
    String words = sheet.content() instanceof LogSheet kept ? ": " + LogWords.of(kept) : "";
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
                    "that day the book has %s too: %s. Both count unless you remove one."
                        .formatted(Choice.word(other.what()), LogWords.of(other))));
  }

  private KnownLog log(String of) {
    return logs.computeIfAbsent(of, id -> new KnownLog(book.everOfLawn(Kind.LOG, id)));
  }
}
