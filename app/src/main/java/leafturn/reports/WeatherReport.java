package leafturn.reports;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import leafturn.advice.call.DryHours;
import leafturn.advice.season.LastDay;
import leafturn.advice.season.WeatherAccount;
import leafturn.advice.season.WeatherAccount.Span;
import leafturn.advice.season.WeatherAccount.Year;
import leafturn.records.WeatherReading;
import org.jspecify.annotations.Nullable;

/**
 * A weather file as people and programs read it; its components are the fields of the JSON
 * document.
 *
 * @param place location or station, empty when the file names none
 * @param format what the file was read as
 * @param firstDay first day of the record
 * @param lastDay last day
 * @param days number of days
 * @param filled values that were not in the file
 * @param counts values changed or dropped by their flags
 * @param notes what a reader must know
 * @param months sums and means by month
 * @param years sums and means by year, with frost days
 * @param lastDayHours hours of the last day, or null without a latitude
 */
public record WeatherReport(
    String place,
    String format,
    LocalDate firstDay,
    LocalDate lastDay,
    int days,
    List<Filled> filled,
    WeatherReading.Counts counts,
    List<String> notes,
    List<Span> months,
    List<YearOfWeather> years,
    @Nullable LastDay lastDayHours) {
  private static final int FILLED_SHOWN = 20;
  private static final String UNKNOWN = "-";

  /**
   * @param quantity the column's meaning, for instance minimum temperature
   * @param rule how the value was found
   */
  public record Filled(LocalDate day, String quantity, double value, String rule) {}

  /**
   * A year's sums with its frosts, minimum of 0 °C or less.
   *
   * @param total sums and means of the year
   * @param lastFrostBeforeJuly null when there was none
   * @param firstFrostFromJuly null when there was none
   */
  public record YearOfWeather(
      Span total,
      @Nullable LocalDate lastFrostBeforeJuly,
      @Nullable LocalDate firstFrostFromJuly) {}

  /** The report of a file and its account. */
  public static WeatherReport of(WeatherReading reading, WeatherAccount account) {
    List<String> notes = new ArrayList<>(reading.notes());
    double fromTemperature = account.evapotranspirationFromTemperature();
    if (Double.isNaN(fromTemperature)) {
      notes.add("Reference evapotranspiration needs the latitude; give --latitude.");
    } else if (fromTemperature > 0) {
      notes.add(
          "On %.0f %% of the days reference evapotranspiration rests on temperatures alone, about"
                  .formatted(100 * fromTemperature)
              + " 0.7 mm a day off.");
    }
    return new WeatherReport(
        reading.place(),
        reading.format(),
        reading.series().firstDay(),
        reading.series().lastDay(),
        reading.series().days(),
        reading.filled().stream().map(WeatherReport::filled).toList(),
        reading.counts(),
        List.copyOf(notes),
        account.months(),
        account.years().stream().map(WeatherReport::yearOfWeather).toList(),
        account.lastDay());
  }

  private static Filled filled(leafturn.records.FilledValue value) {
    String quantity =
        switch (value.quantity()) {
          case MAXIMUM_C -> "maximum temperature, °C";
          case MINIMUM_C -> "minimum temperature, °C";
          case RAIN_MM -> "rain, mm";
          default -> throw new IllegalStateException(value.quantity() + " is never filled in");
        };
    return new Filled(value.day(), quantity, value.value(), value.rule().inWords());
  }

  private static YearOfWeather yearOfWeather(Year year) {
    return new YearOfWeather(year.total(), year.lastFrostBeforeJuly(), year.firstFrostFromJuly());
  }

  /** The report for a terminal. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    String name = place.isEmpty() ? "" : place + ": ";
    lines.add("%s%d days from %s to %s (%s).".formatted(name, days, firstDay, lastDay, format));
    lines.add(filled.isEmpty() ? "No day is missing." : "");
    filled.stream()
        .limit(FILLED_SHOWN)
        .map(
            value ->
                "Filled %s: %s %s (%s)"
                    .formatted(value.day(), value.quantity(), number(value.value()), value.rule()))
        .forEach(lines::add);
    if (filled.size() > FILLED_SHOWN) {
      lines.add(
          "... and %d more values; --json lists all.".formatted(filled.size() - FILLED_SHOWN));
    }
    notes.forEach(note -> lines.add("Note: " + note));
    lines.add("");
    lines.add("By the year");
    lines.addAll(yearTable());
    lines.add("");
    lines.add("By the month, mean over the complete ones");
    lines.addAll(monthTable());
    lines.add("");
    lines.add("Growth days: sum of the growing potential for cool and for warm-season grasses.");
    lines.add("");
    lines.add("Degree-days by the year, °C d");
    lines.addAll(warmthTable());
    lines.add("Annual bluegrass flowers from about 555 to 1540 above -5 °C, most at 1050.");
    if (lastDayHours != null) {
      lines.add("");
      lines.addAll(hoursOf(lastDayHours));
    }
    return lines;
  }

  private List<String> warmthTable() {
    TextTable table = new TextTable("Year", "above -5 °C", "above 0 °C", "above 10 °C");
    for (YearOfWeather year : years) {
      WeatherAccount.Warmth warmth = year.total().warmth();
      table.row(
          year.total().name(),
          number(warmth.aboveMinus5Cd()),
          number(warmth.above0Cd()),
          number(warmth.above10Cd()));
    }
    return table.lines();
  }

  private List<String> hoursOf(LastDay last) {
    DryHours hours = last.hours();
    String wet =
        "Leaves wet for %.0f h of it by the water on them, %d h by humidity alone and %d h by the regression tree, which both know no rain."
            .formatted(last.wetByBalanceHours(), last.wetByHumidityHours(), last.wetByTreeHours());
    return Paragraph.of(
        "",
        "Grass on %s: %s. %s %s"
            .formatted(lastDay, hours.days().get(0).words(), wet, hours.limits()));
  }

  private List<String> yearTable() {
    TextTable table =
        new TextTable(
            "Year",
            "days",
            "rain mm",
            "wet days",
            "max °C",
            "min °C",
            "ref. ET mm",
            "growth cool",
            "growth warm",
            "last frost",
            "first frost");
    for (YearOfWeather year : years) {
      Span total = year.total();
      table.row(
          total.name(),
          Integer.toString(total.days()),
          number(total.rainMm()),
          Integer.toString(total.wetDays()),
          number(total.meanMaximumC()),
          number(total.meanMinimumC()),
          number(total.referenceEtMm()),
          number(total.growthDaysCool()),
          number(total.growthDaysWarm()),
          day(year.lastFrostBeforeJuly()),
          day(year.firstFrostFromJuly()));
    }
    return table.lines();
  }

  private List<String> monthTable() {
    TextTable table =
        new TextTable(
            "Month", "rain mm", "max °C", "min °C", "ref. ET mm", "growth cool", "growth warm");
    for (Month month : Month.values()) {
      List<Span> same =
          months.stream()
              .filter(Span::complete)
              .filter(span -> span.name().endsWith("-%02d".formatted(month.getValue())))
              .toList();
      if (!same.isEmpty()) {
        table.row(
            month.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
            mean(same, Span::rainMm),
            mean(same, Span::meanMaximumC),
            mean(same, Span::meanMinimumC),
            mean(same, Span::referenceEtMm),
            mean(same, Span::growthDaysCool),
            mean(same, Span::growthDaysWarm));
      }
    }
    return table.lines();
  }

  private static String mean(List<Span> spans, ToDoubleFunction<Span> value) {
    return number(spans.stream().mapToDouble(value).average().orElse(Double.NaN));
  }

  private static String number(double value) {
    return Double.isNaN(value) ? UNKNOWN : String.format(Locale.ROOT, "%.1f", value);
  }

  private static String day(@Nullable LocalDate day) {
    return day == null ? UNKNOWN : day.toString();
  }
}
