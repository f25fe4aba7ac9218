package leafturn.model.soil;

import leafturn.quantity.Range;

/**
 * Nitrogen that decaying litter sets free or ties up. Microbes keep a share of the carbon and need
 * nitrogen to match; rich litter leaves some over, poor litter takes it from the soil.
 */
public final class NitrogenRelease {
  private static final Range EFFICIENCY = new Range("microbial efficiency", 0, 1, "");
  private static final Range RECYCLED = new Range("recycled fraction", 0, 0.99, "");

  private NitrogenRelease() {}

  /**
   * Microbes as the budget of nitrogen sees them.
   *
   * @param efficiencyFraction E, carbon kept per carbon decomposed, above 0 to 1
   * @param carbonPerNitrogen CN_M, microbial C:N, g/g, above 0
   */
  public record Microbes(double efficiencyFraction, double carbonPerNitrogen) {
    public Microbes {
      EFFICIENCY.checked(efficiencyFraction);
      requirePositive("microbial efficiency", efficiencyFraction);
      requirePositive("microbial C:N", carbonPerNitrogen);
    }
  }

  /**
   * Mineral nitrogen set free by decaying litter, in the unit of the carbon: D (1/CN_L - E/CN_M).
   * Negative where the microbes take nitrogen from the soil.
   *
   * @param decomposedCarbon D, carbon decomposed, 0 or more
   * @param litterCarbonPerNitrogen CN_L, C:N of the litter, g/g, above 0
   * @param microbes efficiency and C:N
   * @throws IllegalArgumentException when the carbon is negative or the C:N not positive
   * @source nrcscn, carbon to nitrogen budget of decay
   */
  public static double netNitrogen(
      double decomposedCarbon, double litterCarbonPerNitrogen, Microbes microbes) {
    if (!(decomposedCarbon >= 0)) {
      throw new IllegalArgumentException(
          "decomposed carbon is %s, but must be 0 or more".formatted(decomposedCarbon));
    }
    requirePositive("litter C:N", litterCarbonPerNitrogen);
    return decomposedCarbon
        * (1 / litterCarbonPerNitrogen
            - microbes.efficiencyFraction() / microbes.carbonPerNitrogen());
  }

  /**
   * Share of the litter's nitrogen set free at once: 1 - E CN_L/CN_M. Negative where nitrogen is
   * tied up.
   *
   * @param litterCarbonPerNitrogen CN_L, C:N of the litter, g/g, above 0
   * @param microbes efficiency and C:N
   * @throws IllegalArgumentException when the C:N is not positive
   * @source nrcscn, carbon to nitrogen budget of decay
   */
  public static double netFraction(double litterCarbonPerNitrogen, Microbes microbes) {
    requirePositive("litter C:N", litterCarbonPerNitrogen);
    return 1
        - microbes.efficiencyFraction() * litterCarbonPerNitrogen / microbes.carbonPerNitrogen();
  }

  /**
   * C:N of litter at which nothing is set free or tied up: CN_M/E.
   *
   * @param microbes efficiency and C:N
   * @source nrcscn, carbon to nitrogen budget of decay
   */
  public static double criticalCarbonPerNitrogen(Microbes microbes) {
    return microbes.carbonPerNitrogen() / microbes.efficiencyFraction();
  }

  /**
   * How many times the collected lawn's uptake a lawn takes up in the long run when a share of the
   * clipping nitrogen comes back into later clippings: 1/(1 - r).
   *
   * @param recycledFraction r, 0 to 0.99; field studies give 0.25 to 0.375
   * @throws IllegalArgumentException outside the range or NaN
   * @source definition
   */
  public static double recyclingMultiple(double recycledFraction) {
    return 1 / (1 - RECYCLED.checked(recycledFraction));
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException("%s is %s, but must be above 0".formatted(name, value));
    }
  }
}
