package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Reading.DateOrder;
import leafturn.records.exchange.Reading.Pick;
import leafturn.records.sheet.LaboratorySheet;
import leafturn.records.sheet.LaboratorySheet.Holds;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.table.Table;
import org.jspecify.annotations.Nullable;

/** A laboratory's table, one row a sample, read as the laboratory's mapping says. */
final class LaboratoryTable {
  private final LaboratorySheet laboratory;
  private final Reading reading;
  private final Map<String, LaboratorySheet.Column> byName = new LinkedHashMap<>();
  private final Map<String, Integer> timesSeen = new HashMap<>();
  private final Table table;

  /** What takes the readings of a row. */
  interface Taker {
    void take(Table.Row row, String column, leafturn.trials.observation.Reading reading);
  }

  private LaboratoryTable(Table table, LaboratorySheet laboratory) {
    this.table = table;
    this.laboratory = laboratory;
    List<Column> columns = new ArrayList<>();
    Map<Integer, Pick> picks = new HashMap<>();
    DateOrder order = DateOrder.valueOf(laboratory.dates().name());
    for (LaboratorySheet.Column mapped : laboratory.columns()) {
      Column.Type type = mapped.holds() == Holds.DATE ? Column.Type.DATE : Column.Type.TEXT;
      Column column =
          Column.of(ReadingColumns.READING, mapped.heading(), "", type, mapped.holds().words());
      columns.add(column);
      byName.put(mapped.heading(), mapped);
      place(mapped.heading())
          .ifPresent(place -> picks.put(place, new Pick(column, Units.METRIC, order)));
    }
    this.reading = new Reading(columns, picks);
  }

  static LaboratoryTable of(Table table, LaboratorySheet laboratory) {
    return new LaboratoryTable(table, laboratory);
  }

  private Optional<Integer> place(String heading) {
    for (int i = 0; i < table.headings().size(); i++) {
      if (table.headings().get(i).strip().equalsIgnoreCase(heading.strip())) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** The column by which a table names its plots, with a mapping or one row a reading. */
  static String plotHeading(@Nullable Sheet<LaboratorySheet> mapping) {
    if (mapping == null) {
      return ReadingColumns.PLOT;
    }
    List<LaboratorySheet.Column> columns = mapping.content().columns();
    return Stream.of(Holds.PLOT, Holds.SAMPLE)
        .flatMap(what -> columns.stream().filter(column -> column.holds() == what))
        .map(LaboratorySheet.Column::heading)
        .findFirst()
        .orElse(columns.get(0).heading());
  }

  Reading reading() {
    return reading;
  }

  /** Reports columns of the mapping that are not in the table, and outcomes that no plan has. */
  void check(Findings faults, TrialGround ground) {
    byName.forEach(
        (heading, mapped) -> {
          if (place(heading).isEmpty()) {
            faults.add(
                "the column %s of %s is not in this file; its columns are %s."
                    .formatted(
                        Faults.quoted(heading),
                        laboratory.name(),
                        String.join(", ", table.headings())));
          } else if (mapped.outcome() != null && ground.outcome(mapped.outcome()).isEmpty()) {
            faults.add(
                "the column %s holds %s, which is no outcome of this plan; it is passed over only"
                        .formatted(Faults.quoted(heading), Faults.quoted(mapped.outcome()))
                    + " when the mapping leaves it out.");
          }
        });
    if (table.isEmpty()) {
      faults.add("it has headings but no rows under them.");
    }
  }

  /** What a row tells of its sample; no duplicate for the first measurement. */
  private record Sample(
      String plot, LocalDate date, @Nullable String code, @Nullable Integer duplicate) {}

  /** The readings of a row, a value column each. */
  void readings(Table.Row row, Findings faults, TrialGround ground, Taker taker) {
    Sample sample = tellBroken(row, faults) ? null : sample(row, faults, ground);
    if (sample == null) {
      return;
    }
    byName.forEach(
        (heading, mapped) -> {
          String value = cell(row, heading);
          String outcome = mapped.outcome();
          if (mapped.holds() == Holds.VALUE && value != null && outcome != null) {
            var made = reading(row, sample, mapped, outcome, value);
            if (isFit(row, heading, made, faults)) {
              taker.take(row, heading, made);
            }
          }
        });
  }

  /** Reports mapped cells whose text could not be had; true where there are any. */
  private boolean tellBroken(Table.Row row, Findings faults) {
    boolean broken = false;
    for (Map.Entry<Integer, Pick> pick : reading.picks().entrySet()) {
      String fault = row.faults().get(pick.getKey());
      if (fault != null) {
        faults.add(row, pick.getValue().column(), fault);
        broken = true;
      }
    }
    return broken;
  }

  /** Reports what of a reading the book could not keep, such as a note that is too long. */
  private static boolean isFit(
      Table.Row row, String heading, leafturn.trials.observation.Reading made, Findings faults) {
    try {
      TrialReadingsSheet.checked(made);
      return true;
    } catch (InputException unfit) {
      unfit
          .faultsByField()
          .forEach(
              fault ->
                  faults.add(
                      row,
                      heading,
                      fault.field().isEmpty()
                          ? fault.sentence()
                          : fault.field() + ": " + fault.sentence()));
      return false;
    }
  }

  private leafturn.trials.observation.Reading reading(
      Table.Row row, Sample sample, LaboratorySheet.Column mapped, String outcome, String value) {
    return new leafturn.trials.observation.Reading(
        sample.plot(),
        sample.date(),
        outcome,
        value,
        mapped.unit(),
        laboratory.name(),
        mapped.method(),
        mapped.detectionLimit(),
        text(row, Holds.BATCH),
        text(row, Holds.RATER),
        sample.code(),
        sample.duplicate(),
        text(row, Holds.NOTE));
  }

  /** The sample of a row, or null after a fault. */
  private @Nullable Sample sample(Table.Row row, Findings faults, TrialGround ground) {
    String code = text(row, Holds.SAMPLE);
    TrialGround.Bag bag = code == null ? null : ground.bag(code);
    String plot = plot(row, faults, code, bag);
    if (plot == null) {
      return null;
    }
    LocalDate date = bag == null || text(row, Holds.DATE) != null ? date(row, faults) : bag.date();
    if (date == null || (bag != null && bag.disagrees(plot, date, row, faults))) {
      return null;
    }
    Integer duplicate = duplicate(row, faults, code == null ? plot + " " + date : code);
    return duplicate == null
        ? null
        : new Sample(plot, date, code, duplicate == 1 ? null : duplicate);
  }

  private @Nullable String plot(
      Table.Row row, Findings faults, @Nullable String code, TrialGround.@Nullable Bag bag) {
    String told = text(row, Holds.PLOT);
    if (told == null && bag != null) {
      return bag.plot();
    }
    if (told == null) {
      faults.add(
          row,
          code == null
              ? "it names no plot and no bag."
              : Faults.quoted(code) + " is no code of a bag of this trial.");
    }
    return told;
  }

  private @Nullable LocalDate date(Table.Row row, Findings faults) {
    for (Pick pick : reading.picks().values()) {
      String text = cell(row, pick.column().name());
      if (pick.column().type() == Column.Type.DATE && text != null) {
        CellReader.Cell cell = new CellReader(table).read(pick, text);
        LocalDate day = cell.fault() == null ? Dates.parse(cell.value().asText()) : null;
        if (day == null) {
          String fault = cell.fault();
          faults.add(row, pick.column(), fault == null ? Dates.fault(text) : fault);
        }
        return day;
      }
    }
    faults.add(row, "it has no day of sampling; map the column that holds it.");
    return null;
  }

  /** 1 for the first row of a sample; null after a fault. */
  private @Nullable Integer duplicate(Table.Row row, Findings faults, String sample) {
    String told = text(row, Holds.DUPLICATE);
    if (told != null) {
      if (told.matches("\\d{1,2}") && Integer.parseInt(told) >= 1) {
        return Integer.valueOf(told);
      }
      faults.add(row, Faults.quoted(told) + " is no number of a duplicate; give 1, 2 and so on.");
      return null;
    }
    int times = timesSeen.merge(sample, 1, Integer::sum);
    if (times > 1 && laboratory.duplicates() == LaboratorySheet.Duplicates.NONE) {
      faults.add(
          row,
          "%s stands in a row above already, and %s sends no duplicates; remove one, or change its mapping."
              .formatted(Faults.quoted(sample), laboratory.name()));
      return null;
    }
    return times;
  }

  private @Nullable String text(Table.Row row, Holds holds) {
    return laboratory.columns().stream()
        .filter(column -> column.holds() == holds)
        .map(column -> cell(row, column.heading()))
        .filter(Objects::nonNull)
        .findFirst()
        .orElse(null);
  }

  private @Nullable String cell(Table.Row row, String heading) {
    String text = place(heading).map(place -> row.cells().get(place)).orElse("");
    String read = table.isSpreadsheet() ? text : Guarded.read(text);
    return read.isEmpty() ? null : read;
  }
}
