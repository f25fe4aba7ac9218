package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities in words. */
class QuantityWordsTest {
  @ParameterizedTest
  @CsvSource({"1.83, 1.8", "2.19, 2.2", "34.5, 35", "3, 3", "120, 120", "0, 0"})
  void briefNumbersHaveTwoDigitsUnlessTheyAreWhole(double value, String words) {
    assertThat(QuantityWords.brief(value)).isEqualTo(words);
  }
}
