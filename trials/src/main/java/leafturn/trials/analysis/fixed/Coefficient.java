package leafturn.trials.analysis.fixed;

/** A coefficient in treatment coding; NaN where it is aliased with others. */
public record Coefficient(String name, double estimate, double se) {
  /** Whether the data can tell it from the others. */
  public boolean isEstimable() {
    return !Double.isNaN(estimate);
  }
}
