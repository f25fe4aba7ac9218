package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The property check finds a failing case and names the seed that brings it back. */
class PropertyTest {
  private static final String SHARE = "leafturn.cases.share";

  private final String before = System.getProperty(SHARE, "1");

  @AfterEach
  void putBack() {
    System.setProperty(SHARE, before);
  }

  @ParameterizedTest
  @CsvSource({"1, 10000", "0.01, 100", "0.00001, 1", "0, 1"})
  void aShareOfTheCasesCanBeAskedFor(String share, int cases) {
    System.setProperty(SHARE, share);

    assertThat(Property.cases(10_000)).isEqualTo(cases);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2", "-1", "all", "1e-2", ""})
  void aShareThatIsNoneIsRefused(String share) {
    System.setProperty(SHARE, share);

    assertThatThrownBy(() -> Property.cases(10))
        .hasMessage("leafturn.cases.share is \"" + share + "\", but must be a number from 0 to 1");
  }

  @Test
  void everyCaseIsCheckedWithItsOwnNumbers() {
    List<Long> numbers = new ArrayList<>();

    Property.forAll(7, 100, random -> numbers.add(random.nextLong()));

    assertThat(numbers).hasSize(100).doesNotHaveDuplicates();
  }

  @Test
  void aFailureNamesTheSeedThatBringsItBack() {
    Property.Check small = random -> assertThat(random.nextInt(1000)).isLessThan(990);

    assertThatThrownBy(() -> Property.forAll(11, 10_000, small))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("from seed 11")
        .satisfies(
            failure -> {
              String message = String.valueOf(failure.getMessage());
              String own = message.replaceAll("(?s).*Property\\.one\\((-?\\d+)L.*", "$1");
              assertThatThrownBy(() -> Property.one(Long.parseLong(own), small))
                  .isInstanceOf(AssertionError.class);
            });
  }
}
