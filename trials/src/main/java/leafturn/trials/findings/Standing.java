package leafturn.trials.findings;

import java.util.Comparator;
import java.util.List;
import leafturn.trials.observation.Remark;

/**
 * How far a verdict stands, by what was kept of the trial.
 *
 * @param refusals why there is no verdict, in sentences; none where there may be one
 * @param cautions what weakens the verdict and stands beside it, in sentences: changes after the
 *     plan was frozen, what was left out or taken back with results in sight, an early end
 * @param frozen when the plan was frozen and as what, in sentences; none where nobody knows
 * @param fixedBeforehand whether the plan was frozen before the first reading and is unchanged
 * @param plannedDays on how many days the primary outcome was to be read; 0 where nobody knows
 * @param remarks of the checks, the weightiest first
 */
public record Standing(
    List<String> refusals,
    List<String> cautions,
    List<String> frozen,
    boolean fixedBeforehand,
    int plannedDays,
    List<Remark> remarks) {
  /** Nothing was kept. */
  public static final Standing UNKNOWN =
      new Standing(List.of(), List.of(), List.of(), false, 0, List.of());

  public Standing {
    refusals = List.copyOf(refusals);
    cautions = List.copyOf(cautions);
    frozen = List.copyOf(frozen);
    remarks = remarks.stream().sorted(Comparator.comparing(Remark::weight)).toList();
  }
}
