package leafturn.model.clippings;

import static leafturn.model.Stores.LITTER_K;
import static leafturn.model.Stores.SOIL_K;

import leafturn.model.FirstOrder;
import leafturn.model.Parameters;

/** Potassium in returned clippings: almost all of it is washed out by water. */
public final class ClippingPotassium {
  private final double washRatePerMm;
  private final double washableFraction;

  /**
   * @param parameters kwash, kl
   */
  public ClippingPotassium(Parameters parameters) {
    this.washRatePerMm = parameters.get("kwash");
    this.washableFraction = parameters.get("kl");
  }

  /**
   * One day of wash-out and release with the loss of mass.
   *
   * @param stores state, changed
   * @param waterMm rain and irrigation, mm
   * @param metabolicLostFraction share of the fast clippings that decayed today, 1 if there were
   *     none
   */
  public void step(double[] stores, double waterMm, double metabolicLostFraction) {
    double unwashed = 1 - washableFraction * FirstOrder.lostFraction(washRatePerMm * waterMm);
    double released = stores[LITTER_K] * (1 - unwashed * (1 - metabolicLostFraction));
    stores[LITTER_K] -= released;
    stores[SOIL_K] += released;
  }
}
