package leafturn.reports.figure;

/**
 * Words in a drawing.
 *
 * @param anchor where the words begin, are centred or end, on their base line
 * @param align which of the three
 * @param sizePx type size, px
 */
record Label(Point anchor, Align align, double sizePx, String cssClass, String words) {
  enum Align {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    final String svgName;
    final double share;

    Align(String svgName, double share) {
      this.svgName = svgName;
      this.share = share;
    }
  }

  /** The room the words take, with a little air around. */
  Box box() {
    double width = TextWidth.ofPx(words, sizePx);
    double left = anchor.x() - align.share * width;
    return new Box(left - 2, anchor.y() - 0.82 * sizePx, width + 4, 1.08 * sizePx);
  }

  Label at(Point place) {
    return new Label(place, align, sizePx, cssClass, words);
  }
}
