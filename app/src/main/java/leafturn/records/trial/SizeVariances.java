package leafturn.records.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.NearestName;
import leafturn.records.trial.SizeDocument.UsedVariance;
import leafturn.trials.power.Layout;
import leafturn.trials.power.LogScale;
import leafturn.trials.power.PlotVariance;
import leafturn.trials.power.Spread;
import leafturn.trials.power.Spread.Part;
import leafturn.trials.power.Surroundings;
import org.jspecify.annotations.Nullable;

/** Reads what makes plots differ: starting values of an outcome by name, and the file's own. */
final class SizeVariances {
  private static final double MOST = 1e12;
  private static final double MOST_CV = 10;
  private static final double MOST_SD = 1e6;
  private static final String OWN = "this file";

  private final JsonObject root;
  private final JsonObject own;
  private final Layout layout;
  private final Map<Part, Spread> starting = new EnumMap<>(Part.class);
  private final Map<Part, Double> given = new EnumMap<>(Part.class);
  private final List<UsedVariance> used = new ArrayList<>();
  private @Nullable String outcome;
  private double wholePlot;
  private double secondStrip;

  SizeVariances(JsonObject root, Layout layout) {
    this.root = root;
    this.layout = layout;
    readOutcome();
    SizeFields.onlyOne(root, "sd", "cv", "sdOfDifference");
    this.own = root.object("variances");
    readWhole();
    readSpread();
    readOwn();
    readCorrelation();
    if (layout.hasSecondFactor()) {
      wholePlot = named("wholePlot");
      secondStrip = layout == Layout.STRIP_PLOT ? named("secondStrip") : 0;
    }
    requireSome();
  }

  private void readOutcome() {
    String name = root.text("outcome");
    if (name == null) {
      return;
    }
    List<Spread> rows = Spread.of(name);
    if (rows.isEmpty()) {
      root.fault(
          "outcome",
          "%s has no starting values; %s"
              .formatted(Faults.quoted(name), NearestName.advice(name, Spread.outcomes())));
      return;
    }
    outcome = name;
    rows.forEach(row -> starting.put(row.part(), row));
  }

  private void readWhole() {
    Double sd = SizeFields.above0(root, "sd", SizeFields.LARGEST, "a standard deviation");
    Double cv = SizeFields.above0(root, "cv", MOST_CV, "a coefficient of variation");
    Double ofDifference =
        SizeFields.above0(root, "sdOfDifference", SizeFields.LARGEST, "a standard deviation");
    if (sd != null) {
      give(Part.PLOT, sd, "unit of the outcome", sd * sd);
    }
    if (cv != null) {
      give(Part.PLOT, cv, "CV", LogScale.variance(cv));
    }
    if (ofDifference != null) {
      give(Part.PLOT, ofDifference, "sd of a difference", ofDifference * ofDifference / 2);
    }
    if (root.has("sd") || root.has("cv") || root.has("sdOfDifference")) {
      starting.clear();
      SizeFields.onlyOne(
          root, root.has("sd") ? "sd" : root.has("cv") ? "cv" : "sdOfDifference", "outcome");
    }
  }

  /** A person's own values in the terms of the starting values: CV on the log scale, else SD. */
  private void readSpread() {
    JsonObject spread = root.object("spread");
    boolean log = SizeEffects.isLog(root, isRelative());
    for (Part part : Part.values()) {
      if (part != Part.DATE_CORRELATION) {
        Double value = spread.number(part.word(), 0, log ? MOST_CV : MOST_SD, "");
        if (value != null) {
          refuseBeside(spread, part);
          give(part, value, log ? "CV" : "sd", log ? LogScale.variance(value) : value * value);
        }
      }
    }
    spread.refuseOthers();
  }

  private void refuseBeside(JsonObject json, Part part) {
    if (given.containsKey(part)) {
      json.fault(part.word(), "it stands beside another value of the same; give one of them.");
    }
  }

  private void readOwn() {
    for (Part part : Part.values()) {
      if (part == Part.DATE_CORRELATION) {
        continue;
      }
      Double variance = own.number(part.word(), 0, MOST, "a variance");
      if (variance != null) {
        refuseBeside(own, part);
        give(part, variance, "variance", variance);
      }
    }
  }

  private void readCorrelation() {
    Double correlation = root.number("dateCorrelation", 0, 0.999, "");
    if (correlation != null) {
      give(Part.DATE_CORRELATION, correlation, "-", correlation);
    }
  }

  private void give(Part part, double value, String unit, double variance) {
    given.put(part, variance);
    used.add(
        new UsedVariance(part.word(), value, unit, variance, Double.NaN, Double.NaN, OWN, "given"));
  }

  private double named(String name) {
    Double variance = own.number(name, 0, MOST, "a variance");
    if (variance == null) {
      if (!own.has(name)) {
        own.missing(name, "a variance, 0 where there is none");
      }
      return 0;
    }
    used.add(
        new UsedVariance(
            name, variance, "variance", variance, Double.NaN, Double.NaN, OWN, "given"));
    return variance;
  }

  private void requireSome() {
    boolean tried =
        root.has("outcome")
            || root.has("variances")
            || root.has("spread")
            || root.has("sd")
            || root.has("cv");
    if (!tried && !root.has("sdOfDifference")) {
      root.missing(
          "outcome",
          "the name of an outcome with starting values (%s), or variances, sd, cv or sdOfDifference of your own"
              .formatted(String.join(", ", Spread.outcomes())));
    } else if (!given.isEmpty() && total(values()) == 0) {
      root.fault(
          root.has("spread") ? "spread" : "variances",
          "all are 0; where nothing varies no trial is needed.");
    } else if (starting.isEmpty() && root.has("variances") && given.isEmpty()) {
      root.fault(
          "variances",
          "it names no variance of plots; give plot, and plotByDate, core and laboratory where they are known.");
    }
  }

  private static double total(PlotVariance all) {
    return all.plot() + all.plotByDate() + all.core() + all.laboratory();
  }

  /** The outcome whose starting values are used, or null. */
  @Nullable String outcome() {
    return outcome;
  }

  /** Whether the outcome varies by a share of itself; null where that is not known. */
  @Nullable Boolean isRelative() {
    Spread core = starting.get(Part.CORE);
    return core == null ? null : core.isRelative();
  }

  /** Whether a part is at its starting value, so that it has a range. */
  boolean hasRange() {
    return starting.keySet().stream().anyMatch(part -> !given.containsKey(part));
  }

  /** Every variance used, starting values first. */
  List<UsedVariance> used() {
    List<UsedVariance> all = new ArrayList<>();
    starting.forEach(
        (part, row) -> {
          if (!given.containsKey(part)) {
            all.add(
                new UsedVariance(
                    part.word(),
                    row.value(),
                    row.unit(),
                    row.asVariance(row.value()),
                    row.low(),
                    row.high(),
                    row.source(),
                    row.status()));
          }
        });
    all.addAll(used);
    return all;
  }

  /** The variances at their values. */
  PlotVariance values() {
    return at(Spread::value);
  }

  /** The variances at the low ends of their ranges. */
  PlotVariance low() {
    return at(Spread::low);
  }

  /** The variances at the high ends of their ranges. */
  PlotVariance high() {
    return at(Spread::high);
  }

  private PlotVariance at(ToDoubleFunction<Spread> end) {
    return new PlotVariance(
        part(Part.PLOT, end),
        part(Part.PLOT_BY_DATE, end),
        part(Part.DATE_CORRELATION, end),
        part(Part.CORE, end),
        part(Part.LABORATORY, end));
  }

  private double part(Part part, ToDoubleFunction<Spread> end) {
    Double own = given.get(part);
    Spread row = starting.get(part);
    return own != null ? own : row == null ? 0 : row.asVariance(end.applyAsDouble(row));
  }

  double wholePlot() {
    return wholePlot;
  }

  double secondStrip() {
    return secondStrip;
  }

  /**
   * Variances for simulated trials.
   *
   * @param usual of what a balanced trial takes out, where the file does not say
   */
  Surroundings surroundings(double usual) {
    double block = aside("block", usual);
    if (layout.hasFormula()) {
      return new Surroundings(block, aside("blockByDate", values().plotByDate()), 0, 0, 0, 0);
    }
    return new Surroundings(
        block,
        0,
        aside("year", usual),
        aside("blockByYear", usual),
        named("practiceByYear"),
        aside("plotByYear", 0));
  }

  private double aside(String name, double usual) {
    return own.has(name) ? named(name) : usual;
  }

  /** Reports names that do not belong to the design. */
  void end() {
    own.refuseOthers();
  }
}
