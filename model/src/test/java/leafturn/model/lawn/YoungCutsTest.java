package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.quantity.Property;
import org.junit.jupiter.api.Test;

/**
 * In every weather, what falls from a lawn mown every few days breaks down faster than what falls
 * from the same lawn on the same day after two weeks away: common practice, no source.
 */
class YoungCutsTest {
  private static final long SEED = 20261125;
  private static final int TWO_WEEKS = 14;
  private static final int FOLLOWED_DAYS = 150;

  @Test
  void frequentCutsBreakDownFasterThanACutAfterTwoWeeksAway() {
    int cases = Property.cases(2000);
    int[] compared = new int[1];
    Property.forAll(
        SEED,
        cases,
        random -> {
          Species grass = Species.values()[random.nextInt(Species.values().length)];
          LawnEquations equations =
              new LawnEquations(Parameters.of(grass).with(Map.of("qual", 1.0)));
          int day = 60 + random.nextInt(200);
          DailyTerms terms =
              DailyTerms.asRecorded(
                  new SiteClimate(
                      RandomWeather.any(random, day + FOLLOWED_DAYS), RandomLawn.site(random)),
                  0,
                  day + FOLLOWED_DAYS,
                  Double.NaN);
          int every = 2 + random.nextInt(4);
          LastCut often = follow(equations, terms, new LastCut(day, every, day));
          LastCut away = follow(equations, terms, new LastCut(day, every, day - TWO_WEEKS));
          if (often.massG > 0.5 && away.massG > often.massG) {
            compared[0]++;
            compare(often, away);
          }
        });
    assertThat(compared[0]).as("lawns with something to cut").isGreaterThan(cases / 4);
  }

  private static void compare(LastCut often, LastCut away) {
    assertThat(often.fastFraction).isGreaterThan(away.fastFraction);
    for (int day = 1; day < FOLLOWED_DAYS; day++) {
      assertThat(often.left[day]).as("left after %d days", day).isLessThanOrEqualTo(away.left[day]);
    }
    assertThat(often.left[FOLLOWED_DAYS - 1]).isLessThan(away.left[FOLLOWED_DAYS - 1]);
  }

  private static LastCut follow(LawnEquations equations, DailyTerms terms, LastCut keeper) {
    double height = equations.parameters().get("Href");
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, height), terms);
    run.live(0, terms.days(), keeper, keeper);
    return keeper;
  }

  /**
   * Mows every few days until it goes away, then on the day of the comparison, and follows that.
   */
  private static final class LastCut implements Keeper, DayListener {
    private final int day;
    private final int every;
    private final int until;
    private final double[] left = new double[FOLLOWED_DAYS];
    private double massG;
    private double fastFraction;
    private double fast;
    private double slow;

    LastCut(int day, int every, int until) {
      this.day = day;
      this.every = every;
      this.until = until;
    }

    @Override
    public void morning(LawnRun run) {
      if (run.day() % 60 == 0) {
        run.feed(3, 0, 0, 0);
      }
    }

    @Override
    public void evening(LawnRun run) {
      boolean mows = run.day() <= until && (day - run.day()) % every == 0;
      if (mows || run.day() == day) {
        run.cut(run.equations().parameters().get("Href"), 1);
      }
    }

    @Override
    public void dayDone(LawnRun run) {
      if (run.day() == day) {
        massG = run.flow(Flows.CLIPPINGS_G);
        fastFraction = run.flow(Flows.CUT_FAST_FRACTION);
        fast = fastFraction;
        slow = 1 - fastFraction;
      } else if (run.day() > day) {
        double scale = run.flow(Flows.DECAY_SCALE);
        fast *= 1 - scale * run.flow(Flows.DECAY_FRACTION);
        slow *= 1 - scale * run.flow(Flows.DECAY_FRACTION + 1);
        left[run.day() - day] = fast + slow;
      }
    }
  }
}
