package leafturn.model.lawn;

import leafturn.model.Flows;
import leafturn.model.Stores;

/**
 * Closes carbon, N, P, K and water of each day: end - start - in + out must be rounding alone, and
 * no store may be negative.
 */
final class Balance {
  private static final String[] ELEMENTS = {"C (g)", "N (g)", "P (g)", "K (g)", "water (mm)"};
  private static final int WATER = 4;

  /** First store of each element; each block ends where the next begins. */
  private static final int[] STORES = {
    Stores.CARBON,
    Stores.NITROGEN,
    Stores.PHOSPHORUS,
    Stores.POTASSIUM,
    Stores.WATER,
    Stores.WATER + 1
  };

  /** First flow that enters, per element; each block ends where the flows that leave begin. */
  private static final int[] ENTERING = {
    Flows.PHOTOSYNTHESIS_C,
    Flows.FERTILISER_N,
    Flows.FERTILISER_P,
    Flows.FERTILISER_K,
    Flows.RAIN_MM,
    Flows.RUNOFF_MM + 1
  };

  private static final int[] LEAVING = {
    Flows.RESPIRED_C,
    Flows.COLLECTED_N,
    Flows.COLLECTED_P,
    Flows.COLLECTED_K,
    Flows.EVAPOTRANSPIRATION_MM
  };

  private static final double FLOW_TOLERANCE = 1e-9;
  private static final double STOCK_TOLERANCE = 1e-12;

  private final double[] stocks = new double[ELEMENTS.length];
  private final double[] worst = new double[ELEMENTS.length];

  /** Takes the stocks at the start of a run. */
  void open(double[] stores) {
    for (int element = 0; element < stocks.length; element++) {
      stocks[element] = Stores.sum(stores, STORES[element], STORES[element + 1]);
    }
  }

  /** Largest errors of the run so far: C, N, P, K in g/m2, water in mm. */
  double[] worst() {
    return worst.clone();
  }

  /**
   * Closes a day and makes its end the next day's start.
   *
   * @throws BalanceException naming what does not close, the day and the terms
   */
  void close(double[] stores, double[] flows, DailyTerms terms, int day) {
    for (int element = 0; element < stocks.length; element++) {
      double stock = 0;
      double largest = 0;
      for (int store = STORES[element]; store < STORES[element + 1]; store++) {
        double value = stores[store];
        if (!(value >= 0)) {
          throw new BalanceException(
              "%s is %s at the end of %s, but no store may be negative"
                  .formatted(Stores.name(store), value, terms.date(day)));
        }
        stock += value;
        largest = value > largest ? value : largest;
      }
      double change = stock - stocks[element];
      stocks[element] = stock;
      close(element, element == WATER ? -change : change, largest, flows, terms, day);
    }
  }

  private void close(
      int element, double change, double largest, double[] flows, DailyTerms terms, int day) {
    double in = 0;
    double boundary = 0;
    for (int flow = ENTERING[element]; flow < LEAVING[element]; flow++) {
      in += flows[flow];
      boundary += Math.abs(flows[flow]);
    }
    double out = 0;
    for (int flow = LEAVING[element]; flow < ENTERING[element + 1]; flow++) {
      out += flows[flow];
    }
    double error = Math.abs(change - in + out);
    if (error > worst[element]) {
      worst[element] = error;
    }
    if (!(error <= FLOW_TOLERANCE * (boundary + out) + STOCK_TOLERANCE * largest)) {
      throw new BalanceException(
          "%s does not close on %s: change %s, in %s, out %s, error %s"
              .formatted(ELEMENTS[element], terms.date(day), change, in, out, error));
    }
  }
}
