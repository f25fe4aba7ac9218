package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was kept of plan and layout when the plan was frozen, beside what they are now.
 *
 * @param seed of the draw; null where none was kept
 * @param frozenHash SHA-256 of the plan when it was frozen; null where it never was
 * @param hash SHA-256 of the plan now
 * @param frozenLayout SHA-256 of the layout then; null where none was kept
 * @param layout SHA-256 of the layout now; null where it is not drawn
 */
public record RecordedLayout(
    @Nullable Long seed,
    @Nullable String frozenHash,
    String hash,
    @Nullable String frozenLayout,
    @Nullable String layout) {
  /** That the plan is no longer the frozen one. */
  public static final String CHANGED =
      "The plan was changed after it was frozen; the findings list what was changed.";

  /** What is missing or has changed. */
  public List<Remark> remarks() {
    List<Remark> remarks = new ArrayList<>();
    if (seed == null) {
      remarks.add(
          Remark.warning(
              "No seed was kept, so nobody can show that chance chose the sides; say how they were"
                  + " chosen."));
    }
    if (frozenHash == null) {
      remarks.add(
          Remark.refused(
              "The plan was never frozen; freeze it before the first reading, so that nothing can"
                  + " be fitted to the results."));
    } else if (!frozenHash.equals(hash)) {
      remarks.add(Remark.warning(CHANGED));
    }
    if (frozenLayout != null && layout != null && !frozenLayout.equals(layout)) {
      remarks.add(
          Remark.refused(
              "The layout is not the one that was drawn when the plan was frozen; plots may now bear"
                  + " another treatment than they were given."));
    }
    return remarks;
  }
}
