package leafturn.advice.call;

import java.time.LocalDate;
import leafturn.advice.call.Particulars.Placing;

/** Where collected clippings may go, by plain rules of practice. */
record PlacingRules(Known known, boolean seedHeads) {

  Placing placing(LocalDate on) {
    Holds holds = known.holds(on);
    if (holds.any()) {
      return new Placing(
          false,
          false,
          false,
          "Clippings have nowhere to go: " + holds.that("keeps", "keep") + " them on the lawn.");
    }
    if (seedHeads) {
      return seeds();
    }
    return known.facts().wishes().noClippings()
        ? new Placing(true, true, true, "Keep the clippings on the property.")
        : Placing.ANYWHERE;
  }

  private Placing seeds() {
    return switch (known.facts().wishes().heapHeat()) {
      case LOGGED ->
          new Placing(
              true,
              false,
              true,
              "Not to beds: the heap, whose heat is logged, may take the seeds.");
      case COLD ->
          new Placing(
              true, false, false, "Not to beds and not to a cold heap: send the seeds away.");
      case NOT_KNOWN ->
          new Placing(
              true, false, false, "Not to beds; to a heap only with logged heat, else away.");
    };
  }
}
