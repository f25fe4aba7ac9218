package leafturn.trials.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leafturn.quantity.SoilLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Units in which laboratories and readers state what a plan has in another. */
class ReadingUnitPublishedTest {
  @ParameterizedTest
  @CsvFileSource(resources = "/checks/reading-units.csv", numLinesToSkip = 1)
  void isWhatTheSourceGives(
      double value, String from, String to, double expected, double tolerance, String source) {
    assertThat(ReadingUnit.of(from).to(ReadingUnit.of(to), value, null))
        .as(source)
        .isCloseTo(expected, within(tolerance));
  }

  /** 15 cm of 1.33 g/cm3 weigh 199.5 kg under a square metre: 1 lb/acre is 0.112085 g/m2 there. */
  @Test
  void anAmountOnAnAreaBecomesAShareOfTheSoilItWasTakenFrom() {
    double mgPerKg =
        ReadingUnit.of("lb/acre").to(ReadingUnit.of("mg/kg"), 100, new SoilLayer(15, 1.33));
    assertThat(mgPerKg).isCloseTo(100 * 0.112085 * 1000 / 199.5, within(1e-3));
  }

  @Test
  void whatCannotBeComparedSaysWhy() {
    assertThatThrownBy(() -> ReadingUnit.of("lb/acre").to(ReadingUnit.of("mg/kg"), 1, null))
        .hasMessageContaining(
            "only the depth of the cores and the bulk density join; give it in mg/kg");
    assertThatThrownBy(() -> ReadingUnit.of("mg/kg P").to(ReadingUnit.of("mg/kg K"), 1, null))
        .hasMessageContaining("tells of P");
    assertThatThrownBy(() -> ReadingUnit.of("mg/L").to(ReadingUnit.of("mg/kg"), 1, null))
        .hasMessageContaining("mg/L cannot be turned into mg/kg");
    assertThatThrownBy(() -> ReadingUnit.of("kg").to(ReadingUnit.of("mm"), 1, null))
        .hasMessage("kg cannot be turned into mm; give the values in mm");
    assertThat(ReadingUnit.of("g").to(ReadingUnit.of("g"), 3, null)).isEqualTo(3);
  }
}
