package leafturn.model.lawn;

import static leafturn.model.Flows.CLIPPINGS_G;
import static leafturn.model.Flows.CUT_FAST_FRACTION;
import static leafturn.model.Flows.CUT_STALK_FRACTION;
import static leafturn.model.Flows.MOWINGS;
import static leafturn.model.Flows.RETURNED_SHARE;

import java.util.Arrays;

/** Cuts made so far on a day. What the day's flows tell of its clippings is their mean by mass. */
final class EarlierCuts {
  private static final EarlierCuts NONE = new EarlierCuts(new double[0]);

  private final double[] flows;

  private EarlierCuts(double[] flows) {
    this.flows = flows;
  }

  /**
   * @param flows of the day, before its next cut
   */
  static EarlierCuts of(double[] flows) {
    return flows[MOWINGS] == 0 ? NONE : new EarlierCuts(Arrays.copyOf(flows, flows.length));
  }

  /**
   * Counts them in. A cut that takes nothing changes nothing of what is told of those before it.
   *
   * @param day flows just after another cut, changed
   */
  void countIn(double[] day) {
    if (flows.length == 0 || day[CLIPPINGS_G] == 0) {
      return;
    }
    double share = flows[CLIPPINGS_G] / day[CLIPPINGS_G];
    for (int flow = CUT_FAST_FRACTION; flow <= CUT_STALK_FRACTION; flow++) {
      day[flow] = mean(flows[flow], day[flow], share);
    }
    day[RETURNED_SHARE] = mean(flows[RETURNED_SHARE], day[RETURNED_SHARE], share);
  }

  private static double mean(double earlier, double latest, double share) {
    return share == 1 ? earlier : share * earlier + (1 - share) * latest;
  }
}
