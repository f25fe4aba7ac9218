package leafturn.records.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.SourceText;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/**
 * Something of a plan that was changed after it was frozen.
 *
 * @param sentence what it was, what it became, when and why; without a full stop
 * @param judging whether a verdict rests on it
 */
record PlanChange(String sentence, boolean judging) {
  private static final Map<String, String> WORDS =
      Map.of("contrasts", "planned comparisons", "exclusions", "rules for leaving out");
  private static final Set<String> MANY =
      Set.of("planned comparisons", "rules for leaving out", "dates", "cores", "arms", "lawns");

  /**
   * All changes, the earliest first.
   *
   * @param versions the frozen plan first
   */
  static List<PlanChange> of(List<PlanVersion> versions) {
    List<PlanChange> changes = new ArrayList<>();
    for (int i = 1; i < versions.size(); i++) {
      Map<String, String> was = said(versions.get(i - 1));
      Map<String, String> is = said(versions.get(i));
      Set<String> all = new LinkedHashSet<>(was.keySet());
      all.addAll(is.keySet());
      for (String what : all) {
        String before = was.getOrDefault(what, "none");
        String after = is.getOrDefault(what, "none");
        if (!before.equals(after)) {
          String since = i == 1 ? " when the plan was frozen" : "";
          changes.add(change(what, before + since, after, versions.get(i)));
        }
      }
    }
    return changes;
  }

  private static PlanChange change(String what, String before, String after, PlanVersion version) {
    boolean many = MANY.contains(what);
    String why = version.why();
    String sentence =
        "The %s %s %s; %s changed to %s on %s%s"
            .formatted(
                what,
                many ? "were" : "was",
                before,
                many ? "they were" : "it was",
                after,
                version.on(),
                why == null || why.isBlank() ? "" : " (%s)".formatted(why.strip()));
    boolean judging =
        what.startsWith("margin of ")
            || what.startsWith("summary of ")
            || what.startsWith("scale of ")
            || what.equals("primary outcome")
            || what.equals("planned comparisons");
    return new PlanChange(sentence, judging);
  }

  private static Map<String, String> said(PlanVersion version) {
    TrialPlan plan = TrialPlanFile.read(new SourceText("plan", version.plan().toString()));
    Map<String, Object> tree = TrialPlanText.tree(plan);
    tree.remove("outcomes");
    Map<String, String> said = new LinkedHashMap<>();
    said.put("primary outcome", plan.primary().name());
    for (Outcome outcome : plan.observing().outcomes()) {
      String of = " of " + outcome.name();
      Double margin = outcome.margin();
      said.put("margin" + of, margin == null ? "none" : plain(margin));
      said.put("summary" + of, outcome.summary().word());
      said.put("scale" + of, outcome.scale().word());
      said.put("unit" + of, outcome.unit());
    }
    tree.forEach((field, value) -> said.put(WORDS.getOrDefault(field, field), plain(value)));
    return said;
  }

  private static String plain(Object value) {
    return String.valueOf(value).replaceAll("[\\[\\]{}]", "").replaceFirst("\\.0$", "");
  }
}
