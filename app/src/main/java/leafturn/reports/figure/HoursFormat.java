package leafturn.reports.figure;

/**
 * The shapes of the hours figure: days side by side on a wide page, one above the other on a phone.
 */
public enum HoursFormat {
  WIDE("hours-wide", 1148, 2, 50, 14),
  NARROW("hours-narrow", 350, 1, 46, 13);

  final String cssClass;
  final double widthPx;
  final int columns;
  final double leftPx;
  final double typePx;

  HoursFormat(String cssClass, double widthPx, int columns, double leftPx, double typePx) {
    this.cssClass = cssClass;
    this.widthPx = widthPx;
    this.columns = columns;
    this.leftPx = leftPx;
    this.typePx = typePx;
  }
}
