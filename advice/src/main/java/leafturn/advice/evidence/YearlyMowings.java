package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.MOWINGS;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.advice.evidence.Treatment.Mowing;

/** Mowings a year by the one-third rule against weekly ones, and what returning adds. */
final class YearlyMowings {
  private static final int YEARS = 4;

  private YearlyMowings() {}

  static List<Measured> on(TrialGround ground) {
    List<Measured> measured = new ArrayList<>();
    for (double organicMatter : new double[] {0.05, 0.072}) {
      measured.addAll(at(ground, organicMatter, 147));
      measured.addAll(at(ground, organicMatter, 245));
    }
    return measured;
  }

  private static List<Measured> at(TrialGround ground, double organicMatter, double rate) {
    Plot plot = Plot.TALL_FESCUE.with(Map.of("om", organicMatter));
    Treatment collect = Treatment.collected(rate);
    Treatment thirds = collect.mown(Mowing.ONE_THIRD);
    Course weekly = ground.run(plot, collect.mown(Mowing.WEEKLY_ROUND), YEARS);
    Course byThirds = ground.run(plot, thirds, YEARS);
    Course returned = ground.run(plot, thirds.withReturn(), YEARS);
    String id = "mowings.%.0f.%.0f".formatted(1000 * organicMatter, rate);
    return List.of(
        Measured.of(
            id,
            100 * (1 - byThirds.mean(MOWINGS) / weekly.mean(MOWINGS)),
            "weekly %.1f, one-third %.1f",
            weekly.mean(MOWINGS),
            byThirds.mean(MOWINGS)),
        Measured.of(
            id + ".returned",
            returned.mean(MOWINGS) - byThirds.mean(MOWINGS),
            "year 1 %+.0f, year 2 %+.0f",
            returned.year(1, MOWINGS) - byThirds.year(1, MOWINGS),
            returned.year(2, MOWINGS) - byThirds.year(2, MOWINGS)));
  }
}
