package leafturn.trials.analysis.model;

import java.util.List;

/**
 * Correlation between the dates of one unit.
 *
 * @param unit the factors whose combinations are observed again and again
 * @param time the column of dates, times or ordered occasions
 * @param correlation how two dates are related
 */
public record OverTime(List<String> unit, String time, Correlation correlation) {
  public OverTime {
    unit = List.copyOf(unit);
  }

  /** How the errors of two dates of the same unit are related. */
  public enum Correlation {
    /** The same between any two dates. */
    COMPOUND_SYMMETRY("compound-symmetry"),
    /** A power of the difference of positions among all dates of the trial. */
    AR1("ar1"),
    /** A power of the time between them. */
    CAR1("car1"),
    /** As {@link #AR1}, with a variance for each date. */
    HETEROGENEOUS_AR1("heterogeneous-ar1"),
    /** Free for each pair of dates, with a variance for each date. */
    UNSTRUCTURED("unstructured");

    private final String word;

    Correlation(String word) {
      this.word = word;
    }

    /** The word in a model file. */
    public String word() {
      return word;
    }
  }
}
