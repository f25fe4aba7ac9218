package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.LogKeeper.Correction;

/** Growth between cuts as it was logged, against the model's over the same days. */
final class LoggedGrowth {
  private static final int SHOWN = 8;

  /** Standard deviations from the middle to the 90th percentile. */
  private static final double NINE_TENTHS = 1.2816;

  private final Map<LocalDate, Double> grownFromMm = new HashMap<>();
  private double afterLastCutMm = Double.NaN;

  /** Notes a cut: what it left is what the next interval grows from. */
  void cut(LocalDate day, double heightAfterMm) {
    grownFromMm.putIfAbsent(day, afterLastCutMm);
    afterLastCutMm = heightAfterMm;
  }

  /**
   * What the logged heights say.
   *
   * @param corrections of the run that noted its cuts here, in order
   * @param unmeasured what is known before any height
   */
  GrowthFactor factor(List<Correction> corrections, GrowthFactor unmeasured) {
    return unmeasured.measured(ratios(corrections));
  }

  private List<Double> ratios(List<Correction> corrections) {
    return corrections.stream().filter(this::tells).map(this::ratio).toList();
  }

  private boolean tells(Correction correction) {
    double from = fromMm(correction);
    return correction.modelMm() - from >= GrowthFactor.LEAST_GROWTH_MM
        && correction.measuredMm() > from;
  }

  /** Height that the last cut before left, mm, NaN where there was none. */
  private double fromMm(Correction correction) {
    return grownFromMm.getOrDefault(correction.day(), Double.NaN);
  }

  private double ratio(Correction correction) {
    double from = fromMm(correction);
    return (correction.measuredMm() - from) / (correction.modelMm() - from);
  }

  /** The same for a reader, with each height as it was to be expected before it was measured. */
  OwnGrowth shown(List<Correction> corrections, GrowthFactor unmeasured) {
    List<Double> ratios = new ArrayList<>();
    List<OwnGrowth.PastHeight> past = new ArrayList<>();
    for (Correction correction : corrections) {
      if (tells(correction)) {
        past.add(expected(correction, unmeasured.measured(ratios)));
        ratios.add(ratio(correction));
      }
    }
    if (ratios.isEmpty()) {
      return OwnGrowth.UNMEASURED;
    }
    GrowthFactor known = unmeasured.measured(ratios);
    Spread factor = new Spread(known.drawn(-NINE_TENTHS), known.middle(), known.drawn(NINE_TENTHS));
    return new OwnGrowth(
        factor, ratios.size(), past.subList(Math.max(0, past.size() - SHOWN), past.size()));
  }

  private OwnGrowth.PastHeight expected(Correction correction, GrowthFactor before) {
    double from = fromMm(correction);
    double growth = correction.modelMm() - from;
    double logSd = Math.hypot(before.logSd(), GrowthFactor.RATIO_LOG_SD);
    GrowthFactor reading = new GrowthFactor(before.logMean(), logSd);
    Spread expected =
        new Spread(
            from + growth * reading.drawn(-NINE_TENTHS),
            from + growth * reading.middle(),
            from + growth * reading.drawn(NINE_TENTHS));
    return new OwnGrowth.PastHeight(correction.day(), expected, correction.measuredMm());
  }
}
