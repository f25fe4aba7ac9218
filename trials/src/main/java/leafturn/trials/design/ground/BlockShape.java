package leafturn.trials.design.ground;

/**
 * A block of plots side by side on strips of whole mower passes.
 *
 * @param columns strips next to each other
 * @param rows plots one after another on each strip
 * @param gapM left between rows for turning, m
 * @param endM at both ends of each plot not measured, m
 */
public record BlockShape(int columns, int rows, double gapM, double endM) {
  /**
   * Left between blocks that follow each other on the same passes, m: common practice, no source.
   */
  public static final double TURNING_M = 1.5;

  /** Length of a block along the passes for a length of its plots, m. */
  double lengthM(double plotM) {
    return rows * plotM + (rows - 1) * gapM;
  }

  /** Length of plots when so many blocks share a length, m; may be negative. */
  double plotM(double allM, int blocks) {
    double block = (allM - (blocks - 1) * TURNING_M) / blocks;
    return (block - (rows - 1) * gapM) / rows;
  }
}
