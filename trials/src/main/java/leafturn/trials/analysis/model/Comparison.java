package leafturn.trials.analysis.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which means are compared.
 *
 * @param factor the factor whose levels are compared
 * @param within factors at each of whose combinations they are compared; none for the overall means
 * @param control the level all others are compared with; null for all pairs
 * @param levelFraction of the intervals, above 0 and below 1
 * @param multiplicity how the number of comparisons is allowed for
 */
public record Comparison(
    String factor,
    List<String> within,
    @Nullable String control,
    double levelFraction,
    Multiplicity multiplicity) {
  public Comparison {
    within = List.copyOf(within);
  }

  /** How the number of comparisons is allowed for. */
  public enum Multiplicity {
    NONE("none"),
    TUKEY("tukey"),
    DUNNETT("dunnett"),
    SIDAK("sidak"),
    HOLM("holm"),
    HOMMEL("hommel"),
    BONFERRONI("bonferroni"),
    BENJAMINI_HOCHBERG("benjamini-hochberg");

    private final String word;

    Multiplicity(String word) {
      this.word = word;
    }

    /** The word in a model file. */
    public String word() {
      return word;
    }
  }
}
