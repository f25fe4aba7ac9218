package leafturn.advice.call;

import java.util.List;

/**
 * How many times as long as reckoned a lawn's clippings stay in sight, from looks at the lawn:
 * shrunk towards 1, the more so the fewer looks there were.
 *
 * @param times factor, above 0; 1 without looks
 * @param logSd what is not known of it: standard deviation of its logarithm
 * @param looks looks it rests on
 */
public record OwnSight(double times, double logSd, int looks) {
  /** Spread of lawns about the reckoned time, of its logarithm: our judgement. */
  private static final double LAWNS_SD = 0.35;

  /** A lawn nobody looked at. */
  static final OwnSight UNKNOWN = new OwnSight(1, LAWNS_SD, 0);

  /** Scale of the logistic error of one look, of the logarithm of time: our judgement. */
  private static final double LOOK_SCALE = 0.35;

  private static final double FARTHEST = 2;
  private static final int HALVINGS = 50;

  /**
   * One look at clippings.
   *
   * @param reckonedDays days after which they should have been out of sight, above 0
   * @param daysAfterCut days from the cut to the look, above 0
   * @param seen true when they were still seen
   */
  record Look(double reckonedDays, double daysAfterCut, boolean seen) {
    /** How steeply this look's likelihood rises with the logarithm of the factor. */
    double slope(double logTimes) {
      double inSight = chance(logTimes);
      return (seen ? 1 - inSight : -inSight) / LOOK_SCALE;
    }

    /** How fast that slope falls. */
    double bend(double logTimes) {
      double inSight = chance(logTimes);
      return inSight * (1 - inSight) / (LOOK_SCALE * LOOK_SCALE);
    }

    /** Chance that clippings are in sight so long. */
    private double chance(double logTimes) {
      double ahead = (Math.log(reckonedDays / daysAfterCut) + logTimes) / LOOK_SCALE;
      return 1 / (1 + Math.exp(-ahead));
    }
  }

  /**
   * The likeliest factor: a normal prior about no difference, and for each look the chance that
   * clippings were, or were not, in sight so long. The slope falls all the way, so that halving
   * finds where it is 0.
   */
  static OwnSight of(List<Look> looks) {
    double low = -FARTHEST;
    double high = FARTHEST;
    for (int step = 0; step < HALVINGS; step++) {
      double middle = (low + high) / 2;
      double slope = -middle / (LAWNS_SD * LAWNS_SD);
      for (Look look : looks) {
        slope += look.slope(middle);
      }
      if (slope > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double likeliest = (low + high) / 2;
    double precision = 1 / (LAWNS_SD * LAWNS_SD);
    for (Look look : looks) {
      precision += look.bend(likeliest);
    }
    return looks.isEmpty()
        ? UNKNOWN
        : new OwnSight(Math.exp(likeliest), 1 / Math.sqrt(precision), looks.size());
  }

  /** The factor of one possible season, drawn from what is known. */
  double drawn(double normal) {
    return times * Math.exp(logSd * normal);
  }
}
