package leafturn.trials.findings;

import java.util.List;

/**
 * How far a verdict stands, by what was kept of the trial.
 *
 * @param refusals why there is no verdict, in sentences; none where there may be one
 * @param changes of what the verdict rests on, made after the plan was frozen, in sentences
 * @param frozen when the plan was frozen and as what, in a sentence; empty where nobody knows
 * @param fixedBeforehand whether the plan was frozen before the first reading and is unchanged
 */
public record Standing(
    List<String> refusals, List<String> changes, String frozen, boolean fixedBeforehand) {
  /** Nothing was kept. */
  public static final Standing UNKNOWN = new Standing(List.of(), List.of(), "", false);

  public Standing {
    refusals = List.copyOf(refusals);
    changes = List.copyOf(changes);
  }
}
