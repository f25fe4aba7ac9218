package leafturn.model.grass;

import static leafturn.model.Flows.CLIPPINGS_G;
import static leafturn.model.Flows.CLIPPINGS_N;
import static leafturn.model.Flows.COLLECTED_C;
import static leafturn.model.Flows.COLLECTED_K;
import static leafturn.model.Flows.COLLECTED_N;
import static leafturn.model.Flows.COLLECTED_P;
import static leafturn.model.Flows.CUT_FAST_FRACTION;
import static leafturn.model.Flows.CUT_N_FACTOR;
import static leafturn.model.Flows.CUT_N_FRACTION;
import static leafturn.model.Flows.MOWINGS;
import static leafturn.model.Flows.RETURNED_G;
import static leafturn.model.Flows.RETURNED_N;
import static leafturn.model.Flows.RETURNED_SHARE;
import static leafturn.model.Flows.TO_METABOLIC_N;
import static leafturn.model.Flows.TO_STRUCTURAL_N;
import static leafturn.model.Stores.DAYS_SINCE_MOWING;
import static leafturn.model.Stores.LEAF_C;
import static leafturn.model.Stores.LITTER_K;
import static leafturn.model.Stores.METABOLIC_C;
import static leafturn.model.Stores.METABOLIC_N;
import static leafturn.model.Stores.METABOLIC_P;
import static leafturn.model.Stores.PLANT_K;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.PLANT_P;
import static leafturn.model.Stores.SOIL_P;
import static leafturn.model.Stores.STRUCTURAL_C;
import static leafturn.model.Stores.STRUCTURAL_N;
import static leafturn.model.Stores.STRUCTURAL_P;

import leafturn.model.Bounds;
import leafturn.model.Parameters;

/** One cut: leaf becomes clippings that fall back on the turf or are collected. */
public final class Cut {
  private final PlantMass mass;
  private final double handledFraction;
  private final double freePhosphorusFraction;

  /**
   * @param parameters eff, pinst
   */
  public Cut(Parameters parameters, PlantMass mass) {
    this.mass = mass;
    this.handledFraction = parameters.get("eff");
    this.freePhosphorusFraction = parameters.get("pinst");
  }

  /**
   * Cuts a share of the leaf above the cut height. What the mower misses stays on the turf whatever
   * was chosen; the clippings reported are those it handles. Their quality (share of the fast pool
   * and N over that of the leaf) stands in the flows.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param leafFraction share of the leaf above the cut height that is cut, 0-1
   * @param returnedShare share of the handled clippings returned, 0-1
   */
  public void cut(double[] stores, double[] flows, double leafFraction, double returnedShare) {
    double carbon = leafFraction * stores[LEAF_C];
    double dryG = carbon / mass.carbonFraction();
    double nitrogen =
        nitrogen(dryG * mass.leafNitrogenFraction(stores), flows[CUT_N_FACTOR], stores[PLANT_N]);
    double plantShare = nitrogen / stores[PLANT_N];
    double phosphorus = plantShare * stores[PLANT_P];
    double potassium = plantShare * stores[PLANT_K];
    stores[LEAF_C] -= carbon;
    stores[PLANT_N] -= nitrogen;
    stores[PLANT_P] -= phosphorus;
    stores[PLANT_K] -= potassium;

    double back = 1 - (1 - returnedShare) * handledFraction;
    drop(stores, flows, back * carbon, back * nitrogen);
    double freePhosphorus = freePhosphorusFraction * back * phosphorus;
    stores[SOIL_P] += freePhosphorus;
    dropPhosphorus(stores, flows, back * phosphorus - freePhosphorus);
    stores[LITTER_K] += back * potassium;
    stores[DAYS_SINCE_MOWING] = 0;

    flows[COLLECTED_C] += carbon - back * carbon;
    flows[COLLECTED_N] += nitrogen - back * nitrogen;
    flows[COLLECTED_P] += phosphorus - back * phosphorus;
    flows[COLLECTED_K] += potassium - back * potassium;
    flows[CLIPPINGS_G] += handledFraction * dryG;
    flows[CLIPPINGS_N] += handledFraction * nitrogen;
    flows[RETURNED_G] += returnedShare * handledFraction * dryG;
    flows[RETURNED_N] += returnedShare * handledFraction * nitrogen;
    flows[MOWINGS] += 1;
    flows[CUT_N_FRACTION] = dryG > 0 ? nitrogen / dryG : 0;
    flows[RETURNED_SHARE] = returnedShare;
  }

  /**
   * N of the cut: as in all leaf, times a factor; but what stays keeps half at least of what it
   * would have at a factor of 1.
   */
  private static double nitrogen(double common, double factor, double ofPlant) {
    return factor == 1 ? common : Bounds.atMost(common + (ofPlant - common) / 2, factor * common);
  }

  private static void drop(double[] stores, double[] flows, double carbon, double nitrogen) {
    double metabolicFraction = flows[CUT_FAST_FRACTION];
    stores[METABOLIC_C] += metabolicFraction * carbon;
    stores[STRUCTURAL_C] += (1 - metabolicFraction) * carbon;
    stores[METABOLIC_N] += metabolicFraction * nitrogen;
    stores[STRUCTURAL_N] += (1 - metabolicFraction) * nitrogen;
    flows[TO_METABOLIC_N] += metabolicFraction * nitrogen;
    flows[TO_STRUCTURAL_N] += (1 - metabolicFraction) * nitrogen;
  }

  private static void dropPhosphorus(double[] stores, double[] flows, double phosphorus) {
    double metabolicFraction = flows[CUT_FAST_FRACTION];
    stores[METABOLIC_P] += metabolicFraction * phosphorus;
    stores[STRUCTURAL_P] += (1 - metabolicFraction) * phosphorus;
  }
}
