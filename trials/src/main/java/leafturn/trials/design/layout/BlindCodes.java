package leafturn.trials.design.layout;

import java.util.Locale;
import java.util.Set;

/**
 * Codes that tell nothing: six random characters and a check character, of 29 that are not mistaken
 * for each other. 29 is a prime and the weights 1 to 6 are different, so one wrong character and
 * two that are swapped are always noticed.
 */
public final class BlindCodes {
  private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTWXYZ";
  private static final int RANDOM = 6;

  private BlindCodes() {}

  /** The first code that chance gives and that is not given already. */
  static String of(Chance chance, Set<String> given) {
    String code;
    do {
      StringBuilder drawn = new StringBuilder();
      for (int i = 0; i < RANDOM; i++) {
        drawn.append(ALPHABET.charAt(chance.below(ALPHABET.length())));
      }
      code = drawn.append(check(drawn)).toString();
    } while (given.contains(code));
    return code;
  }

  /** True for a text that is one of these codes, whatever its case, as far as its check tells. */
  public static boolean isCode(String text) {
    String code = text.strip().toUpperCase(Locale.ROOT);
    return code.length() == RANDOM + 1
        && code.chars().allMatch(character -> ALPHABET.indexOf(character) >= 0)
        && check(code.substring(0, RANDOM)) == code.charAt(RANDOM);
  }

  private static char check(CharSequence code) {
    int sum = 0;
    for (int i = 0; i < RANDOM; i++) {
      sum += (i + 1) * ALPHABET.indexOf(code.charAt(i));
    }
    return ALPHABET.charAt(sum % ALPHABET.length());
  }
}
