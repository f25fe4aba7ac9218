package leafturn.trials.findings;

import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.design.Contrast;

/** What a stored list of allowed layouts lets the test by its layouts show. */
public final class ListedLayouts {
  private ListedLayouts() {}

  /**
   * The smallest p that a list can give where one of its layouts was drawn: of a difference as
   * large as can be, only those layouts show as much that have both arms on the same plots, or have
   * them changed about, as a mirror image has.
   *
   * @param contrast the arms that are compared
   * @param drawn an arm for each plot
   * @param allowed the layouts, as long as the drawn one; at least one
   * @source fisher1935, section 21
   */
  public static double smallestP(
      Contrast contrast, List<String> drawn, List<List<String>> allowed) {
    long alike =
        allowed.stream()
            .filter(
                other -> isAlike(contrast, drawn, other, 1) || isAlike(contrast, drawn, other, -1))
            .count();
    return (double) Math.max(1, alike) / allowed.size();
  }

  /** The smallest p over the layouts that could be drawn. */
  public static double smallestP(Contrast contrast, List<List<String>> allowed) {
    return allowed.stream()
        .mapToDouble(drawn -> smallestP(contrast, drawn, allowed))
        .min()
        .orElse(Double.NaN);
  }

  private static boolean isAlike(
      Contrast contrast, List<String> drawn, List<String> other, int sign) {
    return IntStream.range(0, drawn.size())
        .allMatch(
            plot -> weight(contrast, other.get(plot)) == sign * weight(contrast, drawn.get(plot)));
  }

  private static int weight(Contrast contrast, String arm) {
    return arm.equals(contrast.first()) ? 1 : arm.equals(contrast.second()) ? -1 : 0;
  }
}
