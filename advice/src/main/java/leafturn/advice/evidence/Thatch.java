package leafturn.advice.evidence;

import java.util.List;
import leafturn.model.Stores;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnState;
import leafturn.model.lawn.YearAccount;

/** Thatch of bluegrass after five years with and without N. */
final class Thatch {
  private static final double START_MM = 7.5;
  private static final int YEARS = 5;
  private static final int[] THATCH_STORES = {
    Stores.THATCH_C,
    Stores.CLIPPING_THATCH_C,
    Stores.THATCH_N,
    Stores.CLIPPING_THATCH_N,
    Stores.THATCH_P,
    Stores.CLIPPING_THATCH_P
  };

  private Thatch() {}

  static List<Measured> on(TrialGround ground) {
    YearAccount.End fedReturned = after(ground, Treatment.returned(253));
    YearAccount.End unfedReturned = after(ground, Treatment.returned(0));
    return List.of(
        Measured.of(
            "thatch.0", after(ground, Treatment.collected(0)).thatchMm(), "start %.1f", START_MM),
        Measured.of("thatch.253", after(ground, Treatment.collected(253)).thatchMm(), ""),
        Measured.of(
            "thatch.clippings",
            fromClippingsMm(fedReturned),
            "total %.1f; at 0 N %.2f",
            fedReturned.thatchMm(),
            fromClippingsMm(unfedReturned)));
  }

  private static double fromClippingsMm(YearAccount.End end) {
    return end.thatchMm() * end.clippingsShareOfThatch();
  }

  private static YearAccount.End after(TrialGround ground, Treatment treatment) {
    LawnState eve = ground.past(Plot.BLUEGRASS, treatment.past(TrialGround.PAST_N));
    LawnEquations equations = Plot.BLUEGRASS.equations(treatment);
    double[] stores = eve.stores();
    double factor = START_MM / equations.thatchMm(stores);
    for (int store : THATCH_STORES) {
      stores[store] *= factor;
    }
    LawnState start = new LawnState(stores, eve.soilC());
    Course course = ground.run(Plot.BLUEGRASS, treatment, start, YEARS, DayListener.NONE);
    return course.years().get(YEARS - 1).end();
  }
}
