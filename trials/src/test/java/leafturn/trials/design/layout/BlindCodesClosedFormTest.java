package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a check character promises. */
class BlindCodesClosedFormTest {
  private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTWXYZ";

  private static List<String> codes() {
    Chance chance = Chance.of(5, Purpose.CODES);
    Set<String> codes = new LinkedHashSet<>();
    for (int i = 0; i < 300; i++) {
      codes.add(BlindCodes.of(chance, codes));
    }
    return List.copyOf(codes);
  }

  @Test
  void codesAreDifferentAndKnownAgainInAnyCase() {
    List<String> codes = codes();
    assertThat(codes).hasSize(300);
    assertThat(codes)
        .allMatch(code -> code.matches("[%s]{7}".formatted(ALPHABET)))
        .allMatch(BlindCodes::isCode)
        .allMatch(code -> BlindCodes.isCode(" " + code.toLowerCase(java.util.Locale.ROOT)));
  }

  @Test
  void aCodeThatIsGivenIsNotGivenAgain() {
    String first = BlindCodes.of(Chance.of(5, Purpose.CODES), Set.of());
    assertThat(BlindCodes.of(Chance.of(5, Purpose.CODES), Set.of(first)))
        .isNotEqualTo(first)
        .isEqualTo(codes().get(1));
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
