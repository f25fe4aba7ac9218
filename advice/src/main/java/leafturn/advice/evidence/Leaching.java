package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.LEACHED;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.NitrogenLabel;
import leafturn.model.lawn.NitrogenTracer;

/** N leached under bluegrass by rate, collected and returned; all of it and the fertiliser's. */
final class Leaching {
  private static final int YEARS = 4;
  private static final double[] RATES = {98, 147, 245};

  private final TrialGround ground;
  private final Map<String, Double> leachedKg = new HashMap<>();
  private final List<Measured> measured = new ArrayList<>();

  private Leaching(TrialGround ground) {
    this.ground = ground;
  }

  static List<Measured> on(TrialGround ground) {
    Leaching leaching = new Leaching(ground);
    for (double rate : RATES) {
      leaching.at(rate, "collected", Treatment.collected(rate));
      leaching.at(rate, "returned", Treatment.returned(rate));
    }
    leaching.steepness("collected");
    leaching.steepness("returned");
    return leaching.measured;
  }

  private void at(double rate, String fate, Treatment treatment) {
    LawnState eve = ground.past(Plot.BLUEGRASS, treatment.past(TrialGround.PAST_N));
    NitrogenTracer tracer = new NitrogenTracer(eve);
    Course course = ground.run(Plot.BLUEGRASS, treatment, eve, YEARS, tracer);
    double labelledKg = 10 * tracer.leached(NitrogenLabel.FERTILISER) / YEARS;
    String id = "leaching.%.0f.%s".formatted(rate, fate);
    leachedKg.put(id, course.mean(LEACHED));
    measured.add(
        Measured.of(
            id,
            100 * course.mean(LEACHED) / rate,
            "of labelled fertiliser %.1f %%; ammonia %.0f, denitrified %.1f kg N/ha",
            100 * labelledKg / rate,
            course.mean(year -> year.losses().volatilisedKgPerHa()),
            course.mean(year -> year.losses().denitrifiedKgPerHa())));
  }

  private void steepness(String fate) {
    double high = leachedKg.getOrDefault("leaching.245." + fate, Double.NaN);
    double usual = leachedKg.getOrDefault("leaching.147." + fate, Double.NaN);
    measured.add(
        Measured.of("leaching.steep." + fate, high / usual, "%.1f/%.1f kg N/ha", high, usual));
  }
}
