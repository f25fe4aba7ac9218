package leafturn.records;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.WeatherReading.Counts;
import org.jspecify.annotations.Nullable;

/**
 * Reads daily weather: a CSV with a header, or NOAA's GHCN-Daily in its fixed-width or its
 * one-value-a-line form. The form is told by the first line.
 */
public final class WeatherFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 50_000_000;

  private static final String FIXED_WIDTH = "GHCN-Daily, fixed width";
  private static final String ONE_VALUE_A_LINE = "GHCN-Daily, one value a line";

  private static final Map<Quantity, String> OPTIONAL =
      Map.of(
          Quantity.WIND_M_PER_S, "wind, where 2 m/s is assumed",
          Quantity.DEW_POINT_C, "dew point",
          Quantity.HUMIDITY_MAXIMUM_PERCENT, "highest humidity",
          Quantity.HUMIDITY_MINIMUM_PERCENT, "lowest humidity",
          Quantity.RADIATION_MJ_PER_M2, "radiation");

  private WeatherFile() {}

  /**
   * How to read a file.
   *
   * @param site the location or station to read, or null when the file has only one
   * @param fillLongGaps true to fill gaps of more than three days too
   */
  public record Choice(@Nullable String site, boolean fillLongGaps) {
    /** The only site of a file, whose long gaps are faults. */
    public static final Choice ONLY_SITE = new Choice(null, false);
  }

  /**
   * Reads daily weather from a file.
   *
   * @throws InputException with one sentence for each fault of the file
   */
  public static WeatherReading read(Path file, Choice choice) {
    return read(SourceText.read(file, LIMIT_BYTES), choice);
  }

  /**
   * Reads daily weather from text.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static WeatherReading read(SourceText source, Choice choice) {
    String firstLine = source.text().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    Faults faults = new Faults(source.name());
    if (StationMonths.START.matcher(firstLine).lookingAt()) {
      StationElements elements = new StationElements(choice.site(), faults);
      new StationMonths(elements, faults).read(source);
      return fromStation(elements, FIXED_WIDTH, List.of(), choice, faults);
    }
    if (StationDays.START.matcher(firstLine).lookingAt()) {
      StationElements elements = new StationElements(choice.site(), faults);
      StationDays lines = new StationDays(elements, faults);
      lines.read(source);
      return fromStation(elements, ONE_VALUE_A_LINE, lines.notes(), choice, faults);
    }
    WeatherCsv csv = new WeatherCsv(source, choice.site(), faults);
    MeasuredDays days = csv.read();
    faults.throwIfAny();
    GapFilling gaps = new GapFilling(days, choice.fillLongGaps(), faults);
    return reading(gaps, csv.place(), "CSV with a header", Counts.NONE, csv.notes());
  }

  /**
   * Completes days that are kept elsewhere than in a file; days at either end that lack temperature
   * or rain are left out, all other gaps are filled and listed.
   *
   * @param place name of the station
   * @param days what was measured, by day
   * @throws InputException with one sentence for each fault of the days
   */
  public static WeatherReading completed(
      String place, SortedMap<LocalDate, Map<Quantity, Double>> days) {
    Faults faults = new Faults(place);
    MeasuredDays measured = new MeasuredDays();
    days.forEach(
        (day, values) -> {
          measured.putDay(day);
          values.forEach((quantity, value) -> measured.put(day, quantity, value));
        });
    measured.trimToCompleteDays();
    if (measured.isEmpty()) {
      faults.add("no day has temperatures and rain; add its record.");
    }
    measured.checkTemperatures(faults);
    faults.throwIfAny();
    GapFilling gaps = new GapFilling(measured, true, faults);
    return reading(gaps, place, "days of a book", Counts.NONE, List.of());
  }

  /** True for a text in one of the forms of GHCN-Daily, false for a table with a header. */
  public static boolean isStationForm(SourceText source) {
    String firstLine = source.text().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    return StationMonths.START.matcher(firstLine).lookingAt()
        || StationDays.START.matcher(firstLine).lookingAt();
  }

  /**
   * Reads what was measured of a text in one of the forms of GHCN-Daily, and fills no gap.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static ArchiveReading measured(SourceText source) {
    Faults faults = new Faults(source.name());
    StationElements elements = new StationElements(null, faults);
    List<String> notes = new ArrayList<>();
    String firstLine = source.text().lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    boolean months = StationMonths.START.matcher(firstLine).lookingAt();
    if (months) {
      new StationMonths(elements, faults).read(source);
    } else {
      StationDays lines = new StationDays(elements, faults);
      lines.read(source);
      notes.addAll(lines.notes());
    }
    MeasuredDays days = elements.days(notes);
    faults.throwIfAny();
    days.shareRainTotals();
    return new ArchiveReading(
        days.byDay(), elements.place(), months ? FIXED_WIDTH : ONE_VALUE_A_LINE, notes);
  }

  private static WeatherReading fromStation(
      StationElements elements,
      String format,
      List<String> formNotes,
      Choice choice,
      Faults faults) {
    List<String> notes = new ArrayList<>(formNotes);
    MeasuredDays days = elements.days(notes);
    faults.throwIfAny();
    GapFilling gaps = new GapFilling(days, choice.fillLongGaps(), faults);
    return reading(gaps, elements.place(), format, elements.counts(), notes);
  }

  private static WeatherReading reading(
      GapFilling gaps, String place, String format, Counts counts, List<String> notes) {
    WeatherSeries series = gaps.fill();
    List<String> all = new ArrayList<>(notes);
    Arrays.stream(Quantity.values())
        .filter(OPTIONAL::containsKey)
        .filter(series::has)
        .forEach(quantity -> noteMissing(series, quantity, all));
    WeatherReading reading = new WeatherReading(series, place, format, gaps.filled(), counts, all);
    if (!reading.filled().isEmpty()) {
      all.add(0, filledInWords(reading));
    }
    return new WeatherReading(series, place, format, gaps.filled(), counts, all);
  }

  private static void noteMissing(WeatherSeries series, Quantity quantity, List<String> notes) {
    long missing =
        IntStream.range(0, series.days())
            .filter(day -> Double.isNaN(series.value(quantity, day)))
            .count();
    if (missing > 0) {
      notes.add("%d days lack %s.".formatted(missing, OPTIONAL.get(quantity)));
    }
  }

  private static String filledInWords(WeatherReading reading) {
    String rules =
        reading.filled().stream()
            .map(value -> value.rule().inWords())
            .distinct()
            .collect(Collectors.joining(", "));
    int days = reading.filledDays().size();
    return "%d %s filled in (%s).".formatted(days, days == 1 ? "day was" : "days were", rules);
  }
}
