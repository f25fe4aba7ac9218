package leafturn.reports.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes one SVG element by element. Coordinates are rounded to a tenth of a px. */
final class Svg {
  private final StringBuilder text = new StringBuilder(4096);

  private Svg() {}

  /**
   * A drawing that speaks for itself to a screen reader through its label.
   *
   * @param size width and height, px, whole numbers
   */
  static Svg labelled(Box size, String cssClass, String label) {
    return opened(size, cssClass, "role=\"img\" aria-label=\"" + escaped(label) + "\"");
  }

  /** A drawing whose content also stands beside it in words. */
  static Svg decorative(Box size, String cssClass) {
    return opened(size, cssClass, "aria-hidden=\"true\"");
  }

  private static Svg opened(Box size, String cssClass, String attributes) {
    Svg svg = new Svg();
    String width = number(size.width());
    String height = number(size.height());
    svg.text.append("<svg class=\"").append(cssClass).append("\" ").append(attributes);
    svg.text.append(" focusable=\"false\" width=\"").append(width);
    svg.text.append("\" height=\"").append(height).append("\" viewBox=\"0 0 ");
    svg.text.append(width).append(' ').append(height).append("\">");
    return svg;
  }

  /** Notes a number on the drawing for the page's script, for instance {@code data-day-width}. */
  Svg data(String name, double value) {
    int end = text.indexOf(">");
    text.insert(end, " data-" + name + "=\"" + number(value, 4) + "\"");
    return this;
  }

  Svg line(Point from, Point to, String cssClass) {
    text.append("<line class=\"").append(cssClass).append('"');
    attribute("x1", from.x());
    attribute("y1", from.y());
    attribute("x2", to.x());
    attribute("y2", to.y());
    text.append("/>");
    return this;
  }

  Svg rectangle(Box box, String cssClass) {
    text.append("<rect class=\"").append(cssClass).append('"');
    attribute("x", box.x());
    attribute("y", box.y());
    attribute("width", box.width());
    attribute("height", box.height());
    text.append("/>");
    return this;
  }

  Svg circle(Point centre, double radius, String cssClass) {
    text.append("<circle class=\"").append(cssClass).append('"');
    attribute("cx", centre.x());
    attribute("cy", centre.y());
    attribute("r", radius);
    text.append("/>");
    return this;
  }

  Svg openLine(List<Point> points, String cssClass) {
    return path(points, cssClass, "");
  }

  Svg area(List<Point> points, String cssClass) {
    return path(points, cssClass, "Z");
  }

  private Svg path(List<Point> points, String cssClass, String end) {
    text.append("<path class=\"").append(cssClass).append("\" d=\"");
    steps(points);
    text.append(end).append("\"/>");
    return this;
  }

  /** Several separate strokes as one element. */
  Svg strokes(List<List<Point>> strokes, String cssClass) {
    text.append("<path class=\"").append(cssClass).append("\" d=\"");
    strokes.forEach(this::steps);
    text.append("\"/>");
    return this;
  }

  /** Several separate curves as one element. */
  Svg curves(List<Curve> curves, String cssClass) {
    text.append("<path class=\"").append(cssClass).append("\" d=\"");
    for (Curve curve : curves) {
      point('M', curve.from());
      point('Q', curve.control());
      point(' ', curve.to());
    }
    text.append("\"/>");
    return this;
  }

  /** An area bounded by several closed lines; one inside another is a hole in it. */
  Svg rings(List<List<Point>> rings, String cssClass) {
    text.append("<path class=\"").append(cssClass).append("\" fill-rule=\"evenodd\" d=\"");
    for (List<Point> ring : rings) {
      steps(ring);
      text.append('Z');
    }
    text.append("\"/>");
    return this;
  }

  private void steps(List<Point> points) {
    char command = 'M';
    for (Point point : points) {
      point(command, point);
      command = 'L';
    }
  }

  /** Words alone, for a drawing that is put together from others. */
  static String part(Label label) {
    return new Svg().words(label).text.toString();
  }

  /** Words turned clockwise about a point. */
  Svg turned(Label label, double degrees, Point about) {
    if (Math.round(10 * degrees) == 0) {
      return words(label);
    }
    String turn =
        "rotate(%s %s %s)".formatted(number(degrees), number(about.x()), number(about.y()));
    return words(label, " transform=\"" + turn + "\"");
  }

  /** What follows stands lower by so many px, until {@link #closeMoved}. */
  void openMoved(double downPx) {
    text.append("<g transform=\"translate(0 ").append(number(downPx)).append(")\">");
  }

  void closeMoved() {
    text.append("</g>");
  }

  Svg words(Label label) {
    return words(label, "");
  }

  private Svg words(Label label, String more) {
    text.append("<text class=\"").append(label.cssClass()).append('"').append(more);
    attribute("x", label.anchor().x());
    attribute("y", label.anchor().y());
    text.append(" text-anchor=\"").append(label.align().svgName).append('"');
    text.append(" font-size=\"").append(number(label.sizePx())).append("\">");
    text.append(escaped(label.words())).append("</text>");
    return this;
  }

  String close() {
    return text.append("</svg>").toString();
  }

  private void attribute(String name, double value) {
    text.append(' ').append(name).append("=\"");
    tenths(text, value);
    text.append('"');
  }

  private void point(char command, Point point) {
    text.append(command);
    tenths(text, point.x());
    text.append(' ');
    tenths(text, point.y());
  }

  private static String number(double value) {
    StringBuilder number = new StringBuilder();
    tenths(number, value);
    return number.toString();
  }

  /** A number to one decimal. A drawing has hundreds of them, so this is whole-number work. */
  private static void tenths(StringBuilder text, double value) {
    long tenths = Math.round(10 * Math.abs(value));
    if (tenths != 0 && value < 0) {
      text.append('-');
    }
    text.append(tenths / 10);
    if (tenths % 10 != 0) {
      text.append('.').append(tenths % 10);
    }
  }

  private static String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
