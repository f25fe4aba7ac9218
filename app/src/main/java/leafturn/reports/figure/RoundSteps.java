package leafturn.reports.figure;

/** Steps that people count in: 1, 5, 10, 50, 100 and so on for grids; also 2 and 20 for bars. */
final class RoundSteps {
  private static final double SLACK = 1e-9;

  private RoundSteps() {}

  /** The least of 1, 5, 10, 50, ... that is not below a value above 0. */
  static double atLeast(double value) {
    double step = 1;
    for (boolean five = false; step < value * (1 - SLACK); five = !five) {
      step *= five ? 2 : 5;
    }
    return step;
  }

  /** The greatest of ..., 0.5, 1, 2, 5, 10, ... that is not above a value above 0. */
  static double atMost(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value) + SLACK));
    double share = value / power * (1 + SLACK);
    return power * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
  }
}
