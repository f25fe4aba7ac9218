package leafturn.model.lawn;

/**
 * One calendar year of a lawn. Masses in kg/ha, water in mm; thatch and soil test at its last day.
 *
 * @param year calendar year
 * @param days days that were run
 * @param partial true when that is not the whole year
 * @param clippings what was cut
 * @param losses N that left
 * @param water water that came and went
 * @param end read-outs on the last day
 */
public record YearAccount(
    int year,
    int days,
    boolean partial,
    Clippings clippings,
    NitrogenLosses losses,
    Water water,
    End end) {

  /**
   * All that the mower handled, returned or not.
   *
   * @param dryKgPerHa dry matter
   * @param nitrogenKgPerHa N in it
   * @param mowings number of cuts
   * @param returnedDryKgPerHa dry matter returned
   * @param growthKgPerHa growth of leaf, stubble and root, dry matter
   * @param uptakeNKgPerHa N taken up
   */
  public record Clippings(
      double dryKgPerHa,
      double nitrogenKgPerHa,
      int mowings,
      double returnedDryKgPerHa,
      double growthKgPerHa,
      double uptakeNKgPerHa) {}

  /** N leached, gone as ammonia, denitrified and collected with clippings. */
  public record NitrogenLosses(
      double leachedKgPerHa,
      double volatilisedKgPerHa,
      double denitrifiedKgPerHa,
      double collectedKgPerHa) {}

  /** Water, mm. */
  public record Water(
      double rainMm,
      double evapotranspirationMm,
      double drainageMm,
      double runoffMm,
      double irrigationMm) {}

  /** Thatch, soil test and N in soil organic matter. */
  public record End(
      double thatchMm,
      double clippingsShareOfThatch,
      double soilPhosphorusPpm,
      double soilPotassiumPpm,
      double humusNGPerM2) {}
}
