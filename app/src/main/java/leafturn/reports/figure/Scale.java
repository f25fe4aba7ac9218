package leafturn.reports.figure;

/**
 * A straight scale from values to px.
 *
 * @param from value at {@code fromPx}
 * @param to value at {@code toPx}, not equal to {@code from}
 */
record Scale(double from, double to, double fromPx, double toPx) {
  Scale {
    if (!(Math.abs(to - from) > 0)) {
      throw new IllegalArgumentException("a scale needs two different ends, but both are " + from);
    }
  }

  double px(double value) {
    return fromPx + (value - from) / (to - from) * (toPx - fromPx);
  }
}
