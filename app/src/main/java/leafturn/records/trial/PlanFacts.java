package leafturn.records.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;

/** What a plan says, thing by thing in words, so that two plans can be told apart. */
final class PlanFacts {
  /** The outline of a lawn, whose corners tell nobody anything. */
  static final String OUTLINE = "outline";

  /** Things of which there are many: they "were", not "was". */
  private static final Set<String> MANY =
      Set.of(
          "planned comparisons",
          "rules for leaving out",
          "dates",
          "dates of cores",
          "cores of a plot",
          "mixed samples of a plot",
          "mower passes of a plot",
          "guard passes of a plot",
          "arms",
          "second arms",
          "blocks",
          "pairs",
          "allowed layouts");

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("contrasts", "planned comparisons"),
          Map.entry("exclusions", "rules for leaving out"),
          Map.entry("plots passes", "mower passes of a plot"),
          Map.entry("plots guard passes", "guard passes of a plot"),
          Map.entry("plots length m", "length of plots in m"),
          Map.entry("plots edge m", "distance from edges in m"),
          Map.entry("plots bed m", "distance from beds in m"),
          Map.entry("cores per plot", "cores of a plot"),
          Map.entry("cores depth cm", "depth of cores in cm"),
          Map.entry("cores composites", "mixed samples of a plot"),
          Map.entry("cores blind duplicates", "share of blind duplicates"),
          Map.entry("cores from old holes m", "distance from old holes in m"),
          Map.entry("cores dates", "dates of cores"),
          Map.entry("season from", "first day of the season"),
          Map.entry("season to", "last day of the season"),
          Map.entry("protocol mowing day", "day of mowing"),
          Map.entry("protocol height mm", "height of cut in mm"),
          Map.entry("protocol both halves same day", "rule to mow both halves on one day"),
          Map.entry("protocol collected first", "rule to mow collected plots first"),
          Map.entry("protocol deck cleaned", "rule to clean the deck between"),
          Map.entry("protocol raters blind", "rule that raters do not know the arms"),
          Map.entry("protocol feed", "feed"));

  private final Map<String, String> said = new LinkedHashMap<>();

  private PlanFacts() {}

  /** Each thing by its words, in the order of a plan. */
  static Map<String, String> of(TrialPlan plan) {
    PlanFacts facts = new PlanFacts();
    Map<String, Object> tree = TrialPlanText.tree(plan);
    tree.remove("outcomes");
    facts.said.put("primary outcome", plan.primary().name());
    plan.observing().outcomes().forEach(facts::outcome);
    tree.forEach(facts::put);
    return facts.said;
  }

  /** Whether there are many of a thing. */
  static boolean areMany(String what) {
    return MANY.contains(what);
  }

  private void outcome(Outcome outcome) {
    String of = " of " + outcome.name();
    Double margin = outcome.margin();
    said.put("outcome " + outcome.name(), outcome.kind().word());
    said.put("margin" + of, margin == null ? "none" : text(margin));
    said.put("summary" + of, outcome.summary().word());
    said.put("scale" + of, outcome.scale().word());
    said.put("unit" + of, outcome.unit());
    said.put("lowest value" + of, outcome.low() == null ? "none" : text(outcome.low()));
    said.put("highest value" + of, outcome.high() == null ? "none" : text(outcome.high()));
  }

  private void put(String field, Object value) {
    if (value instanceof Map<?, ?> parts) {
      parts.forEach((name, part) -> put(field + " " + name, part));
    } else if (field.equals("lawns") && value instanceof List<?> lawns) {
      lawns.forEach(lawn -> lawn((Map<?, ?>) lawn));
    } else {
      String words = field.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
      said.put(WORDS.getOrDefault(words, words), text(value));
    }
  }

  private void lawn(Map<?, ?> lawn) {
    String of = " of " + lawn.get("name");
    said.put(OUTLINE + of, lawn.get("outline") + " without " + lawn.get("keepOut"));
    said.put("mower" + of, text(Objects.requireNonNullElse(lawn.get("mower"), "none")));
    said.put("bearing" + of, text(Objects.requireNonNullElse(lawn.get("bearingDeg"), "free")));
  }

  private static String text(Object value) {
    if (value instanceof List<?> many) {
      return many.stream().map(PlanFacts::item).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> parts) {
      return parts.values().stream().map(PlanFacts::text).collect(Collectors.joining(", "));
    }
    if (value instanceof Boolean flag) {
      return flag ? "kept" : "not kept";
    }
    return String.valueOf(value).replaceFirst("\\.0$", "");
  }

  /** A pair of arms is a comparison; an arm has its details behind its name. */
  private static String item(Object value) {
    if (value instanceof List<?> pair) {
      return pair.stream().map(String::valueOf).collect(Collectors.joining(" against "));
    }
    if (value instanceof Map<?, ?> arm) {
      String details =
          arm.entrySet().stream()
              .filter(each -> !"name".equals(each.getKey()))
              .map(
                  each ->
                      ("feedShare".equals(each.getKey()) ? "share of the feed " : "")
                          + text(each.getValue()))
              .collect(Collectors.joining(", "));
      return "%s (%s)".formatted(arm.get("name"), details);
    }
    return text(value);
  }
}
