package leafturn.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ParameterTableTest {
  private static final Set<String> STATUSES =
      Set.of("published", "derived", "tuned", "assumed", "management");

  @Test
  void everyRowHasAPlausibleValueAMeaningAndASource() {
    assertThat(ParameterTable.rows())
        .hasSizeGreaterThan(200)
        .allSatisfy(
            row -> {
              assertThat(row.plausible(row.value())).as("value in its range").isTrue();
              assertThat(row.low()).isLessThan(row.high());
              assertThat(row.meaning()).isNotBlank();
              assertThat(row.used()).isNotBlank();
              assertThat(row.source()).isNotBlank();
              assertThat(row.unit()).isNotBlank();
              assertThat(STATUSES).contains(row.status());
            });
  }

  @Test
  void everyPublishedValueLeadsToAReference() throws IOException {
    String references = Files.readString(Path.of("..", "docs", "references.md"));
    assertThat(ParameterTable.rows())
        .filteredOn(row -> row.status().equals("published"))
        .allSatisfy(row -> assertThat(row.references()).as(row.name()).isNotEmpty());
    assertThat(ParameterTable.rows())
        .flatExtracting(Parameter::references)
        .allSatisfy(key -> assertThat(references).contains("- **" + key + "** "));
  }

  @ParameterizedTest
  @EnumSource(Species.class)
  void everySpeciesHasEveryParameterOnce(Species species) {
    for (String name : ParameterTable.names()) {
      assertThat(ParameterTable.rows())
          .filteredOn(row -> row.name().equals(name))
          .filteredOn(row -> row.species() == null || row.species() == species)
          .as(name)
          .hasSize(1);
    }
  }

  @Test
  void changesWinAndUnknownNamesAreRefused() {
    Parameters defaults = Parameters.of(Species.TALL_FESCUE);
    assertThat(defaults.with(Map.of("gmax", 14.0)).get("gmax")).isEqualTo(14);
    assertThat(defaults.get("gmax")).isEqualTo(19);
    assertThatThrownBy(() -> defaults.with(Map.of("gmx", 14.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("gmx");
  }

  @Test
  void possibleIsWiderThanPlausibleButKeepsSharesWithinOne() {
    Parameter ceiling = ParameterTable.find("gmax", Species.TALL_FESCUE).orElseThrow();
    assertThat(ceiling.plausible(7)).isFalse();
    assertThat(ceiling.possible(7)).isTrue();
    assertThat(ceiling.possible(-1)).isFalse();
    assertThat(ceiling.possible(Double.NaN)).isFalse();
    Parameter efficiency = ParameterTable.find("eff", Species.TALL_FESCUE).orElseThrow();
    assertThat(efficiency.possible(1)).isTrue();
    assertThat(efficiency.possible(1.01)).isFalse();
  }
}
