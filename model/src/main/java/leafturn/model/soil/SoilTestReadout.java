package leafturn.model.soil;

import static leafturn.model.Flows.LEACHED_K;
import static leafturn.model.Flows.LEACHED_P;
import static leafturn.model.Stores.SOIL_K;
import static leafturn.model.Stores.SOIL_P;

import leafturn.model.Bounds;
import leafturn.model.Parameters;
import leafturn.quantity.SoilLayer;

/** Soil P and K: the soil test a laboratory would read, and what drainage and runoff take. */
public final class SoilTestReadout {
  private final double phosphorusPpmPerG;
  private final double potassiumPpmPerG;
  private final double startPhosphorusPpm;
  private final double startPotassiumPpm;
  private final double startPhosphorusG;
  private final double startPotassiumG;
  private final double potassiumInWater;
  private final double phosphorusInWater;

  /**
   * @param parameters depth, bd, bP, bK, stp0, stk0, cKl, cPl
   */
  public SoilTestReadout(Parameters parameters) {
    double soilKgPerM2 = new SoilLayer(parameters.get("depth"), parameters.get("bd")).massKgPerM2();
    this.phosphorusPpmPerG = parameters.get("bP") * 1000 / soilKgPerM2;
    this.potassiumPpmPerG = parameters.get("bK") * 1000 / soilKgPerM2;
    this.startPhosphorusPpm = parameters.get("stp0");
    this.startPotassiumPpm = parameters.get("stk0");
    this.startPhosphorusG = startPhosphorusPpm / phosphorusPpmPerG;
    this.startPotassiumG = startPotassiumPpm / potassiumPpmPerG;
    this.potassiumInWater = parameters.get("cKl") / 1000;
    this.phosphorusInWater = parameters.get("cPl") / 1000;
  }

  /** Soil P store that answers to the soil test at the start, g/m2. */
  public double startPhosphorusG() {
    return startPhosphorusG;
  }

  /** Soil K store that answers to the soil test at the start, g/m2. */
  public double startPotassiumG() {
    return startPotassiumG;
  }

  /** Soil-test P of a state, ppm. */
  public double phosphorusPpm(double[] stores) {
    return startPhosphorusPpm + phosphorusPpmPerG * (stores[SOIL_P] - startPhosphorusG);
  }

  /** Soil-test K of a state, ppm. */
  public double potassiumPpm(double[] stores) {
    return startPotassiumPpm + potassiumPpmPerG * (stores[SOIL_K] - startPotassiumG);
  }

  /**
   * K leaves with drainage, P with drainage and runoff, as much as the soil test lets into the
   * water.
   *
   * @param drainageMm mm
   * @param runoffMm mm
   */
  public void leach(double[] stores, double[] flows, double drainageMm, double runoffMm) {
    double potassium =
        Bounds.atMost(
            stores[SOIL_K],
            drainageMm * potassiumInWater * Bounds.atLeast(0, potassiumPpm(stores)));
    double phosphorus =
        Bounds.atMost(
            stores[SOIL_P],
            (drainageMm + runoffMm) * phosphorusInWater * Bounds.atLeast(0, phosphorusPpm(stores)));
    stores[SOIL_K] -= potassium;
    stores[SOIL_P] -= phosphorus;
    flows[LEACHED_K] = potassium;
    flows[LEACHED_P] = phosphorus;
  }
}
