package leafturn.trials.design.layout;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.trials.design.Design;
import leafturn.trials.design.TrialPlan;

/** Arms for which the drawing from a list decides nothing, since all its layouts agree on them. */
public final class FixedArms {
  private FixedArms() {}

  /**
   * Arms that lie on the same plots in every layout.
   *
   * @param layouts an arm for each plot, all of one length; may be empty
   */
  public static List<String> of(List<List<String>> layouts) {
    return layouts.isEmpty()
        ? List.of()
        : layouts.get(0).stream()
            .distinct()
            .filter(arm -> layouts.stream().map(each -> places(arm, each)).distinct().count() == 1)
            .sorted()
            .toList();
  }

  private static List<Integer> places(String arm, List<String> layout) {
    return IntStream.range(0, layout.size())
        .filter(place -> layout.get(place).equals(arm))
        .boxed()
        .toList();
  }

  /** A sentence for the arms of a lawn that the list leaves no choice; none where it does. */
  static List<String> notes(TrialPlan plan, List<Unit> units) {
    if (plan.arrangement().design() != Design.LISTED || units.isEmpty()) {
      return List.of();
    }
    int from = units.get(0).lawn() * units.size();
    List<String> fixed =
        of(
            plan.arrangement().allowedLayouts().stream()
                .map(layout -> layout.subList(from, from + units.size()))
                .toList());
    return fixed.isEmpty() ? List.of() : List.of(sentence(fixed, "allowed", "plots of this lawn"));
  }

  /**
   * That the drawing decides nothing for some arms.
   *
   * @param arms one or more
   * @param which layouts they are, as "allowed"
   * @param where "plots of this lawn"
   */
  public static String sentence(List<String> arms, String which, String where) {
    boolean one = arms.size() == 1;
    return "In every %s layout %s on the same %s: the drawing decides nothing for %s, and what lies under %s cannot be told from what %s."
        .formatted(
            which,
            arms.stream().map("'%s'"::formatted).collect(Collectors.joining(" and "))
                + (one ? " lies" : " lie"),
            where,
            one ? "it" : "them",
            one ? "it" : "them",
            one ? "it does" : "they do");
  }
}
