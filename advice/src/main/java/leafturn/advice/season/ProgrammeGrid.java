package leafturn.advice.season;

import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;

/**
 * The programmes of a search: every combination of four heights, five triggers, three practices of
 * returning and five feeds round the lawn's own, and, where it is watered, a second watering. The
 * levels are our judgement.
 */
final class ProgrammeGrid {
  private static final double LOWER = 0.8;
  private static final double HIGHER = 1.2;
  private static final int ONE_THIRD_RULE = 0;

  /** Days between mowings: twice a week, weekly, every ten days, every fortnight. */
  private static final int[] TRIGGERS = {4, 7, 10, 14, ONE_THIRD_RULE};

  private static final List<ReturnPractice> PRACTICES =
      List.of(ReturnPractice.always(1), ReturnPractice.always(0), ReturnPractice.byTheRules());

  /** Shares of the N of now. */
  private static final double[] FEED_SHARES = {0, 0.5, 0.75, 1, 1.25};

  /** Yearly N, g/m2, round a lawn that is not fed now. */
  private static final double[] FEEDS_G_PER_M2 = {0, 5, 10, 15, 20};

  private static final double LESS_WATER = 0.6;

  private final Lawn lawn;
  private final boolean southern;

  private ProgrammeGrid(Lawn lawn) {
    this.lawn = lawn;
    this.southern = lawn.site().latitudeDeg() < 0;
  }

  /** The programmes round a lawn's own, at least 300, always in the same order. */
  static List<PlannedProgramme> round(Lawn lawn) {
    return new ProgrammeGrid(lawn).programmes();
  }

  private List<PlannedProgramme> programmes() {
    List<PlannedProgramme> programmes = new ArrayList<>();
    for (CutHeights heights : heights()) {
      for (int everyDays : TRIGGERS) {
        for (ReturnPractice practice : PRACTICES) {
          Programme.Mowing own = lawn.programme().mowing();
          Programme.Mowing mowing =
              new Programme.Mowing(heights, everyDays, own.from(), own.to(), practice);
          addFeeds(mowing, programmes);
        }
      }
    }
    return programmes;
  }

  private void addFeeds(Programme.Mowing mowing, List<PlannedProgramme> programmes) {
    double waterShare = lawn.programme().irrigationShareOfDemand();
    for (double nGPerM2 : feeds()) {
      Programme fed =
          YearlyNitrogen.rounded(
              YearlyNitrogen.set(
                  new Programme(mowing, lawn.programme().feedings(), waterShare),
                  lawn.programme().feedings(),
                  nGPerM2,
                  southern));
      programmes.add(new PlannedProgramme("", Origin.SEARCH, fed));
      if (waterShare > 0) {
        programmes.add(
            new PlannedProgramme(
                "",
                Origin.SEARCH,
                new Programme(
                    mowing, fed.feedings(), Math.rint(100 * LESS_WATER * waterShare) / 100)));
      }
    }
  }

  private List<CutHeights> heights() {
    CutHeights own = lawn.programme().mowing().heights();
    double usualMm = own.usualMm();
    List<CutHeights> heights = new ArrayList<>();
    heights.add(own.raised(Math.rint((LOWER - 1) * usualMm)));
    heights.add(own);
    heights.add(own.raised(Math.rint((HIGHER - 1) * usualMm)));
    heights.add(own.vary() ? CutHeights.always(usualMm) : higherInSummer(own));
    return heights;
  }

  private CutHeights higherInSummer(CutHeights own) {
    double summerMm = own.raised(Math.rint((HIGHER - 1) * own.usualMm())).usualMm();
    Map<Month, Double> byMonth = new EnumMap<>(Month.class);
    for (Month month : List.of(Month.JUNE, Month.JULY, Month.AUGUST)) {
      byMonth.put(southern ? month.plus(6) : month, summerMm);
    }
    return new CutHeights(own.usualMm(), byMonth);
  }

  private double[] feeds() {
    double ownGPerM2 = YearlyNitrogen.gPerM2(lawn.programme().feedings());
    if (ownGPerM2 == 0) {
      return FEEDS_G_PER_M2;
    }
    double[] feeds = new double[FEED_SHARES.length];
    for (int level = 0; level < feeds.length; level++) {
      feeds[level] = FEED_SHARES[level] * ownGPerM2;
    }
    return feeds;
  }
}
