package leafturn.model.lawn;

import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.CUT_HEIGHT_MM;
import static leafturn.model.Stores.DEPLETION_MM;
import static leafturn.model.Stores.FRESH_C;
import static leafturn.model.Stores.FRESH_N;
import static leafturn.model.Stores.FRESH_P;
import static leafturn.model.Stores.HUMUS_C;
import static leafturn.model.Stores.HUMUS_N;
import static leafturn.model.Stores.HUMUS_P;
import static leafturn.model.Stores.LEAF_C;
import static leafturn.model.Stores.MICROBE_C;
import static leafturn.model.Stores.MICROBE_N;
import static leafturn.model.Stores.NITRATE_N;
import static leafturn.model.Stores.PLANT_K;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.PLANT_P;
import static leafturn.model.Stores.ROOT_C;
import static leafturn.model.Stores.SOIL_K;
import static leafturn.model.Stores.SOIL_P;
import static leafturn.model.Stores.STUBBLE_C;
import static leafturn.model.Stores.THATCH_C;
import static leafturn.model.Stores.THATCH_N;
import static leafturn.model.Stores.THATCH_P;

import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.soil.SoilTestReadout;
import leafturn.quantity.SoilLayer;

/** The state in which a run begins before its spin-up years. */
final class StartState {
  private StartState() {}

  /** Stores of a middling lawn, with the soil of its soil test. */
  static double[] of(LawnEquations equations, double cutHeightMm) {
    Parameters parameters = equations.parameters();
    double carbonFraction = equations.mass.carbonFraction();
    double[] stores = new double[Stores.COUNT];
    stores[CUT_HEIGHT_MM] = cutHeightMm;
    stores[LEAF_C] = carbonFraction * parameters.get("leaf0");
    stores[STUBBLE_C] = carbonFraction * parameters.get("stub0");
    stores[ROOT_C] = carbonFraction * parameters.get("root0");
    stores[PLANT_N] = parameters.get("nc0") * equations.mass.leafEquivalentG(stores);
    stores[PLANT_P] = parameters.get("rP") * stores[PLANT_N];
    stores[PLANT_K] = parameters.get("rK") * stores[PLANT_N];
    stores[FRESH_C] = carbonFraction * parameters.get("fo0");
    stores[FRESH_N] = parameters.get("foN0") * parameters.get("fo0");
    stores[FRESH_P] = parameters.get("foP0");
    stores[THATCH_C] = carbonFraction * parameters.get("th0");
    stores[THATCH_N] = parameters.get("thN0") * parameters.get("th0");
    stores[THATCH_P] = parameters.get("thP0");
    soil(stores, parameters, equations.soilTest);
    return stores;
  }

  private static void soil(double[] stores, Parameters parameters, SoilTestReadout soilTest) {
    double soilG =
        1000 * new SoilLayer(parameters.get("depth"), parameters.get("bd")).massKgPerM2();
    double organicMatterG = parameters.get("om") * soilG;
    stores[MICROBE_C] = parameters.get("mb0");
    stores[MICROBE_N] = parameters.get("mb0") / parameters.get("cnm");
    stores[HUMUS_C] = parameters.get("soC") * organicMatterG;
    stores[HUMUS_N] = parameters.get("omN") * organicMatterG;
    stores[HUMUS_P] = parameters.get("soP") * stores[HUMUS_N];
    stores[AMMONIUM_N] = parameters.get("nh40");
    stores[NITRATE_N] = parameters.get("no30");
    stores[SOIL_P] = soilTest.startPhosphorusG();
    stores[SOIL_K] = soilTest.startPotassiumG();
    stores[DEPLETION_MM] = parameters.get("Dr0");
  }
}
