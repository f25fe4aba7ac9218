package leafturn.advice.call;

/** Heights that mowers can cut at. */
public final class DeckHeights {
  /** Walk-behind and ride-on decks end at 100-115 mm (common practice, from memory). */
  public static final double HIGHEST_MM = 115;

  private DeckHeights() {}
}
