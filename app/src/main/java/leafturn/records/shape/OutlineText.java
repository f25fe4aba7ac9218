package leafturn.records.shape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.InputException;

/**
 * The list of corners that a person may write: one corner a line, "x y" in m, x to the east and y
 * to the north. An empty line starts a hole, a line with only + another piece, and "origin" with
 * longitude and latitude says where x 0, y 0 lies. A line such as "12 x 8" stands for a whole
 * rectangle, and "2 x 1 at 4 3" for one whose south-western corner is x 4, y 3. A list that begins
 * with "ft:" is in feet.
 */
public final class OutlineText {
  /** The most characters that are read. */
  public static final int LIMIT_CHARACTERS = 200_000;

  static final String ORIGIN = "origin";
  static final String ANOTHER_PIECE = "+";

  private static final String IN_FEET = "ft:";

  /** Finer than the millimetre that a corner is kept to, so that the list is the same again. */
  private static final int DECIMALS_OF_FEET = 3;

  private OutlineText() {}

  /**
   * Reads a list of corners.
   *
   * @param field name of the form's field, to which the faults belong
   * @throws InputException with one sentence for each fault, naming its line
   */
  public static Outline read(String field, String text) {
    boolean feet = text.startsWith(IN_FEET);
    return new OutlineLines(field, feet ? Units.US : Units.METRIC)
        .read(feet ? text.substring(IN_FEET.length()) : text);
  }

  /** A list that a reader of some units wrote, as {@link #read} takes it. */
  public static String told(String list, Units units) {
    return units == Units.US && !list.startsWith(IN_FEET) ? IN_FEET + list : list;
  }

  /** Writes the list of an outline in a reader's units; read again, it is the same outline. */
  public static String write(Outline outline, Units units) {
    StringBuilder text = new StringBuilder();
    Anchor anchor = outline.anchor();
    if (anchor != null) {
      text.append(ORIGIN).append(' ').append(number(anchor.longitudeDeg()));
      text.append(' ').append(number(anchor.latitudeDeg())).append('\n');
    }
    String before = "";
    for (Patch patch : outline.patches()) {
      text.append(before);
      write(patch, units, text);
      before = ANOTHER_PIECE + "\n";
    }
    return text.toString();
  }

  private static void write(Patch patch, Units units, StringBuilder text) {
    List<Ring> rings = patch.rings();
    for (int ring = 0; ring < rings.size(); ring++) {
      text.append(ring == 0 ? "" : "\n");
      for (Corner corner : rings.get(ring).corners()) {
        text.append(length(corner.xM(), units)).append(' ');
        text.append(length(corner.yM(), units)).append('\n');
      }
    }
  }

  /** A length kept in m, as it stands in a list of given units. */
  static String length(double m, Units units) {
    if (units == Units.METRIC) {
      return number(m);
    }
    BigDecimal feet = BigDecimal.valueOf(Measure.DISTANCE.shown(m, units));
    return number(feet.setScale(DECIMALS_OF_FEET, RoundingMode.HALF_EVEN).doubleValue());
  }

  private static String number(double value) {
    return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
