package leafturn.reports.figure;

/** The shapes of the season figure: for a wide page, for a phone and for paper. */
public enum SeasonFormat {
  WIDE("season-wide", 1148, 44, 14, 270, 52, 120),
  NARROW("season-narrow", 350, 34, 13, 230, 46, 56),
  PAPER("season-paper", 680, 36, 12, 220, 42, 120);

  final String cssClass;

  /** The most days so far that are shown. */
  final int pastDays;

  final double widthPx;
  final double leftPx;
  final double typePx;
  final double heightPanelPx;
  final double smallPanelPx;

  SeasonFormat(
      String cssClass,
      double widthPx,
      double leftPx,
      double typePx,
      double heightPanelPx,
      double smallPanelPx,
      int pastDays) {
    this.cssClass = cssClass;
    this.pastDays = pastDays;
    this.widthPx = widthPx;
    this.leftPx = leftPx;
    this.typePx = typePx;
    this.heightPanelPx = heightPanelPx;
    this.smallPanelPx = smallPanelPx;
  }

  boolean isWide() {
    return this != NARROW;
  }
}
