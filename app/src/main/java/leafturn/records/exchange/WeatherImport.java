package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import leafturn.records.ArchiveReading;
import leafturn.records.Dates;
import leafturn.records.Faults;
import leafturn.records.SourceText;
import leafturn.records.WeatherFile;
import leafturn.records.book.BookReading;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.table.Table;

/**
 * Looks at daily weather for a station: a table, or a file in one of the forms of GHCN-Daily. What
 * a day has in the book already is kept; where the file has another value, the book's stands unless
 * asked otherwise.
 */
public final class WeatherImport {
  private static final Reading NO_COLUMNS = new Reading(List.of(), Map.of());

  private final TableLook look;
  private final String station;
  private final boolean replacing;
  private final Units units;
  private final LocalDate latest;
  private final Map<LocalDate, StationDay> kept = new HashMap<>();
  private final Map<LocalDate, Table.Row> rowOfDay = new HashMap<>();
  private final Set<String> places = new TreeSet<>();
  private final List<StationDay> days = new ArrayList<>();

  private WeatherImport(BookReading book, TableLook look, Ask ask) {
    this.look = look;
    this.station = ask.station;
    this.replacing = ask.replacing;
    this.units = ask.units;
    this.latest = ask.latest;
    StationDays.of(book, station).forEach(day -> kept.put(day.day(), day));
  }

  /**
   * What is asked.
   *
   * @param station id of the station
   * @param replacing true when the values of the file take the place of those in the book
   * @param units of whoever asks
   * @param latest the last day that can have been measured
   */
  public record Ask(String station, boolean replacing, Units units, LocalDate latest) {}

  /** Looks at a table. */
  public static Preview look(BookReading book, Table table, Reading reading, Ask ask) {
    TableLook look = new TableLook(table, reading);
    WeatherImport weather = new WeatherImport(book, look, ask);
    if (look.hasColumns("date")) {
      table.rows().forEach(weather::row);
    }
    if (weather.places.size() > 1) {
      look.faults.add(
          "it holds the weather of %d places (%s, ...); keep the rows of one."
              .formatted(weather.places.size(), Faults.quoted(weather.places.iterator().next())));
    }
    return look.preview(new Arrivals(List.of(), ask.station, weather.days), List.of());
  }

  /**
   * Looks at a file in one of the forms of GHCN-Daily.
   *
   * @throws leafturn.records.InputException with every fault of the file
   */
  public static Preview look(BookReading book, SourceText file, Ask ask) {
    ArchiveReading measured = WeatherFile.measured(file);
    Table table = Table.withoutColumns(file.name());
    TableLook look = new TableLook(table, NO_COLUMNS);
    WeatherImport weather = new WeatherImport(book, look, ask);
    measured
        .days()
        .forEach(
            (day, values) -> {
              Table.Row none = new Table.Row(0, List.of(), Map.of());
              weather.day(none, new StationDay(day, values));
            });
    List<String> notes = new ArrayList<>();
    notes.add("The file is %s.".formatted(measured.format()));
    if (!measured.place().isEmpty()) {
      notes.add("Station of the file: %s.".formatted(measured.place()));
    }
    notes.addAll(measured.notes());
    return look.preview(new Arrivals(List.of(), ask.station, weather.days), notes);
  }

  private void row(Table.Row row) {
    String place = look.faults.text(row, WeatherColumns.LOCATION);
    if (!place.isEmpty()) {
      places.add(place);
    }
    RowDocument document = RowDocument.of(WeatherColumns.DAY, row, look.faults);
    if (document.has("day") && document.json().size() == 1) {
      // A day on which nothing was measured says nothing.
      return;
    }
    StationDay day = document.read(StationDay::read);
    if (day == null) {
      return;
    }
    Table.Row before = rowOfDay.putIfAbsent(day.day(), row);
    if (before != null) {
      look.faults.add(
          row,
          "date",
          "%s stands in %s too; keep one of them.".formatted(day.day(), look.table.place(before)));
      return;
    }
    day(row, day);
  }

  private void day(Table.Row row, StationDay day) {
    if (day.day().isAfter(latest)) {
      refuseToCome(row, day.day());
      return;
    }
    StationDay before = kept.get(day.day());
    Map<Quantity, Double> merged = new EnumMap<>(Quantity.class);
    merged.putAll(day.values());
    if (before != null) {
      boolean differs =
          day.values().entrySet().stream()
              .anyMatch(
                  value ->
                      before.values().containsKey(value.getKey())
                          && !value.getValue().equals(before.values().get(value.getKey())));
      if (differs) {
        tell(row, before);
      }
      before.values().forEach((quantity, value) -> keep(merged, quantity, value));
    }
    StationDay after = new StationDay(day.day(), merged);
    if (after.equals(before)) {
      look.alreadyThere++;
    } else if (crossed(after)) {
      look.faults.add(
          look.table.rows().isEmpty()
              ? "on %s the book and the file together have a minimum above the maximum; correct one."
                  .formatted(day.day())
              : "%s: the book and the table together have a minimum above the maximum; correct one."
                  .formatted(look.table.place(row)));
    } else {
      days.add(after);
    }
  }

  private void refuseToCome(Table.Row row, LocalDate day) {
    String sentence =
        "%s has not come yet, so nothing was measured on it; leave it out, or give it as a forecast on the station's page."
            .formatted(Dates.words(day));
    if (look.table.rows().isEmpty()) {
      look.faults.add(sentence);
    } else {
      look.faults.add(row, "date", sentence);
    }
  }

  private void keep(Map<Quantity, Double> merged, Quantity quantity, double value) {
    if (replacing) {
      merged.putIfAbsent(quantity, value);
    } else {
      merged.put(quantity, value);
    }
  }

  private void tell(Table.Row row, StationDay before) {
    Findings findings = replacing ? look.remarks : look.conflicts;
    String sentence =
        "the book has "
            + StationDayWords.of(before, units)
            + (replacing ? "; it is replaced." : ".");
    if (look.table.rows().isEmpty()) {
      findings.add(sentence);
    } else {
      findings.add(row, sentence);
    }
  }

  private static boolean crossed(StationDay day) {
    return above(day, Quantity.MINIMUM_C, Quantity.MAXIMUM_C)
        || above(day, Quantity.HUMIDITY_MINIMUM_PERCENT, Quantity.HUMIDITY_MAXIMUM_PERCENT);
  }

  private static boolean above(StationDay day, Quantity low, Quantity high) {
    Double lower = day.values().get(low);
    Double upper = day.values().get(high);
    return lower != null && upper != null && lower > upper;
  }
}
