package leafturn.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.sheet.ForecastSheet;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import org.jspecify.annotations.Nullable;

/** A forecast in words and figures. */
public final class ForecastWords {
  private final ForecastSheet forecast;
  private final Units units;
  private final LocalDate today;

  ForecastWords(ForecastSheet forecast, Units units, LocalDate today) {
    this.forecast = forecast;
    this.units = units;
    this.today = today;
  }

  /**
   * A day of it.
   *
   * @param name the day
   * @param cells temperatures, rain, its chance, wind
   */
  public record Row(String name, List<String> cells) {}

  /** Whose it is, its days and how long advice follows it, in a sentence or two. */
  public String about() {
    return "%s, made on %s, for %s to %s. %s"
        .formatted(
            forecast.origin(),
            DayWords.date(forecast.issued()),
            DayWords.date(forecast.first()),
            DayWords.dayAndYear(forecast.last()),
            standing());
  }

  private String standing() {
    if (forecast.last().isBefore(today)) {
      return "It has expired: advice goes by possible seasons alone.";
    }
    if (beginsLate()) {
      return "It begins after tomorrow, so nothing follows it yet.";
    }
    return "Advice follows it until then and trusts it less by the day.";
  }

  /** True when advice follows it today. */
  public boolean holds() {
    return !beginsLate() && !forecast.last().isBefore(today);
  }

  private boolean beginsLate() {
    return forecast.first().isAfter(today.plusDays(1));
  }

  /** Headings of its cells, each with its unit. */
  public List<String> headings() {
    return List.of(
        "Low to high, " + unit(Measure.TEMPERATURE),
        "Rain, " + unit(Measure.WATER),
        "Its chance",
        "Wind, " + unit(Measure.WIND_SPEED));
  }

  private String unit(Measure measure) {
    return measure.unit(units).symbol();
  }

  /** Its days. */
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < forecast.days().size(); i++) {
      ForecastSheet.Day day = forecast.days().get(i);
      Double chance = day.rainChanceFraction();
      rows.add(
          new Row(
              DayWords.shortDay(forecast.first().plusDays(i)),
              List.of(
                  shown(day.minimumC(), Measure.TEMPERATURE)
                      + " to "
                      + shown(day.maximumC(), Measure.TEMPERATURE),
                  shown(day.rainMm(), Measure.WATER),
                  chance == null ? "–" : QuantityWords.percent(chance),
                  shown(day.windMPerS(), Measure.WIND_SPEED))));
    }
    return rows;
  }

  private String shown(@Nullable Double kept, Measure measure) {
    return kept == null ? "–" : QuantityWords.plain(measure.shown(kept, units)).replace('-', '−');
  }
}
