package leafturn.reports.figure;

/**
 * The sizes of a lawn's outline: for a wide page, for a phone, for a sheet of paper, for half and a
 * third of its width, and beside its name in a list.
 */
public enum OutlineFormat {
  WIDE("outline-figure outline-wide", 680, 460, 14, 58),
  NARROW("outline-figure outline-narrow", 350, 400, 13, 50),
  SHEET("outline-figure", 680, 720, 15, 46),
  HALF_SHEET("outline-figure", 320, 260, 12, 34),
  THIRD_SHEET("outline-figure", 210, 150, 10, 24),
  SMALL("outline-figure outline-small", 96, 72, 0, 3);

  final String cssClass;
  final double widthPx;
  final double mostHeightPx;
  final double typePx;

  /** Room around the outline, for the lengths of its sides. */
  final double marginPx;

  OutlineFormat(
      String cssClass, double widthPx, double mostHeightPx, double typePx, double marginPx) {
    this.cssClass = cssClass;
    this.widthPx = widthPx;
    this.mostHeightPx = mostHeightPx;
    this.typePx = typePx;
    this.marginPx = marginPx;
  }

  boolean isLabelled() {
    return this != SMALL;
  }

  /** Whether it has to leave room on its sheet of paper for what stands with it. */
  boolean isSheet() {
    return this == SHEET;
  }

  /** Whether it stands beside others on its sheet of paper. */
  boolean isPartOfSheet() {
    return this == HALF_SHEET || this == THIRD_SHEET;
  }

  /** Room below for the scale bar. */
  double footPx() {
    return isLabelled() ? 2.4 * typePx : 0;
  }
}
