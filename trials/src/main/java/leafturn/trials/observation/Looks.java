package leafturn.trials.observation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often chance is given a try: dates looked at before the end, outcomes beside the primary one.
 *
 * @param planned days of the plan on which something is read
 * @param ended the day the trial was ended, or null while it is under way
 * @param outcomes number of outcomes, the primary one among them
 * @param contrasts number of planned comparisons
 */
public record Looks(
    List<LocalDate> planned, @Nullable LocalDate ended, int outcomes, int contrasts) {
  public Looks {
    planned = List.copyOf(planned);
  }

  /**
   * What follows.
   *
   * @param read days on which the primary outcome was read
   * @param over whether the season is over, so that findings test
   */
  public List<Remark> remarks(List<LocalDate> read, boolean over) {
    List<Remark> remarks = new ArrayList<>();
    LocalDate last = planned.stream().max(LocalDate::compareTo).orElse(LocalDate.MAX);
    if (!over) {
      remarks.add(
          Remark.refused(
              "The trial is under way (last planned day %s): it shows what was read so far and no"
                  + " test, so that nobody stops when chance is kind.",
              last));
    } else if (ended != null && ended.isBefore(last)) {
      remarks.add(
          Remark.warning(
              "The trial was ended on %s, before its last planned day %s; a trial that stops when"
                  + " it looks good finds too much.",
              ended, last));
    }
    List<LocalDate> unplanned = read.stream().filter(day -> !planned.contains(day)).toList();
    if (!unplanned.isEmpty()) {
      remarks.add(
          Remark.warning(
              "Read on days that were not planned: %s. The verdict rests on the summary of the"
                  + " plan, not on the best day.",
              String.join(", ", unplanned.stream().map(LocalDate::toString).toList())));
    }
    if (outcomes > 1) {
      remarks.add(
          Remark.note(
              outcomes == 2
                  ? "One outcome beside the primary one is exploratory: its p is no verdict."
                  : "%d outcomes beside the primary one are exploratory: their p values are adjusted"
                      + " for each other, and none of them is a verdict.",
              outcomes - 1));
    }
    return remarks;
  }
}
