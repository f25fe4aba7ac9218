package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a check character promises. */
class BlindCodesClosedFormTest {
  private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTWXYZ";

  private static List<String> codes() {
    return BlindCodes.of(Chance.of(5, Purpose.CODES), 300, List.of());
  }

  @Test
  void codesAreDifferentAndKnownAgainInAnyCase() {
    List<String> codes = codes();
    assertThat(new HashSet<>(codes)).hasSize(300);
    assertThat(codes)
        .allMatch(code -> code.matches("[%s]{7}".formatted(ALPHABET)))
        .allMatch(BlindCodes::isCode)
        .allMatch(code -> BlindCodes.isCode(" " + code.toLowerCase(java.util.Locale.ROOT)));
  }

  @Test
  void everyWrongCharacterAndEverySwapIsNoticed() {
    for (String code : codes().subList(0, 40)) {
      for (int at = 0; at < code.length(); at++) {
        for (char other : ALPHABET.toCharArray()) {
          String wrong = code.substring(0, at) + other + code.substring(at + 1);
          assertThat(BlindCodes.isCode(wrong)).as(wrong).isEqualTo(wrong.equals(code));
        }
      }
      for (int at = 0; at < 5; at++) {
        char[] swapped = code.toCharArray();
        swapped[at] = code.charAt(at + 1);
        swapped[at + 1] = code.charAt(at);
        String wrong = new String(swapped);
        assertThat(BlindCodes.isCode(wrong)).as(wrong).isEqualTo(wrong.equals(code));
      }
    }
  }
}
