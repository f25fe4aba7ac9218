package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.PlotReading;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.findings.TrialFacts.Randomisation;
import org.jspecify.annotations.Nullable;

/** A split-yard trial made up from random numbers: any number of yards, dates and outcomes. */
record GeneratedTrial(
    TrialFacts facts,
    List<Plot> plots,
    List<Outcome> outcomes,
    Map<String, List<PlotReading>> readings) {
  private static final Contrast MAIN = new Contrast("returned", "collected");

  /**
   * @param yards 1 or more
   */
  static GeneratedTrial of(SplittableRandom random, int yards, boolean ended) {
    int dates = 1 + random.nextInt(5);
    double effect = random.nextInt(3) * random.nextDouble();
    List<Plot> plots = new ArrayList<>();
    for (int yard = 1; yard <= yards; yard++) {
      plots.add(Plot.of(yard + "r", "yard " + yard, "returned"));
      plots.add(Plot.of(yard + "c", "yard " + yard, "collected"));
    }
    @Nullable Double margin = random.nextBoolean() ? 0.2 + random.nextDouble() : null;
    boolean ratingFirst = random.nextBoolean();
    Outcome rating =
        outcome("quality", Outcome.Kind.RATING, Outcome.Scale.IDENTITY, margin, ratingFirst);
    Outcome soil =
        outcome(
            "potassium",
            Outcome.Kind.SOIL,
            Outcome.Scale.LOG,
            margin == null ? null : 1 + margin,
            !ratingFirst);
    Outcome weight =
        outcome("clippings", Outcome.Kind.MEASUREMENT, Outcome.Scale.IDENTITY, margin, false);
    List<Outcome> outcomes = ratingFirst ? List.of(rating, soil, weight) : List.of(soil, weight);
    Map<String, List<PlotReading>> readings =
        Map.of(
            "quality", readings(random, plots, dates, effect, Outcome.Kind.RATING),
            "potassium", readings(random, plots, dates, effect, Outcome.Kind.SOIL),
            "clippings", readings(random, plots, dates, effect, Outcome.Kind.MEASUREMENT));
    return new GeneratedTrial(facts(yards, ended), plots, outcomes, readings);
  }

  private static Outcome outcome(
      String name,
      Outcome.Kind kind,
      Outcome.Scale scale,
      @Nullable Double margin,
      boolean primary) {
    return new Outcome(
        name,
        kind,
        kind == Outcome.Kind.RATING ? "1-9" : "mg/kg",
        kind == Outcome.Kind.RATING ? 1.0 : null,
        kind == Outcome.Kind.RATING ? 9.0 : null,
        scale,
        Outcome.Summary.SEASON_MEAN,
        margin,
        primary);
  }

  private static TrialFacts facts(int yards, boolean ended) {
    return new TrialFacts(
        "Linden Street",
        "Does returning clippings keep the turf as good?",
        Design.UNITS,
        "practice",
        "yard",
        List.of(MAIN),
        yards,
        yards + 1,
        ended,
        Double.NaN,
        Randomisation.free(20260401L),
        PlanRecord.NONE);
  }

  private static List<PlotReading> readings(
      SplittableRandom random, List<Plot> plots, int dates, double effect, Outcome.Kind kind) {
    List<PlotReading> readings = new ArrayList<>();
    for (Plot plot : plots) {
      double mean = (plot.arm().equals("returned") ? effect : 0) + gaussian(random);
      for (int date = 0; date < dates; date++) {
        double value = mean + 0.5 * gaussian(random);
        readings.add(
            new PlotReading(
                plot.code(),
                "2026-0%d-15".formatted(4 + date),
                30.0 * date,
                switch (kind) {
                  case RATING -> Math.max(1, Math.min(9, Math.rint(6 + value)));
                  case SOIL -> Math.exp(4 + 0.2 * value);
                  default -> 20 + value;
                },
                kind == Outcome.Kind.SOIL && random.nextInt(40) == 0));
      }
    }
    return readings;
  }

  private static double gaussian(SplittableRandom random) {
    double sum = -6;
    for (int i = 0; i < 12; i++) {
      sum += random.nextDouble();
    }
    return sum;
  }

  Findings findings() {
    return Findings.of(facts, plots, outcomes, readings);
  }
}
