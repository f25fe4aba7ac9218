package leafturn.reports.figure;

/**
 * A piece of a parabola.
 *
 * @param control where the tangents at its ends meet
 */
record Curve(Point from, Point control, Point to) {}
