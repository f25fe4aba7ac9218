package leafturn.quantity;

/**
 * The layer a soil test speaks for. A test states mg per kg of soil; the layer's mass turns that
 * into grams under a square metre.
 *
 * @param depthCm depth of the cores, cm, above 0 to 200
 * @param bulkDensityGPerCm3 dry soil, g/cm3, above 0 to 2.65
 */
public record SoilLayer(double depthCm, double bulkDensityGPerCm3) {
  private static final Range DEPTH = new Range("depth of the soil layer", 0.1, 200, "cm");
  private static final Range DENSITY = new Range("bulk density", 0.05, 2.65, "g/cm3");

  public SoilLayer {
    DEPTH.checked(depthCm);
    DENSITY.checked(bulkDensityGPerCm3);
  }

  /** Dry soil under a square metre, kg: depth x bulk density x 10. */
  public double massKgPerM2() {
    return 10 * depthCm * bulkDensityGPerCm3;
  }

  /** Grams under a square metre at a test value, mg/kg. */
  public double gPerM2(double ppm) {
    return ppm * massKgPerM2() / 1000;
  }

  /** Test value, mg/kg, of an amount under a square metre, g. */
  public double ppm(double gPerM2) {
    return gPerM2 * 1000 / massKgPerM2();
  }
}
