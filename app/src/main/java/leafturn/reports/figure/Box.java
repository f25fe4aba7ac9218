package leafturn.reports.figure;

/** An upright rectangle in a drawing, px. */
record Box(double x, double y, double width, double height) {
  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  boolean overlaps(Box other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }

  boolean inside(Box outer) {
    return x >= outer.x && y >= outer.y && right() <= outer.right() && bottom() <= outer.bottom();
  }

  /** True when the straight line between two points runs through this rectangle. */
  boolean isCrossedBy(Point from, Point to) {
    double enter = 0;
    double leave = 1;
    double[] starts = {from.x() - x, right() - from.x(), from.y() - y, bottom() - from.y()};
    double[] steps = {to.x() - from.x(), from.x() - to.x(), to.y() - from.y(), from.y() - to.y()};
    for (int side = 0; side < 4; side++) {
      if (steps[side] == 0) {
        if (starts[side] < 0) {
          return false;
        }
        continue;
      }
      double at = -starts[side] / steps[side];
      if (steps[side] > 0) {
        enter = Math.max(enter, at);
      } else {
        leave = Math.min(leave, at);
      }
    }
    return enter <= leave;
  }
}
