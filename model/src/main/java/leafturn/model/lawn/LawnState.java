package leafturn.model.lawn;

import leafturn.model.Stores;

/** The state of a lawn at the end of a day. */
public final class LawnState {
  private final double[] stores;
  private final double soilC;

  /**
   * @param stores in the layout of {@link Stores}, copied
   * @param soilC soil temperature, °C, or NaN before the first day
   */
  public LawnState(double[] stores, double soilC) {
    if (stores.length != Stores.COUNT) {
      throw new IllegalArgumentException(
          "a state has " + Stores.COUNT + " stores, not " + stores.length);
    }
    this.stores = stores.clone();
    this.soilC = soilC;
  }

  /** The stores, a copy. */
  public double[] stores() {
    return stores.clone();
  }

  /** One store. */
  public double store(int store) {
    return stores[store];
  }

  /** Soil temperature, °C, or NaN before the first day. */
  public double soilC() {
    return soilC;
  }
}
