package leafturn.reports.plan;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.season.SeasonPlan;

/** What a plan was reckoned over, in sentences. */
public final class BasisWords {
  /** Fewer years than these make a weak fit of the weather. */
  private static final int GOOD_RECORD_YEARS = 20;

  private BasisWords() {}

  /** The sentences, most important first. */
  public static List<String> of(SeasonPlan.Basis basis) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Over %d possible seasons, generated like the weather on record and the same for every programme (seed %d); ranges hold 8 of 10 of them."
            .formatted(basis.draws().seasons(), basis.draws().seed()));
    sentences.add(
        "Each programme starts from the lawn after %s kept as now, and settles for %d years before the year that is told: the first year of returning shows little of its effect."
            .formatted(years(basis.presentYears()), basis.settlingYears()));
    sentences.add(
        "Thatch is followed for 5 years from the lawn as it is now, in %d possible seasons; the feed for growth as now is searched in %d."
            .formatted(basis.longRuns(), basis.feedSeasons()));
    sentences.add(
        "The model says more of the nitrogen in returned clippings comes back than long studies do, so the feed it finds for a returned lawn is a lower limit; lower a feed in steps and watch the lawn.");
    sentences.add(
        "Mowings over %s are counted as advice counts them: by the height that the day of the mowing begins with, with the tolerance of the rules."
            .formatted(basis.third()));
    sentences.add(
        "A plan mows on the day a cut is due, in wet grass too, where clumps are likely; advice waits for dry hours, so whoever follows it meets fewer.");
    sentences.add(
        "Each cut has a quality of its own: the older its leaf and the longer its pieces, the slower it breaks down (assumed sizes).");
    if (basis.recordYears().size() < GOOD_RECORD_YEARS) {
      sentences.add(
          "The record holds %s; 20 or more give a better picture of what may come."
              .formatted(years(basis.recordYears().size())));
    }
    return sentences;
  }

  private static String years(int years) {
    return years == 1 ? "1 year" : years + " years";
  }
}
