package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShareWordsTest {
  @ParameterizedTest
  @CsvSource({
    "0.3333333333333333, a third",
    "0.333, a third",
    "0.33, 33 %",
    "0.25, a quarter",
    "0.2, a fifth",
    "0.4, two fifths",
    "0.5, half",
    "0.275, 27.5 %",
    "0.3, 30 %"
  })
  void sharesAreSaidAsPeopleSayThem(double fraction, String words) {
    assertThat(ShareWords.of(fraction)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"0.25, A quarter", "0.3, 30 %"})
  void aSentenceBeginsWithACapital(double fraction, String words) {
    assertThat(ShareWords.beginning(fraction)).isEqualTo(words);
  }
}
