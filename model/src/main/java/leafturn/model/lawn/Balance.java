package leafturn.model.lawn;

import java.util.Arrays;
import leafturn.model.Flows;
import leafturn.model.Stores;

/**
 * Closes carbon, N, P, K and water of each day: end - start - in + out must be rounding alone, and
 * no store may be negative.
 */
final class Balance {
  /**
   * What is balanced.
   *
   * @param sign 1 for a stock, -1 for water, whose store is what is missing
   * @param stores first store; the block ends at {@code storesEnd}
   * @param entering first flow that enters; those that leave follow from {@code leaving} on
   */
  private record Element(
      String name, int sign, int stores, int storesEnd, int entering, int leaving, int flowsEnd) {}

  private static final Element CARBON =
      new Element(
          "C (g)",
          1,
          Stores.CARBON,
          Stores.NITROGEN,
          Flows.PHOTOSYNTHESIS_C,
          Flows.RESPIRED_C,
          Flows.FERTILISER_N);
  private static final Element NITROGEN =
      new Element(
          "N (g)",
          1,
          Stores.NITROGEN,
          Stores.PHOSPHORUS,
          Flows.FERTILISER_N,
          Flows.COLLECTED_N,
          Flows.FERTILISER_P);
  private static final Element PHOSPHORUS =
      new Element(
          "P (g)",
          1,
          Stores.PHOSPHORUS,
          Stores.POTASSIUM,
          Flows.FERTILISER_P,
          Flows.COLLECTED_P,
          Flows.FERTILISER_K);
  private static final Element POTASSIUM =
      new Element(
          "K (g)",
          1,
          Stores.POTASSIUM,
          Stores.WATER,
          Flows.FERTILISER_K,
          Flows.COLLECTED_K,
          Flows.RAIN_MM);
  private static final Element WATER =
      new Element(
          "water (mm)",
          -1,
          Stores.WATER,
          Stores.WATER + 1,
          Flows.RAIN_MM,
          Flows.EVAPOTRANSPIRATION_MM,
          Flows.RUNOFF_MM + 1);

  private static final double FLOW_TOLERANCE = 1e-9;
  private static final double STOCK_TOLERANCE = 1e-12;

  private final double[] stocks = new double[5];
  private final double[] worst = new double[5];

  /** Takes the stocks at the start of a run. */
  void open(double[] stores) {
    stocks[0] = stock(CARBON, stores);
    stocks[1] = stock(NITROGEN, stores);
    stocks[2] = stock(PHOSPHORUS, stores);
    stocks[3] = stock(POTASSIUM, stores);
    stocks[4] = stock(WATER, stores);
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
  @SuppressWarnings("ShortCircuitBoolean") // each element is closed, whatever became of the others
  void close(double[] stores, double[] flows, DailyTerms terms, int day) {
    // Not a loop: with constants for indices the compiler unrolls each sum.
    boolean closed =
        closes(CARBON, 0, stores, flows)
            & closes(NITROGEN, 1, stores, flows)
            & closes(PHOSPHORUS, 2, stores, flows)
            & closes(POTASSIUM, 3, stores, flows)
            & closes(WATER, 4, stores, flows);
    if (!closed) {
      throw new BalanceException(
          "the account of %s does not close: error %s g C, %s g N, %s g P, %s g K, %s mm; stores %s; flows %s"
              .formatted(
                  terms.date(day),
                  worst[0],
                  worst[1],
                  worst[2],
                  worst[3],
                  worst[4],
                  Arrays.toString(stores),
                  Arrays.toString(flows)));
    }
    long signs = 0;
    for (int store = 0; store <= Stores.WATER; store++) {
      signs |= Double.doubleToRawLongBits(stores[store]);
    }
    if (signs < 0) {
      refuseNegative(stores, terms, day);
    }
  }

  /** Some sign bit is set; a negative zero may stand, a negative amount may not. */
  private static void refuseNegative(double[] stores, DailyTerms terms, int day) {
    for (int store = 0; store <= Stores.WATER; store++) {
      if (stores[store] < 0) {
        throw new BalanceException(
            "%s is %s at the end of %s, but no store may be negative"
                .formatted(Stores.name(store), stores[store], terms.date(day)));
      }
    }
  }

  private boolean closes(Element element, int index, double[] stores, double[] flows) {
    double in = Stores.sum(flows, element.entering, element.leaving);
    double out = Stores.sum(flows, element.leaving, element.flowsEnd);
    double stock = stock(element, stores);
    double error = Math.abs(stock - stocks[index] - in + out);
    stocks[index] = stock;
    worst[index] = Math.max(worst[index], error);
    double allowed = FLOW_TOLERANCE * (Math.abs(in) + out);
    // The largest store is at least the mean one; that settles almost every day without a search.
    double mean = Math.abs(stock) / (element.storesEnd - element.stores);
    return error <= allowed + STOCK_TOLERANCE * mean
        || error <= allowed + STOCK_TOLERANCE * largest(element, stores);
  }

  private static double stock(Element element, double[] stores) {
    return element.sign * Stores.sum(stores, element.stores, element.storesEnd);
  }

  private static double largest(Element element, double[] stores) {
    double largest = 0;
    for (int store = element.stores; store < element.storesEnd; store++) {
      largest = Math.max(largest, stores[store]);
    }
    return largest;
  }
}
