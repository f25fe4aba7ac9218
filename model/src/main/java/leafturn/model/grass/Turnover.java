package leafturn.model.grass;

import static leafturn.model.Flows.PLANT_TO_FRESH_N;
import static leafturn.model.Flows.PLANT_TO_THATCH_N;
import static leafturn.model.Stores.FRESH_C;
import static leafturn.model.Stores.FRESH_N;
import static leafturn.model.Stores.FRESH_P;
import static leafturn.model.Stores.LEAF_C;
import static leafturn.model.Stores.PLANT_K;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.PLANT_P;
import static leafturn.model.Stores.ROOT_C;
import static leafturn.model.Stores.SOIL_K;
import static leafturn.model.Stores.STUBBLE_C;
import static leafturn.model.Stores.THATCH_C;
import static leafturn.model.Stores.THATCH_N;
import static leafturn.model.Stores.THATCH_P;

import leafturn.model.Parameters;

/**
 * Death of stubble, roots and leaf: part of the stubble becomes thatch, the rest fresh soil matter.
 */
public final class Turnover {
  private final PlantMass mass;
  private final double stubbleRatePerDay;
  private final double rootRatePerDay;
  private final double leafRatePerDay;
  private final double droughtSpeeding;
  private final double keptFraction;
  private final double thatchFraction;

  /**
   * @param parameters kstub, kroot, ksen, dsen, retr, phiT
   */
  public Turnover(Parameters parameters, PlantMass mass) {
    this.mass = mass;
    this.stubbleRatePerDay = parameters.get("kstub");
    this.rootRatePerDay = parameters.get("kroot");
    this.leafRatePerDay = parameters.get("ksen");
    this.droughtSpeeding = parameters.get("dsen");
    this.keptFraction = parameters.get("retr");
    this.thatchFraction = parameters.get("phiT");
  }

  /**
   * One day.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param soilTemperatureC °C
   * @param waterStress 1 without stress, 0 in full drought
   */
  public void step(double[] stores, double[] flows, double soilTemperatureC, double waterStress) {
    double warmth = 0.15 + 0.85 * Math.min(1, Math.max(0, soilTemperatureC / 20));
    double leafNitrogen = mass.leafNitrogenFraction(stores);
    double leafRate = leafRatePerDay * warmth * (1 + droughtSpeeding * (1 - waterStress));
    die(
        stores,
        flows,
        STUBBLE_C,
        stubbleRatePerDay * warmth,
        mass.stubbleNitrogen() * leafNitrogen);
    die(stores, flows, ROOT_C, rootRatePerDay * warmth, mass.rootNitrogen() * leafNitrogen);
    die(stores, flows, LEAF_C, leafRate, leafNitrogen);
  }

  private void die(
      double[] stores, double[] flows, int tissue, double rate, double nitrogenFraction) {
    double carbon = stores[tissue] * (1 - Math.exp(-rate));
    double nitrogen = carbon / mass.carbonFraction() * nitrogenFraction * (1 - keptFraction);
    double plantShare = nitrogen / stores[PLANT_N];
    double phosphorus = plantShare * stores[PLANT_P];
    double potassium = plantShare * stores[PLANT_K];
    double toThatch = tissue == STUBBLE_C ? thatchFraction : 0;

    stores[tissue] -= carbon;
    stores[PLANT_N] -= nitrogen;
    stores[PLANT_P] -= phosphorus;
    stores[PLANT_K] -= potassium;
    stores[THATCH_C] += toThatch * carbon;
    stores[THATCH_N] += toThatch * nitrogen;
    stores[THATCH_P] += toThatch * phosphorus;
    stores[FRESH_C] += (1 - toThatch) * carbon;
    stores[FRESH_N] += (1 - toThatch) * nitrogen;
    stores[FRESH_P] += (1 - toThatch) * phosphorus;
    stores[SOIL_K] += potassium;
    flows[PLANT_TO_THATCH_N] += toThatch * nitrogen;
    flows[PLANT_TO_FRESH_N] += (1 - toThatch) * nitrogen;
  }
}
