package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.findings.TrialFacts.Randomisation;
import org.jspecify.annotations.Nullable;

/** Generates split yards: returned and collected on the halves of several yards. */
final class Yards {
  static final Contrast MAIN = new Contrast("returned", "collected");

  private final Random random;
  private final int yards;
  private final double[] days;
  private double effect;
  private double spread = 1;

  Yards(long seed, int yards, double... days) {
    this.random = new Random(seed);
    this.yards = yards;
    this.days = days;
  }

  Yards effect(double size) {
    effect = size;
    return this;
  }

  Yards spread(double size) {
    spread = size;
    return this;
  }

  static Outcome outcome(@Nullable Double margin, boolean primary) {
    return outcome(Outcome.Kind.MEASUREMENT, Outcome.Scale.IDENTITY, margin, primary);
  }

  static Outcome outcome(
      Outcome.Kind kind, Outcome.Scale scale, @Nullable Double margin, boolean primary) {
    return new Outcome(
        "quality", kind, "", null, null, scale, Outcome.Summary.SEASON_MEAN, margin, primary);
  }

  TrialFacts facts() {
    return facts(true, Randomisation.free(1L));
  }

  TrialFacts facts(boolean ended, Randomisation randomisation) {
    return facts(Design.UNITS, MAIN, yards, ended, randomisation);
  }

  /** A trial of another design, each yard one unit. */
  static TrialFacts facts(
      Design design, Contrast main, int yards, boolean ended, Randomisation randomisation) {
    return new TrialFacts(
        "Linden Street",
        "",
        design,
        "practice",
        design == Design.LISTED ? "lawn" : "yard",
        List.of(main),
        yards,
        yards,
        ended,
        Double.NaN,
        randomisation,
        PlanRecord.NONE);
  }

  List<Plot> plots() {
    List<Plot> plots = new ArrayList<>();
    for (int yard = 1; yard <= yards; yard++) {
      String unit = "yard %02d".formatted(yard);
      plots.add(Plot.of(unit + " r", unit, "returned"));
      plots.add(Plot.of(unit + " c", unit, "collected"));
    }
    return plots;
  }

  /** Values with spread between yards, halves, dates and readings. */
  List<PlotReading> readings() {
    List<PlotReading> readings = new ArrayList<>();
    double[] dateMeans = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      dateMeans[i] = random.nextGaussian();
    }
    String unit = "";
    double yardMean = 0;
    for (Plot plot : plots()) {
      if (!plot.unit().equals(unit)) {
        unit = plot.unit();
        yardMean = 2 * spread * random.nextGaussian();
      }
      double half = 0.5 * spread * random.nextGaussian();
      double mean = 20 + yardMean + half + (plot.arm().equals("returned") ? effect : 0);
      for (int i = 0; i < days.length; i++) {
        double value = mean + dateMeans[i] + 0.7 * spread * random.nextGaussian();
        readings.add(new PlotReading(plot.code(), "day " + days[i], days[i], value, false));
      }
    }
    return readings;
  }

  Findings findings(Outcome outcome) {
    return Findings.of(facts(), plots(), List.of(outcome), Map.of(outcome.name(), readings()));
  }
}
