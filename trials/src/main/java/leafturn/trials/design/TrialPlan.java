package leafturn.trials.design;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A trial as it is planned, before anything is observed. Whatever follows, the layout and the
 * analysis, comes from it and from its seed.
 *
 * @param name 1 to 80 characters
 * @param question what the trial is to answer, in a sentence
 * @param treatments what is compared
 * @param arrangement how treatments come to plots
 * @param lawns where
 * @param observing what is observed, and when
 * @param protocol what is kept the same for all plots
 * @param seed of every random choice, 0 to {@link #MOST_SEED}
 */
public record TrialPlan(
    String name,
    String question,
    Treatments treatments,
    Arrangement arrangement,
    List<TrialLawn> lawns,
    Observing observing,
    Protocol protocol,
    long seed) {
  /** Longest name, characters. */
  public static final int LONGEST_NAME = 80;

  /** Most lawns. */
  public static final int MOST_LAWNS = 200;

  /** Largest seed: every JSON reader takes whole numbers up to this without loss. */
  public static final long MOST_SEED = (1L << 53) - 1;

  /**
   * @throws IllegalArgumentException when {@link PlanCheck} finds a fault
   */
  public TrialPlan {
    lawns = List.copyOf(lawns);
    List<PlanCheck.Finding> findings =
        PlanCheck.of(treatments, arrangement, lawns, observing, protocol);
    if (!findings.isEmpty()) {
      throw new IllegalArgumentException(
          findings.stream().map(PlanCheck.Finding::sentence).collect(Collectors.joining(" ")));
    }
    if (seed < 0 || seed > MOST_SEED) {
      throw new IllegalArgumentException(
          "the seed is %d, but must lie from 0 to %d".formatted(seed, MOST_SEED));
    }
  }

  /** The outcome that alone decides the verdict. */
  public Outcome primary() {
    return observing.outcomes().stream().filter(Outcome::primary).findFirst().orElseThrow();
  }

  /** The same plan with other outcomes. */
  public TrialPlan with(List<Outcome> outcomes) {
    Observing others =
        new Observing(
            observing.from(),
            observing.to(),
            observing.dates(),
            observing.cores(),
            outcomes,
            observing.exclusions());
    return new TrialPlan(name, question, treatments, arrangement, lawns, others, protocol, seed);
  }

  /** The same plan with another seed. */
  public TrialPlan withSeed(long other) {
    return new TrialPlan(
        name, question, treatments, arrangement, lawns, observing, protocol, other);
  }
}
