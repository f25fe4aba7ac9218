package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.records.Dates;
import leafturn.records.DecimalComma;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Arrivals.NewSheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LaboratorySheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.table.Table;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.LaboratoryDuplicates;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.ReadingKeys;
import org.jspecify.annotations.Nullable;

/**
 * Looks at a table of a trial's readings: one row a reading, or a laboratory's table with one row a
 * sample. A reading that the book has already is not added twice, whatever file brings it.
 */
public final class ReadingImport {
  private final String trial;
  private final @Nullable Sheet<LaboratorySheet> laboratory;
  private final TrialGround ground;
  private final LocalDate today;
  private final TableLook look;
  private final Map<List<Object>, leafturn.trials.observation.Reading> known = new HashMap<>();
  private final Map<List<Object>, Table.Row> rows = new HashMap<>();
  private final List<leafturn.trials.observation.Reading> arrived = new ArrayList<>();
  private final DecimalComma decimalComma;
  private final ReadableValues values;
  private final List<String> notes = new ArrayList<>();

  /**
   * @param ask of the book, or null for a trial that is in none
   */
  private ReadingImport(@Nullable Ask ask, TrialGround ground, TableLook look) {
    this.trial = ask == null ? "" : ask.trial;
    this.laboratory = ask == null ? null : ask.laboratory;
    this.today = ask == null ? LocalDate.MAX : ask.today;
    this.ground = ground;
    this.look = look;
    this.decimalComma = new DecimalComma(look.table.decimalCommas());
    this.values = new ReadableValues(look, ground);
  }

  /**
   * Looks at a table.
   *
   * @param reading what its columns are taken for, where there is no mapping
   * @param ask which trial's readings, and whose mapping
   */
  public static Preview look(BookReading book, Table table, Reading reading, Ask ask) {
    LaboratoryTable mapped =
        ask.laboratory == null ? null : LaboratoryTable.of(table, ask.laboratory.content());
    TableLook look = new TableLook(table, mapped == null ? reading : mapped.reading());
    ReadingImport readings = new ReadingImport(ask, ask.ground, look);
    for (Sheet<TrialReadingsSheet> sheet : book.ofTrial(Kind.TRIAL_READINGS, ask.trial)) {
      sheet.content().readings().forEach(readings::know);
      if (ask.fileHash.equals(sheet.content().fileHash())) {
        readings.noteAgain(sheet);
      }
    }
    if (mapped != null) {
      mapped.check(look.faults, ask.ground);
      table.rows().stream()
          .filter(readings.values::isText)
          .forEach(row -> mapped.readings(row, look.faults, ask.ground, readings::take));
    } else if (look.hasColumns(ReadingColumns.OUTCOME, ReadingColumns.VALUE)) {
      table.rows().stream().filter(readings.values::isText).forEach(readings::row);
    }
    return look.preview(
        readings.arrivals(book, table.file(), ask.fileHash),
        readings.notes.stream().distinct().toList());
  }

  /**
   * The readings of a table of one row a reading, for a trial that is in no book.
   *
   * @throws InputException with every fault of the table
   */
  public static List<leafturn.trials.observation.Reading> read(Table table, TrialGround ground) {
    TableLook look = new TableLook(table, Reading.byHeadings(table, ReadingColumns.ALL));
    ReadingImport readings = new ReadingImport(null, ground, look);
    if (look.hasColumns(ReadingColumns.OUTCOME, ReadingColumns.VALUE)) {
      table.rows().stream().filter(readings.values::isText).forEach(readings::row);
    }
    look.faults.throwIfAny();
    return List.copyOf(readings.arrived);
  }

  /**
   * What is asked.
   *
   * @param trial id of the trial
   * @param ground the trial as it lies on the ground
   * @param laboratory whose mapping reads the table, or null for one row a reading
   * @param fileHash SHA-256 of the file
   * @param today the last day that can have readings
   */
  public record Ask(
      String trial,
      TrialGround ground,
      @Nullable Sheet<LaboratorySheet> laboratory,
      String fileHash,
      LocalDate today) {}

  private void know(leafturn.trials.observation.Reading reading) {
    known.put(ReadingKeys.of(reading), reading);
    values.know(reading);
  }

  private void noteAgain(Sheet<TrialReadingsSheet> sheet) {
    notes.add(
        "This file was imported before, by %s; what is in the book already stays as it is."
            .formatted(sheet.writtenBy()));
  }

  private void row(Table.Row row) {
    RowDocument document = RowDocument.of(ReadingColumns.READING, row, look.faults);
    TrialGround.Bag bag = bag(row);
    if (bag != null && !document.has(ReadingColumns.PLOT)) {
      document.put(ReadingColumns.PLOT, bag.plot());
    }
    if (bag != null && !document.has(ReadingColumns.DATE)) {
      document.put(ReadingColumns.DATE, bag.date().toString());
    }
    var read = document.read(TrialReadingsSheet::readOne);
    boolean known =
        read != null && (bag == null || !bag.disagrees(read.plot(), read.date(), row, look.faults));
    if (read != null && known) {
      take(row, ReadingColumns.VALUE, read);
    }
  }

  private TrialGround.@Nullable Bag bag(Table.Row row) {
    String code = look.faults.text(row, ReadingColumns.SAMPLE);
    return code.isEmpty() ? null : ground.bag(code);
  }

  /** Takes a reading into what arrives, where it fits the trial and is new. */
  private void take(Table.Row row, String column, leafturn.trials.observation.Reading given) {
    Column of = look.reading.column(column).orElseThrow();
    Outcome outcome = ground.outcome(given.outcome()).orElse(null);
    ObservedPlot plot = ground.plot(given.plot()).orElse(null);
    if (outcome == null) {
      Column named = look.reading.column(ReadingColumns.OUTCOME).orElse(of);
      look.faults.add(row, named, ground.noOutcome(given.outcome()));
    } else if (plot == null) {
      look.faults.add(row, LaboratoryTable.plotHeading(laboratory), ground.noPlot(given.plot()));
    } else if (given.date().isAfter(today)) {
      look.faults.add(row, Dates.notYet(given.date(), today));
    } else {
      String value = value(row, of, given.value());
      var reading = named(given, plot.code(), outcome.name(), value);
      if (!value.isEmpty() && values.isReadable(row, of, outcome, reading)) {
        tellUnplanned(row, of, reading.date());
        add(row, of, reading);
      }
    }
  }

  /** The value with a decimal point; empty after a fault. */
  private String value(Table.Row row, Column of, String given) {
    String wrong = new CellReader(look.table).decimalMarkFault(given);
    List<String> faults = new ArrayList<>();
    // Cells of a workbook that are numbers have a point whatever mark its texts have.
    String column = look.table.isSpreadsheet() ? look.table.place(row) : of.name();
    String value = decimalComma.withPoint(column, given, faults::add);
    if (wrong != null) {
      faults.add(wrong);
    }
    faults.forEach(fault -> look.faults.add(row, of, fault));
    return faults.isEmpty() ? value : "";
  }

  private void tellUnplanned(Table.Row row, Column of, LocalDate day) {
    if (!ground.plan().observing().dates().contains(day)) {
      look.remarks.add(row, of, "%s is no planned day.".formatted(day));
    }
  }

  private void add(Table.Row row, Column of, leafturn.trials.observation.Reading reading) {
    List<Object> key = ReadingKeys.of(reading);
    Table.Row before = rows.putIfAbsent(key, row);
    leafturn.trials.observation.Reading there = known.get(key);
    if (before != null) {
      look.faults.add(
          row,
          of,
          "%s of plot %s on %s stands in %s too; number duplicates, or remove one."
              .formatted(
                  reading.outcome(), reading.plot(), reading.date(), look.table.place(before)));
    } else if (there == null) {
      tellFarApart(row, of, reading);
      arrived.add(reading);
    } else if (saysTheSame(there, reading)) {
      look.alreadyThere++;
    } else {
      look.conflicts.add(
          row,
          of,
          "the book has %s %s for plot %s on %s."
              .formatted(
                  there.value(),
                  Objects.requireNonNullElse(there.unit(), ""),
                  there.plot(),
                  there.date()));
    }
  }

  /** Two measurements of one sample that differ by more than a laboratory's own error. */
  private void tellFarApart(Table.Row row, Column of, leafturn.trials.observation.Reading reading) {
    for (leafturn.trials.observation.Reading other : arrived) {
      if (LaboratoryDuplicates.areFarApart(reading, other)) {
        look.remarks.add(
            row,
            of,
            "%s of plot %s on %s was measured twice, %s and %s, which is far apart for one sample; look whether both are of it."
                .formatted(
                    reading.outcome(),
                    reading.plot(),
                    reading.date(),
                    other.value(),
                    reading.value()));
        return;
      }
    }
  }

  private static boolean saysTheSame(
      leafturn.trials.observation.Reading one, leafturn.trials.observation.Reading other) {
    return one.value().equals(other.value()) && Objects.equals(one.unit(), other.unit());
  }

  /** The reading with plot and outcome as layout and plan write them. */
  private static leafturn.trials.observation.Reading named(
      leafturn.trials.observation.Reading given, String plot, String outcome, String value) {
    return new leafturn.trials.observation.Reading(
        plot,
        given.date(),
        outcome,
        value,
        given.unit(),
        given.laboratory(),
        given.method(),
        given.detectionLimit(),
        given.batch(),
        given.rater(),
        given.sample(),
        given.duplicate(),
        given.note());
  }

  private Arrivals arrivals(BookReading book, String file, String fileHash) {
    List<NewSheet<?>> sheets = new ArrayList<>();
    for (int from = 0; from < arrived.size(); from += TrialReadingsSheet.MOST) {
      List<leafturn.trials.observation.Reading> part =
          arrived.subList(from, Math.min(arrived.size(), from + TrialReadingsSheet.MOST));
      TrialReadingsSheet sheet =
          new TrialReadingsSheet(
              trial, laboratory == null ? null : laboratory.id(), file, fileHash, part, null);
      String id = newId(book, "readings " + Kind.TRIAL_READINGS.write(sheet));
      sheets.add(new NewSheet<>(Kind.TRIAL_READINGS, id, sheet, words(part)));
    }
    return Arrivals.of(sheets);
  }

  /** An id the book has not: what was withdrawn and arrives again is entered anew beside it. */
  private String newId(BookReading book, String meaning) {
    String id = Arrivals.idOf(meaning);
    for (int again = 1; book.find(id).isPresent(); again++) {
      id = Arrivals.idOf(meaning + " again " + again);
      notes.add("Readings of this file were withdrawn before; they are entered anew.");
    }
    return id;
  }

  private static String words(List<leafturn.trials.observation.Reading> part) {
    if (part.size() == 1) {
      return "1 reading, of plot %s on %s".formatted(part.get(0).plot(), part.get(0).date());
    }
    return "%,d readings, from plot %s on %s to plot %s on %s"
        .formatted(
            part.size(),
            part.get(0).plot(),
            part.get(0).date(),
            part.get(part.size() - 1).plot(),
            part.get(part.size() - 1).date());
  }
}
