package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import org.jspecify.annotations.Nullable;

/** Reads the list of corners that {@link OutlineText} describes, line by line. */
final class OutlineLines {
  private static final String NUMBER = "([-+]?(?:\\d{1,9}(?:\\.\\d{0,12})?|\\.\\d{1,12}))";
  private static final String GAP = "(?:\\s*[,;]\\s*|\\s+)";
  private static final Pattern PAIR = Pattern.compile(NUMBER + GAP + NUMBER);
  private static final Pattern PLACE =
      Pattern.compile(OutlineText.ORIGIN + "\\s+" + NUMBER + GAP + NUMBER);
  private static final Pattern RECTANGLE =
      Pattern.compile(
          NUMBER + "\\s*[x×*]\\s*" + NUMBER + "(?:\\s+at\\s+" + NUMBER + GAP + NUMBER + ")?");
  private static final int MOST_FAULTS = 20;

  private final String field;
  private final Units units;
  private final String unit;
  private final List<Fault> faults = new ArrayList<>();
  private final List<List<Part>> pieces = new ArrayList<>();
  private @Nullable Part open;
  private @Nullable Anchor anchor;
  private int line;
  private int untold;

  /** A ring in the making, and the line it starts on. */
  private record Part(int line, List<Corner> corners) {}

  /**
   * @param units those of the list's lengths
   */
  OutlineLines(String field, Units units) {
    this.field = field;
    this.units = units;
    this.unit = Measure.DISTANCE.unit(units).symbol();
    pieces.add(new ArrayList<>());
  }

  Outline read(String text) {
    if (text.length() > OutlineText.LIMIT_CHARACTERS) {
      throw InputException.of(
          List.of(new Fault(field, "it is too long; give fewer corners.", field + ": too long.")));
    }
    text.lines().forEach(this::line);
    throwIfAny();
    List<Patch> patches =
        pieces.stream().filter(piece -> !piece.isEmpty()).map(OutlineLines::patch).toList();
    OutlineCheck.of(patches, this::words).forEach(this::report);
    throwIfAny();
    return new Outline(patches, anchor);
  }

  private static Patch patch(List<Part> parts) {
    List<Ring> rings = parts.stream().map(part -> new Ring(part.corners())).toList();
    return new Patch(rings.get(0), rings.subList(1, rings.size()));
  }

  private void line(String text) {
    line++;
    String words = text.strip().replace('\u2212', '-').toLowerCase(Locale.ROOT);
    if (words.isEmpty()) {
      open = null;
    } else if (words.equals(OutlineText.ANOTHER_PIECE)) {
      open = null;
      pieces.add(new ArrayList<>());
    } else if (words.startsWith(OutlineText.ORIGIN)) {
      origin(words);
    } else if (!corner(words) && !rectangle(words)) {
      fault(
          line,
          "%s is no corner; give x and y in %s, such as 12.5 3, or a rectangle, such as 12 x 8."
              .formatted(Faults.quoted(text.strip()), unit));
    }
  }

  private void origin(String words) {
    Matcher place = PLACE.matcher(words);
    double longitude = place.matches() ? number(place, 1) : Double.NaN;
    double latitude = place.matches() ? number(place, 2) : Double.NaN;
    if (anchor != null) {
      fault(line, "the origin is given twice; keep one of the two.");
    } else if (Anchor.isFit(longitude, latitude)) {
      anchor = new Anchor(longitude, latitude);
    } else {
      fault(
          line,
          "%s is no origin; give longitude from -180 to 180 and latitude from -85 to 85, such as"
                  .formatted(Faults.quoted(words))
              + " origin 10.5 50.25.");
    }
  }

  private boolean corner(String words) {
    Matcher pair = PAIR.matcher(words);
    if (!pair.matches()) {
      return false;
    }
    add(part(), lengthM(pair, 1), lengthM(pair, 2));
    return true;
  }

  private boolean rectangle(String words) {
    Matcher rectangle = RECTANGLE.matcher(words);
    if (!rectangle.matches()) {
      return false;
    }
    if (open != null) {
      fault(line, "a rectangle stands alone; put an empty line before it.");
      return true;
    }
    double length = lengthM(rectangle, 1);
    double width = lengthM(rectangle, 2);
    double x = rectangle.group(3) == null ? 0 : lengthM(rectangle, 3);
    double y = rectangle.group(4) == null ? 0 : lengthM(rectangle, 4);
    if (!(length > 0) || !(width > 0)) {
      fault(line, "a rectangle needs a length and a width above 0 " + unit + ".");
      return true;
    }
    Part part = part();
    if (add(part, x, y) && add(part, x + length, y + width)) {
      part.corners().add(1, new Corner(x + length, y));
      part.corners().add(new Corner(x, y + width));
    }
    open = null;
    return true;
  }

  private Part part() {
    Part part = open;
    if (part == null) {
      part = new Part(line, new ArrayList<>());
      pieces.get(pieces.size() - 1).add(part);
      open = part;
    }
    return part;
  }

  private boolean add(Part part, double xM, double yM) {
    if (!Corner.isNear(xM) || !Corner.isNear(yM)) {
      fault(
          line,
          "x %s, y %s lies too far away; give both from %s to %s, %s."
              .formatted(
                  length(xM),
                  length(yM),
                  length(-Corner.FARTHEST_M),
                  length(Corner.FARTHEST_M),
                  unit));
      return false;
    }
    part.corners().add(new Corner(xM, yM));
    return true;
  }

  private String words(Corner corner) {
    return "x %s, y %s".formatted(length(corner.xM()), length(corner.yM()));
  }

  private String length(double m) {
    return OutlineText.length(m, units);
  }

  private double lengthM(Matcher matcher, int group) {
    return Measure.DISTANCE.kept(number(matcher, group), units);
  }

  private static double number(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  private void report(OutlineCheck.Finding finding) {
    if (finding.patch() == OutlineCheck.WHOLE) {
      fault(0, finding.sentence());
      return;
    }
    List<List<Part>> filled = pieces.stream().filter(piece -> !piece.isEmpty()).toList();
    int ring = Math.max(0, finding.ring());
    fault(filled.get(finding.patch()).get(ring).line(), finding.sentence());
  }

  private void fault(int atLine, String sentence) {
    if (faults.size() >= MOST_FAULTS) {
      untold++;
      return;
    }
    faults.add(
        atLine == 0
            ? new Fault(field, sentence, "%s: %s".formatted(field, sentence))
            : new Fault(
                field,
                "line %d: %s".formatted(atLine, sentence),
                "%s, line %d: %s".formatted(field, atLine, sentence)));
  }

  private void throwIfAny() {
    if (untold > 0) {
      String more = "%d more faults follow.".formatted(untold);
      faults.add(new Fault(field, more, field + ": " + more));
    }
    if (!faults.isEmpty()) {
      throw InputException.of(faults);
    }
  }
}
