package leafturn.reports;

/**
 * The sentence of an answer in two: what to do, and the rest of it.
 *
 * @param headline "Raise the deck and cut twice."
 * @param rest "To 90 mm today, to 76 mm on Thursday; return each time."; may be empty
 */
public record ShortAnswer(String headline, String rest) {
  /** What stands in a line or two of large type on a phone, characters. */
  private static final int SHORT = 52;

  private static final String STOP = ". ";
  private static final String COLON = ": ";

  /** An answer after its first sentence, and a long first sentence after its colon. */
  public static ShortAnswer of(String sentence) {
    return parted(Unbroken.of(sentence));
  }

  private static ShortAnswer parted(String sentence) {
    int stop = sentence.indexOf(STOP);
    String first = stop < 0 ? sentence : sentence.substring(0, stop + 1);
    String rest = stop < 0 ? "" : sentence.substring(stop + STOP.length());
    int colon = first.indexOf(COLON);
    if (first.length() <= SHORT || colon < 0) {
      return new ShortAnswer(first, rest);
    }
    String detail = first.substring(colon + COLON.length());
    String capital = Character.toUpperCase(detail.charAt(0)) + detail.substring(1);
    return new ShortAnswer(first.substring(0, colon) + ".", (capital + " " + rest).strip());
  }
}
