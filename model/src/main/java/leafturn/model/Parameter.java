package leafturn.model;

import java.util.List;
import leafturn.model.grass.Species;
import org.jspecify.annotations.Nullable;

/**
 * One parameter of the daily model and where it comes from.
 *
 * @param name short name, as in formulas and lawn descriptions
 * @param species the grass this value is for, or null when it holds for all
 * @param value default
 * @param unit unit of value, low and high
 * @param low low end of the plausible range
 * @param high high end of the plausible range
 * @param meaning what it is, for a reader who knows lawns
 * @param used the step that uses it
 * @param source where the value comes from
 * @param references keys of the source in docs/references.md; may be empty
 * @param status published, derived, tuned, assumed or management
 */
public record Parameter(
    String name,
    @Nullable Species species,
    double value,
    String unit,
    double low,
    double high,
    String meaning,
    String used,
    String source,
    List<String> references,
    String status) {
  public Parameter {
    references = List.copyOf(references);
  }

  /** True when the value lies in its plausible range. */
  public boolean plausible(double candidate) {
    return candidate >= low && candidate <= high;
  }

  /**
   * True when the model can run with the value: finite, not negative, at most 1 for a share and ten
   * times the plausible range for anything else.
   */
  public boolean possible(double candidate) {
    boolean share = high <= 1 && unit.equals("-");
    return candidate >= 0 && candidate <= (share ? 1 : 10 * high);
  }
}
