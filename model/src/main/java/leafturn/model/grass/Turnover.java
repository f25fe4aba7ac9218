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

import leafturn.model.Bounds;
import leafturn.model.FirstOrder;
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
   * Days at 20 °C that a day counts for in the life of grass: 0.15 + 0.85 Ts/20, held to 0.15 to 1.
   *
   * @param soilTemperatureC Ts, °C
   * @source our judgement
   */
  public static double warmthFraction(double soilTemperatureC) {
    return 0.15 + 0.85 * Bounds.fraction(soilTemperatureC / 20);
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
    double warmth = warmthFraction(soilTemperatureC);
    double drought = 1 + droughtSpeeding * (1 - waterStress);
    double stubble = stores[STUBBLE_C] * FirstOrder.lostFraction(stubbleRatePerDay * warmth);
    double root = stores[ROOT_C] * FirstOrder.lostFraction(rootRatePerDay * warmth);
    double leaf = stores[LEAF_C] * FirstOrder.lostFraction(leafRatePerDay * warmth * drought);
    // Share of the plant's N in each dying tissue; P and K leave in the same proportion.
    double perCarbon = (1 - keptFraction) / mass.leafEquivalentC(stores);
    double stubbleShare = perCarbon * mass.stubbleNitrogen() * stubble;
    double otherShare = perCarbon * (mass.rootNitrogen() * root + leaf);
    double thatchShare = thatchFraction * stubbleShare;
    double freshShare = stubbleShare - thatchShare + otherShare;

    stores[STUBBLE_C] -= stubble;
    stores[ROOT_C] -= root;
    stores[LEAF_C] -= leaf;
    stores[THATCH_C] += thatchFraction * stubble;
    stores[FRESH_C] += (1 - thatchFraction) * stubble + root + leaf;
    double nitrogen = stores[PLANT_N];
    double phosphorus = stores[PLANT_P];
    double potassium = (thatchShare + freshShare) * stores[PLANT_K];
    flows[PLANT_TO_THATCH_N] = thatchShare * nitrogen;
    flows[PLANT_TO_FRESH_N] = freshShare * nitrogen;
    stores[PLANT_N] -= (thatchShare + freshShare) * nitrogen;
    stores[THATCH_N] += thatchShare * nitrogen;
    stores[FRESH_N] += freshShare * nitrogen;
    stores[PLANT_P] -= (thatchShare + freshShare) * phosphorus;
    stores[THATCH_P] += thatchShare * phosphorus;
    stores[FRESH_P] += freshShare * phosphorus;
    stores[PLANT_K] -= potassium;
    stores[SOIL_K] += potassium;
  }
}
