package leafturn.advice.call;

/** Clump risk of returned clippings. */
public final class ClumpRisk {
  private ClumpRisk() {}

  /**
   * The clump index K = F D / L: load where the clippings lie thickest over what the turf takes up.
   * Up to 1 clumps are unlikely, above 1.5 very likely.
   *
   * @param dryGPerM2 D, dry clippings of one cut, g/m2, 0 or more
   * @param deckFactor F, load where they lie thickest over their mean, 1 or more
   * @param limitGPerM2 L, limit for dry or for wet grass, g/m2, positive
   * @throws IllegalArgumentException outside the ranges
   * @source our judgement
   */
  public static double index(double dryGPerM2, double deckFactor, double limitGPerM2) {
    if (!(dryGPerM2 >= 0 && deckFactor >= 1 && limitGPerM2 > 0)) {
      throw new IllegalArgumentException(
          "the clump index needs clippings of 0 g/m2 or more, a deck factor of 1 or more and a limit above 0, but got %s, %s and %s"
              .formatted(dryGPerM2, deckFactor, limitGPerM2));
    }
    return deckFactor * dryGPerM2 / limitGPerM2;
  }
}
