package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.clippings.TwoPoolDecay;
import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;

class ClippingsLeftClosedFormTest {
  private static final Sinking SINKING = Sinking.of(CallRules.standard());
  private static final Parameters PARAMETERS =
      Parameters.of(Species.TALL_FESCUE).with(Map.of("fm", 0.8, "km", 0.05, "ks", 0.01));
  private static final TwoPoolDecay.Litter LITTER = new TwoPoolDecay.Litter(0.8, 0.05, 0.01);

  @Test
  void unscaledDecayFollowsTheTwoExponentials() {
    ClippingsLeft left = new ClippingsLeft(PARAMETERS, SINKING, day -> false, null);
    left.fall(20, PARAMETERS.get("fm"), 30, 0);
    double referenceDays = 0;
    for (int day = 1; day <= 120; day++) {
      double today = 0.4 + 0.2 * (day % 5);
      left.decay(today, 1);
      referenceDays += today;
      assertThat(left.leftFraction())
          .isCloseTo(TwoPoolDecay.remainingFraction(LITTER, referenceDays), within(1e-13));
    }
  }

  @Test
  void halfAndNineTenthsAreTheFirstDaysAtOrBelow() {
    ClippingsLeft left = new ClippingsLeft(PARAMETERS, SINKING, day -> false, null);
    left.fall(1, PARAMETERS.get("fm"), 30, 0);
    for (int day = 0; day < 200; day++) {
      left.decay(1, 1);
    }
    int half = left.daysToHalf();
    assertThat(TwoPoolDecay.remainingFraction(LITTER, half)).isLessThanOrEqualTo(0.5);
    assertThat(TwoPoolDecay.remainingFraction(LITTER, half - 1)).isGreaterThan(0.5);
    int nineTenths = left.daysToNineTenths();
    assertThat(TwoPoolDecay.remainingFraction(LITTER, nineTenths)).isLessThanOrEqualTo(0.1);
    assertThat(TwoPoolDecay.remainingFraction(LITTER, nineTenths - 1)).isGreaterThan(0.1);
  }

  @Test
  void scarceNitrogenSlowsEachDaysLossInProportion() {
    ClippingsLeft left = new ClippingsLeft(PARAMETERS, SINKING, day -> false, null);
    left.fall(1, PARAMETERS.get("fm"), 30, 0);
    left.decay(1, 0.5);
    double lost = 0.5 * (0.8 * -Math.expm1(-0.05) + 0.2 * -Math.expm1(-0.01));
    assertThat(left.leftFraction()).isCloseTo(1 - lost, within(1e-15));
  }

  @Test
  void nothingCountsBeforeTheFirstFall() {
    ClippingsLeft left = new ClippingsLeft(PARAMETERS, SINKING, day -> false, null);
    left.decay(5, 1);
    left.fall(1, PARAMETERS.get("fm"), 30, 0);
    left.decay(100, 1);
    assertThat(left.daysToHalf()).isEqualTo(1);
  }
}
