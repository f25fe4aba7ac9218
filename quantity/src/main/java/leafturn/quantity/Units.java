package leafturn.quantity;

import java.util.Locale;
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

  private static final Pattern SHARE_RETURNED =
      Pattern.compile("(%|\\bpart|\\bshare) returned\\b", Pattern.CASE_INSENSITIVE);

  private static final Pattern RETURNED =
      Pattern.compile("\\breturned\\b", Pattern.CASE_INSENSITIVE);

  /** One that has no object of its own: "returning now", not "returning long pieces". */
  private static final Pattern RETURN =
      Pattern.compile(
          "\\breturn(?:ing)?\\b(?=$|[.,;:)]| (?:now|on|when|through|or|and|each)\\b)",
          Pattern.CASE_INSENSITIVE);

  /**
   * A text of the program's own about clippings, with the two verbs that its reader uses. Where it
   * does not name the clippings, they are added, for a lawn may be left too; the bare verb "return"
   * stays bare.
   */
  public String told(String text) {
    if (this == METRIC) {
      return text;
    }
    return VERB.matcher(naming(text)).replaceAll(verb -> us(verb.group()));
  }

  private static String naming(String text) {
    if (text.equals("return") || text.toLowerCase(Locale.ROOT).contains("clippings")) {
      return text;
    }
    String shares = SHARE_RETURNED.matcher(text).replaceAll("$1 of the clippings returned");
    return shares.equals(text)
        ? RETURN
            .matcher(RETURNED.matcher(text).replaceAll(verb -> before(verb.group())))
            .replaceAll("$0 clippings")
        : shares;
  }

  /** "clippings returned", with the capital of the verb. */
  private static String before(String verb) {
    return Character.isUpperCase(verb.charAt(0)) ? "Clippings returned" : "clippings returned";
  }

  private static String us(String verb) {
    String low = Character.toLowerCase(verb.charAt(0)) + verb.substring(1);
    String word = US_WORDS.getOrDefault(low, low);
    return low.equals(verb) ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }
}
