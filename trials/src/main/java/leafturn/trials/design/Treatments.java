package leafturn.trials.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is compared.
 *
 * @param factor what the treatments are levels of, for instance {@code practice}
 * @param arms two to eight, in the order in which they are told
 * @param secondFactor of a split plot or strip plot, else null
 * @param secondArms its levels, two to eight; none without it
 * @param contrasts comparisons planned beforehand, at least one
 */
public record Treatments(
    String factor,
    List<Arm> arms,
    @Nullable String secondFactor,
    List<Arm> secondArms,
    List<Contrast> contrasts) {
  /** Fewest treatments. */
  public static final int FEWEST = 2;

  /** Most treatments. */
  public static final int MOST = 8;

  public Treatments {
    arms = List.copyOf(arms);
    secondArms = List.copyOf(secondArms);
    contrasts = List.copyOf(contrasts);
  }

  /** Names of the treatments, in order. */
  public List<String> names() {
    return arms.stream().map(Arm::name).toList();
  }

  /** Names of the second factor's levels, in order; none without it. */
  public List<String> secondNames() {
    return secondArms.stream().map(Arm::name).toList();
  }
}
