package leafturn.reports.figure;

/** The shapes of a trial's figures: for a wide page or paper, and for a phone. */
public enum TrialFormat {
  WIDE("trial-wide", 720, 300, 54, 14),
  NARROW("trial-narrow", 350, 290, 44, 13);

  final String cssClass;
  final double widthPx;
  final double heightPx;
  final double leftPx;
  final double typePx;

  TrialFormat(String cssClass, double widthPx, double heightPx, double leftPx, double typePx) {
    this.cssClass = cssClass;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.leftPx = leftPx;
    this.typePx = typePx;
  }

  Box size() {
    return new Box(0, 0, widthPx, heightPx);
  }
}
