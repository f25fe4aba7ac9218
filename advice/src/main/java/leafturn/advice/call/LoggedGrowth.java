package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import leafturn.model.lawn.LogKeeper.Correction;

/**
 * Growth since a logged cut as heights were logged, against the model's over the same days. A
 * height counts on the day of the next cut or before it. Little growth, of the model or of the
 * lawn, counts as the least that a ruler tells, so that a height against the model teaches too, and
 * not beyond measure; heights between which neither grew so much are taken together.
 */
final class LoggedGrowth {
  private static final int SHOWN = 8;

  /** Standard deviations from the middle to the 90th percentile. */
  private static final double NINE_TENTHS = 1.2816;

  private final NavigableMap<LocalDate, Double> leftMm = new TreeMap<>();

  /**
   * A height and what it grew from.
   *
   * @param fromMm height at the start of the growth, mm
   * @param modelMm growth of the model since then, mm
   * @param grownMm growth as measured, mm
   */
  private record Reading(LocalDate day, double fromMm, double modelMm, double grownMm) {
    /** Measured over modelled growth, each at least what a ruler tells. */
    double ratio() {
      return Math.max(GrowthFactor.LEAST_GROWTH_MM, grownMm)
          / Math.max(GrowthFactor.LEAST_GROWTH_MM, modelMm);
    }

    /** True when there was growth to tell of. */
    boolean tells() {
      return Math.max(grownMm, modelMm) >= GrowthFactor.LEAST_GROWTH_MM && !cutSince();
    }

    /** True when the grass was cut since then, and nobody logged it. */
    boolean cutSince() {
      return grownMm < -MeasuredGrowth.NOT_THAT_CUT_MM;
    }

    Reading and(Correction next) {
      double level = fromMm + grownMm;
      return new Reading(
          next.day(),
          fromMm,
          modelMm + next.modelMm() - level,
          grownMm + next.measuredMm() - level);
    }
  }

  /**
   * Notes a cut: what it left is what the next interval grows from.
   *
   * @param heightAfterMm what it left, mm; NaN for a cut that nobody logged
   */
  void cut(LocalDate day, double heightAfterMm) {
    leftMm.put(day, heightAfterMm);
  }

  /**
   * What the logged heights say.
   *
   * @param corrections of the run that noted its cuts here, in order
   * @param unmeasured what is known before any height
   */
  GrowthFactor factor(List<Correction> corrections, GrowthFactor unmeasured) {
    return unmeasured.measured(readings(corrections).stream().map(Reading::ratio).toList());
  }

  private List<Reading> readings(List<Correction> corrections) {
    List<Reading> readings = new ArrayList<>();
    LocalDate lastCut = LocalDate.MIN;
    Reading since = null;
    for (Correction correction : corrections) {
      Map.Entry<LocalDate, Double> cut = leftMm.lowerEntry(correction.day());
      if (cut == null || Double.isNaN(cut.getValue())) {
        continue;
      }
      if (since == null || !cut.getKey().equals(lastCut)) {
        lastCut = cut.getKey();
        since = new Reading(lastCut, cut.getValue(), 0, 0);
      }
      since = since.and(correction);
      if (since.tells()) {
        readings.add(since);
      }
      if (since.tells() || since.cutSince()) {
        since = new Reading(correction.day(), correction.measuredMm(), 0, 0);
      }
    }
    return readings;
  }

  /** The same for a reader, with each height as it was to be expected before it was measured. */
  OwnGrowth shown(List<Correction> corrections, GrowthFactor unmeasured) {
    List<Double> ratios = new ArrayList<>();
    List<OwnGrowth.PastHeight> past = new ArrayList<>();
    for (Reading reading : readings(corrections)) {
      past.add(expected(reading, unmeasured.measured(ratios)));
      ratios.add(reading.ratio());
    }
    if (ratios.isEmpty()) {
      return OwnGrowth.UNMEASURED;
    }
    GrowthFactor known = unmeasured.measured(ratios);
    Spread factor = new Spread(known.drawn(-NINE_TENTHS), known.middle(), known.drawn(NINE_TENTHS));
    return new OwnGrowth(
        factor, ratios.size(), past.subList(Math.max(0, past.size() - SHOWN), past.size()));
  }

  private static OwnGrowth.PastHeight expected(Reading of, GrowthFactor before) {
    double logSd = Math.hypot(before.logSd(), GrowthFactor.RATIO_LOG_SD);
    GrowthFactor reading = new GrowthFactor(before.logMean(), logSd);
    Spread expected =
        new Spread(
            of.fromMm() + of.modelMm() * reading.drawn(-NINE_TENTHS),
            of.fromMm() + of.modelMm() * reading.middle(),
            of.fromMm() + of.modelMm() * reading.drawn(NINE_TENTHS));
    return new OwnGrowth.PastHeight(of.day(), expected, of.fromMm() + of.grownMm());
  }
}
