package leafturn.model.grass;

import static leafturn.model.Flows.AMMONIUM_UPTAKE_N;
import static leafturn.model.Flows.UPTAKE_N;
import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.NITRATE_N;
import static leafturn.model.Stores.PLANT_K;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.PLANT_P;
import static leafturn.model.Stores.SOIL_K;
import static leafturn.model.Stores.SOIL_P;

import leafturn.model.Bounds;
import leafturn.model.Parameters;
import leafturn.model.soil.SoilTestReadout;

/** Uptake of N, P and K by the roots: what the plant wants, bounded by what it can reach. */
public final class Uptake {
  /** Share of the soil P or K store that a day's uptake can reach. */
  private static final double REACHABLE_FRACTION = 0.02;

  /** Below 10 ppm P or 30 ppm K in the soil test, less of the store can be reached. */
  private static final double PLENTY_PER_PPM_P = 1 / 10.;

  private static final double PLENTY_PER_PPM_K = 1 / 30.;

  private final PlantMass mass;
  private final SoilTestReadout soilTest;
  private final double fullNitrogenFraction;
  private final double ratePerDay;
  private final double capPerDay;
  private final double fullTemperatureC;
  private final double phosphorusToNitrogen;
  private final double potassiumToNitrogen;

  /**
   * @param parameters nhi, u, ucap, tu, rP, rK
   */
  public Uptake(Parameters parameters, PlantMass mass, SoilTestReadout soilTest) {
    this.mass = mass;
    this.soilTest = soilTest;
    this.fullNitrogenFraction = parameters.get("nhi");
    this.ratePerDay = parameters.get("u");
    this.capPerDay = parameters.get("ucap");
    this.fullTemperatureC = parameters.get("tu");
    this.phosphorusToNitrogen = parameters.get("rP");
    this.potassiumToNitrogen = parameters.get("rK");
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
    double mineral = stores[AMMONIUM_N] + stores[NITRATE_N];
    double wanted =
        Bounds.atLeast(0, fullNitrogenFraction * mass.leafEquivalentG(stores) - stores[PLANT_N]);
    double ability = Bounds.fraction(soilTemperatureC / fullTemperatureC) * waterStress;
    double uptake = Bounds.atMost(capPerDay, Bounds.atMost(wanted, ratePerDay * ability * mineral));
    if (uptake > 0) {
      double share = uptake / mineral;
      double ammonium = share * stores[AMMONIUM_N];
      double nitrate = share * stores[NITRATE_N];
      stores[AMMONIUM_N] -= ammonium;
      stores[NITRATE_N] -= nitrate;
      stores[PLANT_N] += ammonium + nitrate;
      flows[AMMONIUM_UPTAKE_N] = ammonium;
      flows[UPTAKE_N] = uptake;
    }
    takeUp(
        stores,
        SOIL_P,
        PLANT_P,
        phosphorusToNitrogen,
        soilTest.phosphorusPpm(stores) * PLENTY_PER_PPM_P);
    takeUp(
        stores,
        SOIL_K,
        PLANT_K,
        potassiumToNitrogen,
        soilTest.potassiumPpm(stores) * PLENTY_PER_PPM_K);
  }

  private static void takeUp(
      double[] stores, int soil, int plant, double ratioToNitrogen, double plenty) {
    double wanted = Bounds.atLeast(0, ratioToNitrogen * stores[PLANT_N] - stores[plant]);
    double reachable = REACHABLE_FRACTION * stores[soil] * Bounds.fraction(plenty);
    double uptake = Bounds.atMost(reachable, wanted);
    stores[soil] -= uptake;
    stores[plant] += uptake;
  }
}
