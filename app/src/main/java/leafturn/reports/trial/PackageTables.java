package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import leafturn.records.trial.TrialPackageFile;
import leafturn.records.trial.TrialValues;
import leafturn.reports.trial.PackageTable.Column;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Plot;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingValue;
import org.jspecify.annotations.Nullable;

/** The tables of a trial's data package: readings as given, plots, and values to analyse. */
final class PackageTables {
  private static final List<Column> READINGS =
      List.of(
          Column.text("plot").required(),
          new Column("date", "date", "").required(),
          Column.text("outcome").required(),
          new Column(
                  "value",
                  "string",
                  "As it was given, in the unit of its row; <2 is below a detection limit of 2.")
              .required(),
          new Column(
              "unit",
              "string",
              "Unit of the value of this row; it may differ from row to row. The tables of values"
                  + " have each outcome in one unit."),
          Column.text("laboratory"),
          Column.text("method"),
          new Column("detection_limit", "number", "In the unit of the row."),
          Column.text("batch"),
          Column.text("rater"),
          new Column("sample", "string", "Code on the bag; layout.json tells blind duplicates."),
          new Column("duplicate", "integer", "1 for the first measurement of a sample."),
          Column.text("note"));
  private static final List<Column> PLOTS =
      List.of(
          Column.text("plot").required(),
          new Column("unit", "string", "Yard, block or pair the plot lies in.").required(),
          Column.text("arm").required(),
          Column.text("second_arm"),
          new Column("row", "integer", ""),
          new Column("column", "integer", ""),
          Column.text("lawn"),
          new Column("area_m2", "number", ""),
          new Column("measured_m2", "number", "Area of the part that is observed and sampled."));

  private static final String HALF_LIMITS = "of_which_half_limits";

  /** Those of the first columns that tell who a plot is. */
  private static final int PLOT_CELLS = 6;

  private PackageTables() {}

  /** Readings as they were given, of the outcomes of a plan. */
  static PackageTable readings(TrialPlan plan, List<Reading> readings) {
    List<String> outcomes =
        plan.observing().outcomes().stream().map(Outcome::name).map(PackageTable::cell).toList();
    List<Column> columns =
        READINGS.stream()
            .map(each -> each.name().equals("outcome") ? each.with("enum", outcomes) : each)
            .toList();
    return PackageTable.keyed(
        columns,
        readings.stream().map(PackageTables::reading).toList(),
        List.of("plot", "date", "outcome", "rater", "sample", "duplicate"),
        3);
  }

  private static List<String> reading(Reading own) {
    return List.of(
        own.plot(),
        own.date().toString(),
        own.outcome(),
        ReadingValue.withPoint(own.value()),
        text(own.unit()),
        text(own.laboratory()),
        text(own.method()),
        text(own.detectionLimit()),
        text(own.batch()),
        text(own.rater()),
        text(own.sample()),
        text(own.duplicate()),
        text(own.note()));
  }

  private static String text(@Nullable Object value) {
    return Objects.toString(value, "");
  }

  static PackageTable plots(TrialLayout layout) {
    Map<String, LaidPlot> laid = new LinkedHashMap<>();
    Map<String, String> lawnOf = new LinkedHashMap<>();
    for (LaidLawn lawn : layout.lawns()) {
      for (LaidPlot plot : lawn.plots()) {
        laid.put(plot.code(), plot);
        lawnOf.put(plot.code(), lawn.lawn().name());
      }
    }
    List<List<String>> rows = new ArrayList<>();
    for (Plot plot : TrialValues.plots(layout)) {
      LaidPlot place = Objects.requireNonNull(laid.get(plot.code()));
      List<String> row = new ArrayList<>(plot(plot));
      row.add(text(lawnOf.get(plot.code())));
      row.add(area(place.place().plot().getArea()));
      row.add(area(place.place().measured().getArea()));
      rows.add(row);
    }
    return new PackageTable(PLOTS, rows, List.of("plot"));
  }

  private static List<String> plot(Plot plot) {
    return List.of(
        plot.code(),
        plot.unit(),
        plot.arm(),
        text(plot.secondArm()),
        text(plot.row()),
        text(plot.column()));
  }

  private static String area(double areaM2) {
    return String.format(Locale.ROOT, "%.3f", areaM2);
  }

  /**
   * A table for each outcome, by the name of its file, with one row a sample: its plot with all
   * that the layout says of it, and its value, so that it can be analysed as it stands.
   */
  static Map<String, PackageTable> values(TrialLayout layout, TrialValues values) {
    Map<String, Plot> plots = new LinkedHashMap<>();
    TrialValues.plots(layout).forEach(plot -> plots.put(plot.code(), plot));
    Map<String, PackageTable> tables = new LinkedHashMap<>();
    values
        .byOutcome()
        .forEach(
            (outcome, samples) -> {
              String file = TrialPackageFile.valuesOf(tables.size() + 1, outcome.name());
              tables.put(file, values(outcome, samples, plots));
            });
    return tables;
  }

  private static PackageTable values(
      Outcome outcome, List<CleanReading> samples, Map<String, Plot> plots) {
    List<Column> columns = new ArrayList<>(PLOTS.subList(0, PLOT_CELLS));
    columns.add(new Column("date", "date", "").required());
    columns.add(Column.text("rater"));
    columns.add(Column.text("sample"));
    columns.add(column(outcome, columns, samples));
    boolean partly = samples.stream().anyMatch(CleanReading::isPartlyBelow);
    if (partly) {
      columns.add(
          new Column(
              HALF_LIMITS,
              "number",
              "How much of the value stands for measurements below detection, at half their limit;"
                  + " the others of that sample were measured. The findings count it as below"
                  + " detection."));
    }
    List<List<String>> rows = new ArrayList<>();
    for (CleanReading sample : samples) {
      List<String> row = new ArrayList<>(plot(Objects.requireNonNull(plots.get(sample.plot()))));
      row.add(sample.date().toString());
      row.add(text(sample.given().rater()));
      row.add(text(sample.given().sample()));
      row.add(value(sample));
      if (partly) {
        row.add(sample.isPartlyBelow() ? Double.toString(sample.limits() / 2) : "");
      }
      rows.add(row);
    }
    return PackageTable.keyed(columns, rows, List.of("plot", "date", "rater", "sample"), 2);
  }

  /** A mean that limits are part of is no limit: it stands with each of them at half. */
  private static String value(CleanReading sample) {
    return sample.isPartlyBelow()
        ? Double.toString(sample.withLimitsAt(0.5))
        : (sample.belowDetection() ? "<" : "") + sample.value();
  }

  private static Column column(Outcome outcome, List<Column> others, List<CleanReading> samples) {
    boolean taken = others.stream().anyMatch(other -> other.name().equals(outcome.name()));
    boolean limits = samples.stream().anyMatch(CleanReading::belowDetection);
    boolean isRating = outcome.kind() == Outcome.Kind.RATING && !limits;
    Column column =
        new Column(
                taken ? outcome.name() + " value" : outcome.name(),
                isRating ? "number" : "string",
                "In %s; <2 is below a detection limit of 2. Duplicates are averaged, plots that were left out are not here."
                    .formatted(outcome.unit()))
            .required();
    Double low = outcome.low();
    Double high = outcome.high();
    return isRating && low != null && high != null
        ? column.with("minimum", low).with("maximum", high)
        : column;
  }
}
