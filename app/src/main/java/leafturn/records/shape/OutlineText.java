package leafturn.records.shape;

import java.math.BigDecimal;
import java.util.List;
import leafturn.records.InputException;

/**
 * The list of corners that a person may write: one corner a line, "x y" in m, x to the east and y
 * to the north. An empty line starts a hole, a line with only + another piece, and "origin" with
 * longitude and latitude says where x 0, y 0 lies. A line such as "12 x 8" stands for a whole
 * rectangle, and "2 x 1 at 4 3" for one whose south-western corner is x 4, y 3.
 */
public final class OutlineText {
  /** The most characters that are read. */
  public static final int LIMIT_CHARACTERS = 200_000;

  static final String ORIGIN = "origin";
  static final String ANOTHER_PIECE = "+";

  private OutlineText() {}

  /**
   * Reads a list of corners.
   *
   * @param field name of the form's field, to which the faults belong
   * @throws InputException with one sentence for each fault, naming its line
   */
  public static Outline read(String field, String text) {
    return new OutlineLines(field).read(text);
  }

  /** Writes the list of an outline; read again, it is the same outline. */
  public static String write(Outline outline) {
    StringBuilder text = new StringBuilder();
    Anchor anchor = outline.anchor();
    if (anchor != null) {
      text.append(ORIGIN).append(' ').append(number(anchor.longitudeDeg()));
      text.append(' ').append(number(anchor.latitudeDeg())).append('\n');
    }
    String before = "";
    for (Patch patch : outline.patches()) {
      text.append(before);
      write(patch, text);
      before = ANOTHER_PIECE + "\n";
    }
    return text.toString();
  }

  private static void write(Patch patch, StringBuilder text) {
    List<Ring> rings = patch.rings();
    for (int ring = 0; ring < rings.size(); ring++) {
      text.append(ring == 0 ? "" : "\n");
      for (Corner corner : rings.get(ring).corners()) {
        text.append(number(corner.xM())).append(' ').append(number(corner.yM())).append('\n');
      }
    }
  }

  private static String number(double value) {
    return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
