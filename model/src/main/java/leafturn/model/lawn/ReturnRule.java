package leafturn.model.lawn;

/** Decides at a mowing what becomes of the clippings, from the lawn's present state alone. */
@FunctionalInterface
public interface ReturnRule {
  /**
   * @param run on the evening of the mowing, before the cut
   * @param toHeightMm height it will be cut to, mm
   * @return share of the clippings returned, 0 to 1
   */
  double returnedShare(LawnRun run, double toHeightMm);
}
