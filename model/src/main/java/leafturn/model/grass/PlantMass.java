package leafturn.model.grass;

import static leafturn.model.Stores.CUT_HEIGHT_MM;
import static leafturn.model.Stores.LEAF_C;
import static leafturn.model.Stores.PLANT_N;
import static leafturn.model.Stores.ROOT_C;
import static leafturn.model.Stores.STUBBLE_C;

import leafturn.model.Parameters;

/** Dry matter, N fraction and height of the grass. */
public final class PlantMass {
  private final double carbonFraction;
  private final double dryGPerCarbon;
  private final double heightPerCarbon;
  private final double stubbleNitrogen;
  private final double rootNitrogen;
  private final double leafGPerM2AndMm;

  /**
   * @param parameters cC, kapS, kapR, rho
   */
  public PlantMass(Parameters parameters) {
    this.carbonFraction = parameters.get("cC");
    this.stubbleNitrogen = parameters.get("kapS");
    this.rootNitrogen = parameters.get("kapR");
    this.leafGPerM2AndMm = parameters.get("rho");
    this.dryGPerCarbon = 1 / carbonFraction;
    this.heightPerCarbon = dryGPerCarbon / leafGPerM2AndMm;
  }

  /** Carbon in dry matter, g/g. */
  public double carbonFraction() {
    return carbonFraction;
  }

  /** Dry matter per carbon, g/g. */
  public double dryGPerCarbon() {
    return dryGPerCarbon;
  }

  /** N concentration of stubble over that of leaf. */
  public double stubbleNitrogen() {
    return stubbleNitrogen;
  }

  /** N concentration of root over that of leaf. */
  public double rootNitrogen() {
    return rootNitrogen;
  }

  /** Dry matter above the cut height, g/m2 per mm. */
  public double leafGPerM2AndMm() {
    return leafGPerM2AndMm;
  }

  /** Carbon weighted by N concentration relative to leaf, g/m2. */
  double leafEquivalentC(double[] stores) {
    return stores[LEAF_C] + stubbleNitrogen * stores[STUBBLE_C] + rootNitrogen * stores[ROOT_C];
  }

  /** Dry matter weighted by N concentration relative to leaf, g/m2. */
  public double leafEquivalentG(double[] stores) {
    return leafEquivalentC(stores) * dryGPerCarbon;
  }

  /** N fraction of leaf, g/g. */
  public double leafNitrogenFraction(double[] stores) {
    return stores[PLANT_N] / leafEquivalentG(stores);
  }

  /** Leaf above the cut height, g dry matter per m2. */
  public double leafG(double[] stores) {
    return stores[LEAF_C] * dryGPerCarbon;
  }

  /** Height of the grass, mm. */
  public double heightMm(double[] stores) {
    return stores[CUT_HEIGHT_MM] + stores[LEAF_C] * heightPerCarbon;
  }
}
