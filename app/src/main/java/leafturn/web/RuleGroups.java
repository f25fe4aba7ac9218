package leafturn.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.RuleEntry;

/** The rules and figures of the advice by what they are about, for a page to show them. */
final class RuleGroups {
  private static final String OTHERS = "Others";
  private static final Map<String, List<String>> RULES = new LinkedHashMap<>();
  private static final Map<String, List<String>> FIGURES = new LinkedHashMap<>();

  static {
    RULES.put(
        "Days on which nobody should mow",
        List.of(
            "season",
            "visit",
            "label-wait",
            "dormant",
            "frost",
            "wet-slope",
            "saturated",
            "soft-ground",
            "heat",
            "least-growth"));
    RULES.put("What must not be collected", List.of("feed-collected", "held", "seedlings"));
    RULES.put(
        "How much may come off, and stay",
        List.of(
            "green-up",
            "half",
            "one-third",
            "clumps-heavy",
            "stemmy",
            "leaf-cover",
            "length",
            "clumps",
            "seed-heads",
            "no-clippings"));
    RULES.put("The day and the hour", List.of("due", "feed-dry", "wet-return", "wet"));
    RULES.put("Work and waiting", List.of("carry", "second-cut", "second-pass", "delay"));
    FIGURES.put(
        "Wet leaves, frost and dry hours",
        List.of(
            "wet-yesterday",
            "wet-share",
            "dry-hours",
            "dry-hours-share",
            "dry-leaves",
            "wet-humidity",
            "thaw-hours",
            "thaw"));
    FIGURES.put(
        "Heights and growth",
        List.of(
            "one-third-tolerance",
            "safe-day-share",
            "hardly-growing",
            "dry-soil",
            "drought-look",
            "cut-twice-days",
            "most-cuts",
            "first-cut",
            "first-cut-days",
            "saturated-water",
            "seedling-ground",
            "green-up-days",
            "green-up-frost",
            "green-up-free",
            "lower-once"));
    FIGURES.put(
        "Where clippings lie, and what they do there",
        List.of(
            "clump-limit-dry",
            "clump-limit-wet",
            "deck-factor",
            "deck-factor-side",
            "second-pass-factor",
            "short-pieces",
            "nitrogen-freed",
            "nitrogen-tied-up",
            "seen-load",
            "sinking",
            "breakdown",
            "nitrogen"));
    FIGURES.put(
        "What was seen, and what was applied",
        List.of(
            "seen-days",
            "seed-heads-start",
            "seed-heads-none",
            "autumn-flush",
            "animals-days",
            "disease",
            "herbicide-mowings",
            "product-days",
            "pyridine-days",
            "feed-water"));
    FIGURES.put(
        "Watering", List.of("water-below", "water-at-once", "survival-water", "survival-days"));
    FIGURES.put(
        "Weights, bags and minutes",
        List.of("dry-share-of-fresh", "dry-g-per-litre", "pass-overlap", "bag-minutes"));
  }

  private RuleGroups() {}

  /** Rules or figures by what they are about; each entry once, in its order within a group. */
  static List<RulesPage.Group> of(List<RuleEntry> entries) {
    boolean ranked = !entries.isEmpty() && entries.get(0).rank() > 0;
    Map<String, List<RuleEntry>> groups = new LinkedHashMap<>();
    Map<String, List<String>> known = ranked ? RULES : FIGURES;
    known.keySet().forEach(heading -> groups.put(heading, new ArrayList<>()));
    for (RuleEntry entry : entries) {
      groups
          .computeIfAbsent(heading(known, entry.rule().id()), heading -> new ArrayList<>())
          .add(entry);
    }
    return groups.entrySet().stream()
        .filter(group -> !group.getValue().isEmpty())
        .map(group -> new RulesPage.Group(group.getKey(), group.getValue()))
        .toList();
  }

  private static String heading(Map<String, List<String>> known, String rule) {
    return known.entrySet().stream()
        .filter(group -> group.getValue().contains(rule))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(OTHERS);
  }
}
