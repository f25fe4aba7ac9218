package leafturn.quantity;

import java.util.Map;
import java.util.regex.Pattern;

/** The units a person reads and writes; what is kept and computed is metric for everyone. */
public enum Units {
  METRIC,
  US;

  /** Where inches are read, clippings are left or bagged; elsewhere returned or collected. */
  private static final Map<String, String> US_WORDS =
      Map.ofEntries(
          Map.entry("return", "leave"),
          Map.entry("returned", "left"),
          Map.entry("returning", "leaving"),
          Map.entry("collect", "bag"),
          Map.entry("collected", "bagged"),
          Map.entry("collecting", "bagging"));

  private static final Pattern VERB =
      Pattern.compile("\\b(?:return|collect)(?:ed|ing)?\\b", Pattern.CASE_INSENSITIVE);

  /** A text of the program's own about clippings, with the two verbs that its reader uses. */
  public String told(String text) {
    return this == METRIC ? text : VERB.matcher(text).replaceAll(verb -> us(verb.group()));
  }

  private static String us(String verb) {
    String low = Character.toLowerCase(verb.charAt(0)) + verb.substring(1);
    String word = US_WORDS.getOrDefault(low, low);
    return low.equals(verb) ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
