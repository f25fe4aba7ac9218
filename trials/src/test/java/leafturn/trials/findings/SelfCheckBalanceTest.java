package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Objects;
import leafturn.trials.analysis.paired.PairedDifference;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In balanced data the season by pairs and by the mixed models is the same. */
class SelfCheckBalanceTest {
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void bothWaysAgree(long seed) {
    Findings found =
        new Yards(seed, 8, 0, 20, 55, 90).effect(seed * 0.1).findings(Yards.outcome(1.0, true));
    OutcomeFindings own = found.outcomes().get(0);
    SelfCheck check = Objects.requireNonNull(own.support().selfCheck());
    assertThat(check.holds()).isTrue();
    Effect effect = own.effects().get(0);
    DatesModel.Differences season =
        Objects.requireNonNull(own.support().dates()).differences().get(0);
    assertThat(season.season()).isCloseTo(effect.estimated().difference(), within(1e-6));
  }

  /** With the values of one half shifted after the pairs were formed, it must not hold. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatIsNotTheSameIsSeen(long seed) {
    Yards yards = new Yards(seed, 8, 0, 20, 55, 90);
    OutcomeFindings own = yards.findings(Yards.outcome(1.0, true)).outcomes().get(0);
    double[] shifted = own.pairs().differences();
    shifted[0] += 0.01;
    ModelColumns columns = new ModelColumns(yards.facts(), own.table(), new double[0]);
    SelfCheck check =
        SelfCheck.of(
            columns,
            own.summaries(),
            PairedDifference.of(shifted),
            own.support().dates(),
            new ArrayList<>());
    assertThat(Objects.requireNonNull(check).holds()).isFalse();
  }
}
