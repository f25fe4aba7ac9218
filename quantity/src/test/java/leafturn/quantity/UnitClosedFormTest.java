package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class UnitClosedFormTest {
  @Test
  void everyConversionWithinADimensionComesBack() {
    for (Unit from : Unit.values()) {
      for (Unit to : Unit.values()) {
        if (from.dimension() == to.dimension()) {
          assertThat(to.to(from, from.to(to, 17.3))).isCloseTo(17.3, within(1e-10));
        }
      }
    }
  }

  @Test
  void everySymbolNamesItsOwnUnit() {
    assertThat(Arrays.stream(Unit.values()).map(unit -> Unit.named(unit.symbol()).orElseThrow()))
        .containsExactly(Unit.values());
    assertThat(Unit.named(" KG/HA ")).contains(Unit.KILOGRAM_PER_HECTARE);
    assertThat(Unit.named("furlong")).isEmpty();
  }

  @Test
  void refusesToTurnOneThingIntoAnother() {
    assertThatThrownBy(() -> Unit.CELSIUS.to(Unit.FAHRENHEIT_DIFFERENCE, 5))
        .hasMessageContaining("one measures temperature, the other temperature difference");
  }

  @Test
  void listsTheUnitsOfADimension() {
    assertThat(Unit.names(Unit.Dimension.LENGTH)).isEqualTo("mm, cm, m, in, ft");
  }
}
