package leafturn.trials.power;

/**
 * Variances that a balanced trial takes out, or that vary between years; for simulated trials.
 *
 * @param block between yards or blocks, and between rows and columns of a Latin square
 * @param blockByDate of a yard's own course over the dates, all its plots alike
 * @param year between years
 * @param blockByYear of a yard's own years
 * @param practiceByYear how much the difference between practices varies with the year
 * @param plotByYear between plots of a yard within a year
 */
public record Surroundings(
    double block,
    double blockByDate,
    double year,
    double blockByYear,
    double practiceByYear,
    double plotByYear) {

  /** One variance between blocks, nothing else. */
  public static Surroundings blocks(double block) {
    return new Surroundings(block, 0, 0, 0, 0, 0);
  }
}
