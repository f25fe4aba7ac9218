package leafturn.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDay;
import leafturn.records.sheet.ForecastSheet;
import leafturn.records.sheet.WeatherStation;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * A station and what it measured.
 *
 * @param station the station
 * @param record its days
 * @param properties names of the properties that rest on it
 * @param today the day that is today in this book
 * @param units the reader's units
 * @param mayChange whether the reader may add days and change them
 * @param day the form for a day
 * @param latestForecast the latest forecast for its place, or null
 */
public record StationPage(
    Sheet<WeatherStation> station,
    StationRecord record,
    List<String> properties,
    LocalDate today,
    Units units,
    boolean mayChange,
    Form day,
    @Nullable Sheet<ForecastSheet> latestForecast) {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d\u00a0MMMM uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter SHORT_DATE =
      DateTimeFormatter.ofPattern("d\u00a0MMM\u00a0uuuu", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH =
      DateTimeFormatter.ofPattern("MMM\u00a0uuuu", Locale.ENGLISH);
  private static final int A_YEAR = 12;
  private static final int LATEST = 14;
  private static final int SHOWN_GAPS = 20;

  /** A row of a table in words. */
  public record Row(String name, String address, List<String> cells) {}

  /** This page with another form for a day. */
  StationPage withDay(Form form) {
    return new StationPage(
        station, record, properties, today, units, mayChange, form, latestForecast);
  }

  /** The latest forecast in words, or null. */
  public @Nullable ForecastWords forecast() {
    return latestForecast == null
        ? null
        : new ForecastWords(latestForecast.content(), units, today);
  }

  /** Id of its sheet, or null. */
  public @Nullable String forecastSheet() {
    return latestForecast == null ? null : latestForecast.id();
  }

  public String name() {
    return station.content().name();
  }

  public String address() {
    return "/weather/" + station.id();
  }

  /** Span and size of the record, a sentence. */
  public String span() {
    return record.isEmpty()
        ? "Its record is empty."
        : "%,d days from %s to %s."
            .formatted(
                record.size(), DATE.format(record.firstDay()), DATE.format(record.lastDay()));
  }

  /** How far the record reaches, and what stands in after it. */
  public String freshness() {
    if (record.isEmpty()) {
      return "Without days it can carry no advice; import its record, or type days in.";
    }
    long behind = record.daysBehind(today);
    if (behind == 0) {
      return record.lastDay().isBefore(today)
          ? "It reaches up to yesterday."
          : "It reaches past the day of this round; the advice knows it up to the day before.";
    }
    return "It ends %,d days before today; until days are added, the same dates of its earlier years"
            .formatted(behind + 1)
        + " stand in, and the advice says so.";
  }

  /** The gaps in words, the latest first. */
  public List<String> gaps() {
    List<String> words = new ArrayList<>();
    List<StationRecord.Gap> gaps = record.gaps();
    for (int i = gaps.size() - 1; i >= 0 && words.size() < SHOWN_GAPS; i--) {
      StationRecord.Gap gap = gaps.get(i);
      words.add(
          gap.days() == 1
              ? DATE.format(gap.first())
              : "%s to %s, %,d days"
                  .formatted(DATE.format(gap.first()), DATE.format(gap.last()), gap.days()));
    }
    return words;
  }

  public int moreGaps() {
    return Math.max(0, record.gaps().size() - SHOWN_GAPS);
  }

  public String unit(Quantity quantity) {
    Measure measure = measure(quantity);
    return measure == null ? "%" : measure.unit(units).symbol();
  }

  /** The months of the last year of the record, the latest first. */
  public List<Row> lastMonths() {
    List<Row> months = months();
    return months.subList(0, Math.min(A_YEAR, months.size()));
  }

  /** The months before these. */
  public List<Row> earlierMonths() {
    List<Row> months = months();
    return months.subList(Math.min(A_YEAR, months.size()), months.size());
  }

  private List<Row> months() {
    return record.months().stream()
        .map(
            month ->
                new Row(
                    MONTH.format(month.month()),
                    "",
                    List.of(
                        shown(month.meanMinimumC(), Quantity.MINIMUM_C),
                        shown(month.meanMaximumC(), Quantity.MAXIMUM_C),
                        shown(month.rainMm(), Quantity.RAIN_MM),
                        month.missing() == 0 ? "none" : month.missing() + " of " + month.days())))
        .toList();
  }

  public List<Row> latest() {
    return record.latest(LATEST).stream()
        .map(
            each ->
                new Row(
                    SHORT_DATE.format(each.day()),
                    address() + "/days/" + each.day(),
                    List.of(
                        shown(each, Quantity.MINIMUM_C),
                        shown(each, Quantity.MAXIMUM_C),
                        shown(each, Quantity.RAIN_MM),
                        shown(each, Quantity.WIND_M_PER_S))))
        .toList();
  }

  private String shown(StationDay measured, Quantity quantity) {
    Double value = measured.values().get(quantity);
    return shown(value == null ? Double.NaN : value, quantity);
  }

  private String shown(double value, Quantity quantity) {
    if (Double.isNaN(value)) {
      return "–";
    }
    Measure measure = measure(quantity);
    double inUnits = measure == null ? value : measure.shown(value, units);
    int decimals = quantity == Quantity.RAIN_MM && units == Units.US ? 2 : 1;
    BigDecimal rounded = BigDecimal.valueOf(inUnits).setScale(decimals, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString().replace('-', '−');
  }

  private static @Nullable Measure measure(Quantity quantity) {
    return switch (quantity) {
      case RAIN_MM -> Measure.WATER;
      case WIND_M_PER_S -> Measure.WIND_SPEED;
      case MINIMUM_C, MAXIMUM_C, DEW_POINT_C -> Measure.TEMPERATURE;
      default -> null;
    };
  }
}
