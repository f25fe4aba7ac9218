package leafturn.model.soil;

import static leafturn.model.Flows.DENITRIFIED_N;
import static leafturn.model.Flows.DEPOSITION_N;
import static leafturn.model.Flows.FAST_TO_AMMONIUM_N;
import static leafturn.model.Flows.FAST_VOLATILISED_N;
import static leafturn.model.Flows.LEACHED_N;
import static leafturn.model.Flows.NITRIFIED_N;
import static leafturn.model.Flows.SLOW_TO_AMMONIUM_N;
import static leafturn.model.Flows.VOLATILISED_N;
import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.FAST_FERTILISER_N;
import static leafturn.model.Stores.NITRATE_N;
import static leafturn.model.Stores.SLOW_FERTILISER_N;

import leafturn.model.Bounds;
import leafturn.model.FirstOrder;
import leafturn.model.Parameters;

/** Ammonium and nitrate: what fertiliser and rain bring, and what turns over or is lost. */
public final class MineralNitrogen {
  private final double depositionPerDay;
  private final double fastFraction;
  private final double volatileFraction;
  private final double wateringInMm;
  private final double slowRatePerDay;
  private final double nitrificationPerDay;
  private final double denitrificationPerDay;
  private final double denitrificationWater;
  private final double saturatedMm;

  /**
   * @param parameters ndep, kff, vlos, wvol, kfs, knit, kden, denW, sat, zr
   */
  public MineralNitrogen(Parameters parameters) {
    this.depositionPerDay = parameters.get("ndep") / 365;
    this.fastFraction = FirstOrder.lostFraction(parameters.get("kff"));
    this.volatileFraction = parameters.get("vlos");
    this.wateringInMm = parameters.get("wvol");
    this.slowRatePerDay = parameters.get("kfs");
    this.nitrificationPerDay = parameters.get("knit");
    this.denitrificationPerDay = parameters.get("kden");
    this.denitrificationWater = parameters.get("denW");
    this.saturatedMm = 1000 * parameters.get("sat") * parameters.get("zr");
  }

  /**
   * Deposition, and release of fertiliser to ammonium; part of the fast one goes off as ammonia
   * unless it is watered in.
   *
   * @param waterMm rain and irrigation of the day, mm
   * @param airTemperatureC mean air temperature, °C
   * @param slowWarmth temperature factor of decay at soil temperature times moisture factor
   */
  public void receive(
      double[] stores, double[] flows, double waterMm, double airTemperatureC, double slowWarmth) {
    stores[NITRATE_N] += depositionPerDay;
    flows[DEPOSITION_N] = depositionPerDay;
    if (stores[FAST_FERTILISER_N] > 0) {
      double dissolved = fastFraction * stores[FAST_FERTILISER_N];
      double warmth = Bounds.fraction(airTemperatureC / 20);
      double lost = volatileFraction * left(waterMm) * warmth * dissolved;
      stores[FAST_FERTILISER_N] -= dissolved;
      stores[AMMONIUM_N] += dissolved - lost;
      flows[VOLATILISED_N] += lost;
      flows[FAST_VOLATILISED_N] = lost;
      flows[FAST_TO_AMMONIUM_N] = dissolved - lost;
    }
    if (stores[SLOW_FERTILISER_N] > 0) {
      double released =
          FirstOrder.lostFraction(slowRatePerDay * slowWarmth) * stores[SLOW_FERTILISER_N];
      stores[SLOW_FERTILISER_N] -= released;
      stores[AMMONIUM_N] += released;
      flows[SLOW_TO_AMMONIUM_N] = released;
    }
  }

  /** Share of the ammonia loss that the day's water leaves; most days are dry. */
  private double left(double waterMm) {
    return waterMm == 0 ? 1 : Math.exp(-waterMm / wateringInMm);
  }

  /**
   * Nitrification, and denitrification in a full root zone.
   *
   * @param soilTemperatureC °C
   * @param soilDecay temperature factor of decay at soil temperature
   * @param water water in the root zone over its capacity, 0-1
   */
  public void turnOver(
      double[] stores, double[] flows, double soilTemperatureC, double soilDecay, double water) {
    double rate =
        nitrificationPerDay
            * (Bounds.atLeast(0, soilTemperatureC - 5) / 10)
            * Bounds.atMost(1, water / 0.25);
    double nitrified = FirstOrder.lostFraction(rate) * stores[AMMONIUM_N];
    stores[AMMONIUM_N] -= nitrified;
    stores[NITRATE_N] += nitrified;
    flows[NITRIFIED_N] = nitrified;
    if (water >= denitrificationWater) {
      double lost = FirstOrder.lostFraction(denitrificationPerDay * soilDecay) * stores[NITRATE_N];
      stores[NITRATE_N] -= lost;
      flows[DENITRIFIED_N] = lost;
    }
  }

  /**
   * Nitrate leaves with the drainage.
   *
   * @param drainageMm mm, 0 or more
   */
  public void leach(double[] stores, double[] flows, double drainageMm) {
    if (drainageMm > 0) {
      double lost = FirstOrder.lostFraction(drainageMm / saturatedMm) * stores[NITRATE_N];
      stores[NITRATE_N] -= lost;
      flows[LEACHED_N] = lost;
    }
  }
}
