package leafturn.reports.figure;

/** A place in a drawing, px from the left and from the top. */
record Point(double x, double y) {}
