package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.CLIPPING_N;
import static leafturn.advice.evidence.Course.DRY;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Yield and clipping N of returned over collected plots, where N is short and where it is ample.
 */
final class ReturnEffect {
  private static final int YEARS = 4;
  private static final double[] RATES = {0, 98, 196, 392};

  private ReturnEffect() {}

  static List<Measured> on(TrialGround ground) {
    List<Measured> measured = new ArrayList<>();
    for (double rate : RATES) {
      measured.addAll(atRate(ground, rate));
    }
    measured.add(irrigated(ground, 0));
    measured.add(irrigated(ground, 392));
    measured.add(halfRate(ground));
    for (double organicMatter : new double[] {0.05, 0.09}) {
      measured.add(ample(ground, organicMatter, 392));
      measured.add(ample(ground, organicMatter, 600));
    }
    return measured;
  }

  private static List<Measured> atRate(TrialGround ground, double rate) {
    Course returned = ground.run(Plot.TALL_FESCUE, Treatment.returned(rate), YEARS);
    Course collected = ground.run(Plot.TALL_FESCUE, Treatment.collected(rate), YEARS);
    String id = "return.%.0f".formatted(rate);
    return List.of(
        Measured.of(
            id,
            returned.mean(2, 3, DRY) / collected.mean(2, 3, DRY),
            "yearly %s",
            returned.yearlyRatio(collected, DRY)),
        Measured.of(
            id + ".n",
            returned.mean(2, 3, CLIPPING_N) / collected.mean(2, 3, CLIPPING_N),
            "yearly %s",
            returned.yearlyRatio(collected, CLIPPING_N)));
  }

  private static Measured irrigated(TrialGround ground, double rate) {
    Treatment collect = Treatment.collected(rate).irrigated(0.8);
    Course returned = ground.run(Plot.TALL_FESCUE, collect.withReturn(), YEARS);
    Course collected = ground.run(Plot.TALL_FESCUE, collect, YEARS);
    return Measured.of(
        "return.%.0f.irrigated".formatted(rate),
        returned.mean(2, 3, DRY) / collected.mean(2, 3, DRY),
        "yearly %s",
        returned.yearlyRatio(collected, DRY));
  }

  private static Measured halfRate(TrialGround ground) {
    Course half = ground.run(Plot.TALL_FESCUE, Treatment.returned(98), YEARS);
    Course full = ground.run(Plot.TALL_FESCUE, Treatment.collected(195), YEARS);
    return Measured.of(
        "half-rate",
        half.mean(2, 3, DRY) / full.mean(2, 3, DRY),
        "year 1 %.2f",
        half.year(1, DRY) / full.year(1, DRY));
  }

  /** The year in which returning does least. */
  private static Measured ample(TrialGround ground, double organicMatter, double rate) {
    Plot plot = Plot.TALL_FESCUE.with(Map.of("om", organicMatter));
    Course returned = ground.run(plot, Treatment.returned(rate), YEARS);
    Course collected = ground.run(plot, Treatment.collected(rate), YEARS);
    double least = Double.POSITIVE_INFINITY;
    for (int year = 1; year <= YEARS; year++) {
      least = Math.min(least, returned.year(year, DRY) / collected.year(year, DRY));
    }
    return Measured.of(
        "ample.%.0f.%.0f".formatted(100 * organicMatter, rate),
        least,
        "yearly %s",
        returned.yearlyRatio(collected, DRY));
  }
}
