package leafturn.advice.season;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Spread;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** A lawn, programmes for it and the example weather, for tests of the plan. */
final class PlanExamples {
  private static final Path WEATHER = Path.of("..", "docs", "examples", "new-york-2012-2015.csv");

  private PlanExamples() {}

  /** New York 2012-2015, up to a day. */
  static SiteClimate newYork(LocalDate last) {
    List<NamedCsvRecord> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(WEATHER)) {
      reader.forEach(rows::add);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    rows.removeIf(row -> LocalDate.parse(row.getField("date")).isAfter(last));
    WeatherSeries series =
        new WeatherSeries(
            LocalDate.parse(rows.get(0).getField("date")),
            Map.of(
                Quantity.MINIMUM_C, column(rows, "temp_min"),
                Quantity.MAXIMUM_C, column(rows, "temp_max"),
                Quantity.RAIN_MM, column(rows, "precipitation"),
                Quantity.WIND_M_PER_S, column(rows, "wind")));
    return new SiteClimate(series, Site.at(40.78, 40));
  }

  static SiteClimate newYork() {
    return newYork(LocalDate.of(2015, 12, 31));
  }

  private static double[] column(List<NamedCsvRecord> rows, String name) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.getField(name))).toArray();
  }

  /** Tall fescue on loam with 147 kg N/ha, mown weekly and collected. */
  static Lawn fescue(double organicMatterPercent) {
    Soil soil =
        new Soil(
            new Soil.Water(0.25, 0.12, 0.45, 61),
            new Soil.Test(organicMatterPercent, 15, 1.33, 45, 120, "Mehlich-3"));
    return new Lawn(
        Site.at(40.78, 40),
        new Lawn.Ground(
            Species.TALL_FESCUE, soil, 0, 420.0, new Lawn.Mower(530.0, 70.0, 4.0, false)),
        new Programme(
            mowing(76, 7, ReturnPractice.always(0)),
            List.of(quarter(110), quarter(150), quarter(245), quarter(280)),
            0),
        4,
        Map.of());
  }

  static Lawn with(Lawn lawn, Programme programme) {
    return new Lawn(lawn.site(), lawn.ground(), programme, lawn.spinUpYears(), lawn.parameters());
  }

  private static Programme.Feeding quarter(int dayOfYear) {
    return new Programme.Feeding(CalendarDay.ofYear(dayOfYear), 3.675, 0, 0, 0);
  }

  private static Programme.Mowing mowing(double heightMm, int everyDays, ReturnPractice practice) {
    return new Programme.Mowing(
        CutHeights.always(heightMm),
        everyDays,
        CalendarDay.on(MonthDay.of(4, 1)),
        CalendarDay.on(MonthDay.of(11, 15)),
        practice);
  }

  /** The lawn's own programme, mown and returned in another way, with another yearly N. */
  static PlannedProgramme other(
      Lawn lawn, String name, int everyDays, ReturnPractice practice, double nGPerM2) {
    Programme own = lawn.programme();
    Programme mown = new Programme(mowing(76, everyDays, practice), own.feedings(), 0);
    return new PlannedProgramme(
        name, Origin.GIVEN, YearlyNitrogen.set(mown, own.feedings(), nGPerM2, false));
  }

  /** N that a programme needs for the growth of now. */
  static Spread needed(SeasonPlan.Result result) {
    return Objects.requireNonNull(result.outcome().feed().equalGrowthNGPerM2());
  }

  /** A plan of given programmes alone. */
  static SeasonPlan plan(Lawn lawn, int seasons, List<PlannedProgramme> given) {
    return SeasonPlanner.plan(request(lawn, newYork(), seasons, given), 1, PlanProgress.NONE);
  }

  static PlanRequest request(
      Lawn lawn, SiteClimate climate, int seasons, List<PlannedProgramme> given) {
    return new PlanRequest(
        lawn, climate, given, false, new PlanRequest.Draws(seasons, 7), CallRules.standard());
  }
}
