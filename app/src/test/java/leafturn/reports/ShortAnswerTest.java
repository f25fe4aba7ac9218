package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShortAnswerTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Mow today and return the clippings.           | Mow today and return the clippings.  |
          Mow today and return the clippings. Be quick. | Mow today and return the clippings.  | Be quick.
          Leave it: not due yet; next look on 3 June.   | Leave it: not due yet; next look on 3 June. |
          Raise the deck and cut twice: to 90 mm today, to 76 mm on Friday; return each time. | Raise the deck and cut twice. | To 90 mm today, to 76 mm on Friday; return each time.
          Mow today and collect: annual bluegrass is in seed here. Not to beds. | Mow today and collect. | Annual bluegrass is in seed here. Not to beds.
          """)
  void theHeadlineSaysWhatToDoAndTheRestFollows(String sentence, String headline, String rest) {
    ShortAnswer answer = ShortAnswer.of(sentence);
    assertThat(answer.headline()).isEqualTo(headline);
    assertThat(answer.rest().replace("90\u00a0mm", "90 mm").replace("76\u00a0mm", "76 mm"))
        .isEqualTo(rest == null ? "" : rest);
  }

  @Test
  void anAnswerWithoutAPlaceToCutStaysWhole() {
    String sentence = "Wait for the dry hours of today, about 14 to 18, then mow and return.";
    assertThat(ShortAnswer.of(sentence)).isEqualTo(new ShortAnswer(sentence, ""));
  }
}
