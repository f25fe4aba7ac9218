package leafturn.trials.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The starting values of variances. */
class SpreadTest {
  @Test
  void everyRowHasAMeaningASourceAndAStatus() {
    assertThat(Spread.rows())
        .allSatisfy(
            row -> {
              assertThat(row.low()).isLessThan(row.high());
              assertThat(row.meaning()).isNotBlank();
              assertThat(row.source()).isNotBlank();
              assertThat(Set.of("published", "derived", "assumed", "common practice"))
                  .contains(row.status());
            });
    assertThat(Spread.rows()).extracting(Spread::name).doesNotHaveDuplicates();
  }

  @Test
  void everyOutcomeHasEveryPartOnce() {
    for (String outcome : Spread.outcomes()) {
      assertThat(Spread.of(outcome))
          .extracting(Spread::part)
          .as(outcome)
          .containsExactlyInAnyOrder(Spread.Part.values());
    }
  }

  @Test
  void everyReferenceIsListed() throws IOException {
    String references = Files.readString(Path.of("..", "docs", "references.md"));
    assertThat(Spread.rows())
        .flatExtracting(Spread::references)
        .allSatisfy(key -> assertThat(references).contains("- **" + key + "** "));
    assertThat(Spread.rows())
        .filteredOn(row -> row.status().equals("published"))
        .allSatisfy(row -> assertThat(row.references()).isNotEmpty());
  }

  @Test
  void aShareStandsForTheVarianceOfALogarithm() {
    Spread core =
        Spread.of("soil phosphorus").stream()
            .filter(row -> row.part() == Spread.Part.CORE)
            .findFirst()
            .orElseThrow();
    assertThat(core.asVariance(0.4)).isCloseTo(Math.log(1.16), within(1e-12));
    Spread rating =
        Spread.of("visual rating").stream()
            .filter(row -> row.part() == Spread.Part.CORE)
            .findFirst()
            .orElseThrow();
    assertThat(rating.asVariance(0.65)).isCloseTo(0.4225, within(1e-12));
  }
}
