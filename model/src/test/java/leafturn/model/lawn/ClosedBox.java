package leafturn.model.lawn;

import static leafturn.model.Flows.*;

import java.util.stream.IntStream;
import leafturn.model.Stores;

/**
 * A second account of a run, kept by nothing the run itself uses for its own: what is in the box,
 * and what goes through its walls, element by element and day by day.
 */
final class ClosedBox implements DayListener {
  /**
   * One element's walls.
   *
   * @param stores all it may be in
   * @param in flows that bring it
   * @param out flows that take it
   * @param sign -1 where the store counts what is missing
   */
  private record Element(String name, int[] stores, int[] in, int[] out, int sign) {}

  private static final Element[] ELEMENTS = {
    new Element(
        "C",
        IntStream.range(0, 10).toArray(),
        new int[] {PHOTOSYNTHESIS_C, CORRECTION_C},
        new int[] {RESPIRED_C, COLLECTED_C},
        1),
    new Element(
        "N",
        IntStream.range(10, 22).toArray(),
        new int[] {FERTILISER_N, DEPOSITION_N, CORRECTION_N},
        new int[] {COLLECTED_N, VOLATILISED_N, DENITRIFIED_N, LEACHED_N},
        1),
    new Element(
        "P",
        IntStream.range(22, 30).toArray(),
        new int[] {FERTILISER_P, CORRECTION_P},
        new int[] {COLLECTED_P, LEACHED_P},
        1),
    new Element(
        "K",
        IntStream.range(30, 33).toArray(),
        new int[] {FERTILISER_K, CORRECTION_K},
        new int[] {COLLECTED_K, LEACHED_K},
        1),
    new Element(
        "water",
        new int[] {Stores.DEPLETION_MM},
        new int[] {RAIN_MM, IRRIGATION_MM},
        new int[] {EVAPOTRANSPIRATION_MM, DRAINAGE_MM, RUNOFF_MM},
        -1)
  };

  private final double[] before = new double[ELEMENTS.length];
  private final double needPerCarbon;
  private int days;
  private int starvedDays;
  private double leastScale = 1;

  ClosedBox(LawnEquations equations, LawnState start) {
    needPerCarbon = equations.parameters().get("E") / equations.parameters().get("cnm");
    for (int element = 0; element < ELEMENTS.length; element++) {
      for (int store : ELEMENTS[element].stores()) {
        before[element] += ELEMENTS[element].sign() * start.store(store);
      }
    }
  }

  @Override
  public void dayDone(LawnRun run) {
    days++;
    for (int element = 0; element < ELEMENTS.length; element++) {
      close(run, element);
    }
    feedMicrobes(run);
    if (run.flow(DECAY_SCALE) < 1) {
      starvedDays++;
      leastScale = Math.min(leastScale, run.flow(DECAY_SCALE));
    }
    if (!(run.heightMm() > 0) || !(run.flow(LEAF_N_FRACTION) >= 0)) {
      throw new AssertionError("height or leaf N is no number on day " + run.day());
    }
  }

  /** Microbes get N for all the carbon they keep, or decay would make matter without N. */
  private void feedMicrobes(LawnRun run) {
    double given = 0;
    double needed = 0;
    for (int pool = 0; pool < 5; pool++) {
      given +=
          run.flow(TO_MICROBES_N + pool)
              + run.flow(AMMONIUM_TIED_UP_N + pool)
              + run.flow(NITRATE_TIED_UP_N + pool);
      needed += needPerCarbon * run.flow(DECAYED_C + pool);
    }
    if (!(Math.abs(given - needed) <= 1e-9 * needed + 1e-15)) {
      throw new AssertionError(
          "microbes need %s g N but get %s on day %d".formatted(needed, given, run.day()));
    }
  }

  private void close(LawnRun run, int index) {
    Element element = ELEMENTS[index];
    double stock = 0;
    double largest = 0;
    for (int store : element.stores()) {
      double value = run.store(store);
      if (!(value >= 0) || Double.isInfinite(value)) {
        throw new AssertionError(
            "%s is %s on day %d".formatted(Stores.name(store), value, run.day()));
      }
      stock += element.sign() * value;
      largest = Math.max(largest, value);
    }
    double through = 0;
    double gain = 0;
    for (int flow : element.in()) {
      gain += run.flow(flow);
      through += Math.abs(run.flow(flow));
    }
    for (int flow : element.out()) {
      if (run.flow(flow) < 0) {
        throw new AssertionError("flow %d is %s".formatted(flow, run.flow(flow)));
      }
      gain -= run.flow(flow);
      through += run.flow(flow);
    }
    double error = Math.abs(stock - before[index] - gain);
    before[index] = stock;
    if (!(error <= 1e-9 * through + 1e-12 * largest)) {
      throw new AssertionError(
          "%s is off by %s on day %d".formatted(element.name(), error, run.day()));
    }
  }

  int days() {
    return days;
  }

  /** Days on which decay was held back by want of mineral N. */
  int starvedDays() {
    return starvedDays;
  }

  double leastScale() {
    return leastScale;
  }
}
