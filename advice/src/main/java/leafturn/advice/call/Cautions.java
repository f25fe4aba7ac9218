package leafturn.advice.call;

import java.util.ArrayList;
import java.util.List;

/**
 * The usual cautions of the trade, where a call gives rise to them. Common practice, no source; the
 * machine's handbook, the product's label and local codes come first.
 */
final class Cautions {
  private Cautions() {}

  /** Cautions for a plan on its day. */
  static List<String> of(Plan plan, Prospect prospect) {
    List<String> cautions = new ArrayList<>();
    if (slippery(prospect, 0) || slippery(prospect, plan.day())) {
      cautions.add(
          "Wet grass is slippery: stay off wet slopes, and take no ride-on mower onto them; the machine's handbook gives its limits.");
    }
    cautions.add(
        "Walk the lawn first: stones, toys and wire leave the deck as missiles. Keep children, other people and pets well away while the blade turns.");
    cautions.add(
        "Engine off, and plug or battery out, before you clear the chute or empty a stuck bag; the blade runs on after the engine stops.");
    cautions.add(
        "Sweep clippings off paving and out of gutters, and keep them away from drains and open water.");
    if (!plan.returned()) {
      cautions.add(
          "Feed no clippings to horses or other livestock: they ferment, and may carry residues.");
      cautions.add(
          "Treated lawn: keep to the label's interval before clippings are composted or used as mulch.");
    }
    return cautions;
  }

  private static boolean slippery(Prospect prospect, int day) {
    return prospect.wet(day) || prospect.soft(day) || prospect.saturated(day);
  }
}
