package leafturn.records.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.sheet.TrialPast.PlanVersion;

/**
 * Something of a plan that was changed after it was frozen.
 *
 * @param sentence what it was, what it became, when and why; without a full stop
 * @param judging whether a verdict rests on it
 */
record PlanChange(String sentence, boolean judging) {
  /** A longer text is told to be another, not repeated. */
  private static final int LONGEST = 300;

  private static final String OUTCOME = "outcome ";

  /**
   * All changes, the earliest first.
   *
   * @param versions the frozen plan first
   */
  static List<PlanChange> of(List<PlanVersion> versions) {
    List<PlanChange> changes = new ArrayList<>();
    for (int i = 1; i < versions.size(); i++) {
      String since = i == 1 ? " when the plan was frozen" : "";
      Map<String, String> was = PlanFacts.of(FrozenPlan.read(versions.get(i - 1)));
      Map<String, String> is = PlanFacts.of(FrozenPlan.read(versions.get(i)));
      Set<String> all = new LinkedHashSet<>(was.keySet());
      all.addAll(is.keySet());
      for (String what : all) {
        String before = was.getOrDefault(what, "none");
        String after = is.getOrDefault(what, "none");
        if (!before.equals(after) && isToldAlone(what, was, is)) {
          changes.add(change(what, before, since, after, versions.get(i)));
        }
      }
    }
    return changes;
  }

  /** Of an outcome that came or went nothing is told but that. */
  private static boolean isToldAlone(String what, Map<String, String> was, Map<String, String> is) {
    int of = what.indexOf(" of ");
    String outcome = of < 0 ? "" : OUTCOME + what.substring(of + " of ".length());
    return was.containsKey(outcome) == is.containsKey(outcome);
  }

  private static PlanChange change(
      String what, String before, String since, String after, PlanVersion version) {
    boolean many = PlanFacts.areMany(what);
    String be = many ? "were" : "was";
    String sentence;
    if (what.startsWith(OUTCOME) && before.equals("none")) {
      sentence = "The %s, a %s, was added".formatted(what, after);
    } else if (what.startsWith(OUTCOME) && after.equals("none")) {
      sentence = "The %s, a %s%s, was taken out".formatted(what, before, since);
    } else if (what.startsWith(PlanFacts.OUTLINE) || before.length() + after.length() > LONGEST) {
      sentence = "The %s %s changed".formatted(what, be);
    } else {
      sentence =
          "The %s %s %s%s; %s %s changed to %s"
              .formatted(what, be, before, since, many ? "they" : "it", be, after);
    }
    String why = version.why();
    return new PlanChange(
        "%s on %s%s"
            .formatted(
                sentence,
                version.on(),
                why == null || why.isBlank() ? "" : " (%s)".formatted(why.strip())),
        isJudging(what));
  }

  private static boolean isJudging(String what) {
    return what.startsWith("margin of ")
        || what.startsWith("summary of ")
        || what.startsWith("scale of ")
        || what.equals("primary outcome")
        || what.equals("planned comparisons");
  }
}
