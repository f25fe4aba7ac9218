package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.SplittableRandom;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.quantity.Property;
import org.junit.jupiter.api.Test;

/**
 * Nothing comes from nowhere or goes to nowhere: lawns of every grass, with parameters anywhere in
 * their ranges, in any weather and under any keeper, close each day by the run's own account and by
 * a second one, and no store is ever negative.
 */
class LawnBalanceTest {
  private static final long SEED = 20260412;

  @Test
  void tenThousandLawnsClose() {
    int cases = Property.cases(10_000);
    int[] days = new int[1];
    int[] starved = new int[1];
    Property.forAll(
        SEED,
        cases,
        random -> {
          ClosedBox box = live(random, RandomLawn.equations(random), 60 + random.nextInt(60));
          days[0] += box.days();
          starved[0] += box.starvedDays();
        });

    assertThat(days[0]).isGreaterThan(60 * cases);
    assertThat(starved[0]).as("days on which decay lacked N").isGreaterThan(cases / 10);
  }

  @Test
  void someLawnsCloseForYears() {
    Property.forAll(
        SEED + 1,
        Property.cases(100),
        random ->
            assertThat(live(random, RandomLawn.equations(random), 2000).days()).isEqualTo(2000));
  }

  @Test
  void decayStarvedOfNitrogenNeverOverdrawsIt() {
    int cases = Property.cases(2000);
    double[] least = {1};
    int[] starved = new int[1];
    Property.forAll(
        SEED + 2,
        cases,
        random -> {
          ClosedBox box = live(random, starving(random), 90);
          starved[0] += box.starvedDays();
          least[0] = Math.min(least[0], box.leastScale());
        });

    assertThat(starved[0]).isGreaterThan(25 * cases);
    assertThat(least[0]).as("least share of the decay that N allowed").isLessThan(0.1);
  }

  /** Much matter poor in N, fast decay, and no mineral N to speak of. */
  private static LawnEquations starving(SplittableRandom random) {
    return new LawnEquations(
        Parameters.of(Species.values()[random.nextInt(Species.values().length)])
            .with(
                Map.ofEntries(
                    Map.entry("fo0", random.nextDouble(200, 1000)),
                    Map.entry("foN0", 0.004),
                    Map.entry("th0", random.nextDouble(500, 5000)),
                    Map.entry("thN0", 0.004),
                    Map.entry("kfo", 0.02),
                    Map.entry("E", 0.55),
                    Map.entry("amin", random.nextDouble()),
                    Map.entry("nh40", random.nextInt(2) * 0.01 * random.nextDouble()),
                    Map.entry("no30", random.nextInt(2) * 0.01 * random.nextDouble()),
                    Map.entry("ndep", 0.3),
                    Map.entry("mb0", 1.0),
                    Map.entry("om", 0.001))));
  }

  private static ClosedBox live(SplittableRandom random, LawnEquations equations, int days) {
    DailyTerms terms =
        DailyTerms.asRecorded(
            new SiteClimate(RandomWeather.any(random, days), RandomLawn.site(random)),
            0,
            days,
            Double.NaN);
    LawnState start = LawnModel.startState(equations, random.nextDouble(3, 150));
    LawnRun run = new LawnRun(equations, start, terms);
    ClosedBox box = new ClosedBox(equations, start);
    run.live(0, days, RandomLawn.keeper(random), box);
    return box;
  }
}
