package leafturn.advice.evidence;

import static leafturn.advice.evidence.Course.DRY;

import java.util.ArrayList;
import java.util.List;
import leafturn.model.Stores;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.LawnState;

/**
 * N that a returned lawn needs less for the same yield, window by window over 80 years. Each window
 * goes on from the state the last one ended in and begins with the record's first year.
 */
final class NitrogenSaving {
  private static final double FULL_RATE = 150;
  private static final int[] LAST_YEARS = {10, 25, 50, 80};

  /** Halvings of the rate: to 0.0001 kg/ha. */
  private static final int HALVINGS = 21;

  private NitrogenSaving() {}

  static List<Measured> on(TrialGround ground) {
    Treatment full = Treatment.collected(FULL_RATE).mown(Treatment.Mowing.ONE_THIRD);
    LawnState collected = ground.past(Plot.BLUEGRASS, full);
    LawnState returned = collected;
    List<Measured> measured = new ArrayList<>();
    int begun = 0;
    for (int last : LAST_YEARS) {
      int years = last - begun;
      Course reference = ground.run(Plot.BLUEGRASS, full, collected, years, DayListener.NONE);
      double rate = equalYieldRate(ground, returned, reference);
      returned = keptAt(ground, returned, rate, years).end();
      collected = reference.end();
      measured.add(
          Measured.of(
              "saving.%d".formatted(last),
              100 * (1 - rate / FULL_RATE),
              "collected %.0f kg/ha; soil organic N %.0f collected, %.0f returned, g/m2",
              reference.mean(DRY),
              collected.store(Stores.HUMUS_N),
              returned.store(Stores.HUMUS_N)));
      begun = last;
    }
    return measured;
  }

  private static double equalYieldRate(TrialGround ground, LawnState start, Course reference) {
    double low = 0;
    double high = FULL_RATE;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      Course tried = keptAt(ground, start, middle, reference.years().size());
      if (tried.mean(DRY) < reference.mean(DRY)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static Course keptAt(TrialGround ground, LawnState start, double rate, int years) {
    Treatment treatment = Treatment.returned(rate).mown(Treatment.Mowing.ONE_THIRD);
    return ground.run(Plot.BLUEGRASS, treatment, start, years, DayListener.NONE);
  }
}
