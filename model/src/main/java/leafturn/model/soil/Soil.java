package leafturn.model.soil;

/**
 * The soil of a lawn.
 *
 * @param water what it holds
 * @param test what a soil test says of it
 */
public record Soil(Water water, Test test) {

  /**
   * Water contents and runoff class.
   *
   * @param fieldCapacity m3/m3, above the wilting point
   * @param wiltingPoint m3/m3, 0.01 to 0.6
   * @param saturation m3/m3, above field capacity, up to 0.9
   * @param curveNumber SCS curve number, 30 to 100
   */
  public record Water(
      double fieldCapacity, double wiltingPoint, double saturation, double curveNumber) {
    public Water {
      within("soil.wiltingPoint", wiltingPoint, 0.01, 0.6);
      within("soil.fieldCapacity", fieldCapacity, 0.02, 0.8);
      within("soil.saturation", saturation, 0.05, 0.9);
      within("soil.curveNumber", curveNumber, 30, 100);
      if (!(wiltingPoint < fieldCapacity && fieldCapacity < saturation)) {
        throw new IllegalArgumentException(
            "soil.wiltingPoint < soil.fieldCapacity < soil.saturation must hold, but they are %s, %s and %s"
                .formatted(wiltingPoint, fieldCapacity, saturation));
      }
    }
  }

  /**
   * A soil test.
   *
   * @param organicMatterPercent % of the soil's mass, 0.1 to 30
   * @param depthCm depth of the cores, cm, 2 to 40
   * @param bulkDensityGPerCm3 g/cm3, 0.5 to 2
   * @param phosphorusPpm mg P per kg soil, 0 to 2000
   * @param potassiumPpm mg K per kg soil, 0 to 5000
   * @param extractant of P and K, for instance Mehlich-3
   */
  public record Test(
      double organicMatterPercent,
      double depthCm,
      double bulkDensityGPerCm3,
      double phosphorusPpm,
      double potassiumPpm,
      String extractant) {
    public Test {
      within("soil.organicMatterPercent", organicMatterPercent, 0.1, 30);
      within("soil.testDepthCm", depthCm, 2, 40);
      within("soil.bulkDensityGPerCm3", bulkDensityGPerCm3, 0.5, 2);
      within("soil.phosphorusPpm", phosphorusPpm, 0, 2000);
      within("soil.potassiumPpm", potassiumPpm, 0, 5000);
    }
  }

  private static void within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s is %s, but must lie from %s to %s".formatted(name, value, low, high));
    }
  }
}
