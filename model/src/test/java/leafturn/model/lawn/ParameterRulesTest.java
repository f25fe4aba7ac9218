package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that contradict one another are refused before a run, by name. */
class ParameterRulesTest {
  @ParameterizedTest
  @CsvSource({
    "wp, 0.3, fc",
    "fc, 0.5, sat",
    "nlo, 0.06, nhi",
    "h, 0.9, h cns / cnm",
    "Dr0, 90, Dr0",
    "rho, 0, above 0",
    "ptab, 1, ptab"
  })
  void contradictionsAreNamed(String name, double value, String named) {
    Parameters parameters = Parameters.of(Species.TALL_FESCUE).with(Map.of(name, value));

    assertThatThrownBy(() -> new LawnEquations(parameters))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(named);
  }

  @ParameterizedTest
  @CsvSource({"beta_to, 36", "beta_tm, 20", "beta_tb, 22"})
  void theBetaResponseMustRiseFromBaseToMaximum(String name, double value) {
    Parameters parameters =
        Parameters.of(Species.TALL_FESCUE).with(Map.of("tresp", 1.0, name, value));

    assertThatThrownBy(() -> new LawnEquations(parameters)).hasMessageContaining(name);
  }
}
