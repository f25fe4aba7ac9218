package leafturn.advice.season;

import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.Spread;
import leafturn.model.lawn.Lawn;
import org.jspecify.annotations.Nullable;

/**
 * Hours, litres and bags of a year's mowings, as far as the lawn's description tells.
 *
 * @param ground area and mower
 * @param rules figures for volume, overlap and bags
 */
record YearlyWork(Lawn.Ground ground, CallRules rules) {
  private static final double MINUTES_PER_HOUR = 60;
  private static final double MM_PER_M = 1000;
  private static final double M_PER_KM = 1000;

  ProgrammeOutcome.Work of(double[] mowings, double[] collectedGPerM2) {
    double[] litresPerM2 = new double[mowings.length];
    for (int season = 0; season < mowings.length; season++) {
      litresPerM2[season] = collectedGPerM2[season] / rules.threshold(CallRule.DRY_G_PER_LITRE);
    }
    Double areaM2 = ground.areaM2();
    double[] litres = areaM2 == null ? null : times(litresPerM2, areaM2);
    double[] bags = bags(litres);
    double[] hours = hours(mowings, bags);
    return new ProgrammeOutcome.Work(
        spread(hours), Spread.of(litresPerM2), spread(litres), spread(bags));
  }

  private double @Nullable [] bags(double @Nullable [] litres) {
    Lawn.Mower mower = ground.mower();
    return litres == null || mower == null || mower.bagLitres() == null
        ? null
        : times(litres, 1 / mower.bagLitres());
  }

  private double @Nullable [] hours(double[] mowings, double @Nullable [] bags) {
    double mowingHours = mowingHours();
    if (Double.isNaN(mowingHours)) {
      return null;
    }
    double bagHours = rules.threshold(CallRule.BAG_MINUTES) / MINUTES_PER_HOUR;
    double[] hours = times(mowings, mowingHours);
    for (int season = 0; season < hours.length; season++) {
      hours[season] += bags == null ? 0 : bags[season] * bagHours;
    }
    return hours;
  }

  /** Hours behind the mower each time, NaN when the description does not tell. */
  double mowingHours() {
    Lawn.Mower mower = ground.mower();
    Double areaM2 = ground.areaM2();
    if (areaM2 == null
        || mower == null
        || mower.deckWidthMm() == null
        || mower.speedKmPerH() == null) {
      return Double.NaN;
    }
    double widthM = rules.threshold(CallRule.PASS_OVERLAP) * mower.deckWidthMm() / MM_PER_M;
    double passes = mower.doubleCut() ? 2 : 1;
    return passes * areaM2 / (widthM * mower.speedKmPerH() * M_PER_KM);
  }

  private static double[] times(double[] values, double factor) {
    double[] product = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      product[i] = factor * values[i];
    }
    return product;
  }

  private static @Nullable Spread spread(double @Nullable [] values) {
    return values == null ? null : Spread.of(values);
  }
}
