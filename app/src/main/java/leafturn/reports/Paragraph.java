package leafturn.reports;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines for a terminal. */
public final class Paragraph {
  private static final int WIDTH = 80;

  private Paragraph() {}

  /** Letters a line of a terminal holds. */
  public static int width() {
    return WIDTH;
  }

  /**
   * A text broken between words; further lines stand under its first letter.
   *
   * @param lead what stands before it on the first line, for instance "- "
   */
  public static List<String> of(String lead, String text) {
    return of(lead, text, WIDTH);
  }

  /**
   * The same with lines of another width.
   *
   * @param widest most characters of a line
   */
  public static List<String> of(String lead, String text, int widest) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > widest) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(lead.length()));
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }

  /** Blanks that hold number and unit together on a page are plain ones on a terminal. */
  public static String plain(String line) {
    return line.replace(QuantityWords.THIN, " ").replace('\u00a0', ' ').stripTrailing();
  }
}
