package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The property check finds a failing case and names the seed that brings it back. */
class PropertyTest {
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
