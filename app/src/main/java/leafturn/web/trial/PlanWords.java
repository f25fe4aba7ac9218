package leafturn.web.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.StreamSupport;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Dates;
import leafturn.reports.DayWords;
import leafturn.web.sheet.Change;
import leafturn.web.sheet.Line;

/** A plan in words, line by line, and what changed between two of them. */
public final class PlanWords {
  /** Label of the seed: with the plan it tells which plot bears which arm. */
  public static final String SEED = "Seed";

  private static final MathContext TO_TELL = new MathContext(3);

  private final JsonNode plan;
  private final Units units;

  /**
   * @param plan the document of a plan, however little it says so far
   * @param units the reader's units
   */
  public PlanWords(JsonNode plan, Units units) {
    this.plan = plan;
    this.units = units;
  }

  /** The plan, a line for each thing it says. */
  public List<Line> lines() {
    return byLabel().entrySet().stream()
        .map(line -> new Line(line.getKey(), line.getValue()))
        .toList();
  }

  /** What another plan, made later, says otherwise. */
  public List<Change> changesTo(JsonNode later) {
    Map<String, String> before = byLabel();
    Map<String, String> after = new PlanWords(later, units).byLabel();
    Set<String> labels = new LinkedHashSet<>(before.keySet());
    labels.addAll(after.keySet());
    List<Change> changes = new ArrayList<>();
    for (String label : labels) {
      String was = before.getOrDefault(label, "");
      String is = after.getOrDefault(label, "");
      if (!was.equals(is)) {
        changes.add(new Change(label, was, is));
      }
    }
    if (changes.isEmpty() && !plan.equals(later)) {
      changes.add(new Change("Shapes and details", "as they were", "changed"));
    }
    return changes;
  }

  private Map<String, String> byLabel() {
    Map<String, String> lines = new LinkedHashMap<>();
    put(lines, "Name", plan.path("name").asText());
    put(lines, "Question", plan.path("question").asText());
    put(lines, "Compared", joined(plan.path("arms"), PlanWords::arm));
    put(lines, "And", joined(plan.path("secondArms"), PlanWords::arm));
    put(lines, "Layout", layout());
    put(lines, "Lawns", joined(plan.path("lawns"), lawn -> lawn.path("name").asText()));
    put(lines, "Plots", plots());
    put(lines, "Cores", cores());
    put(lines, "Season", season());
    put(lines, "Dates", joined(plan.path("dates"), date -> day(date.asText())));
    for (JsonNode outcome : plan.path("outcomes")) {
      String label = outcome.path("primary").asBoolean() ? "Primary outcome" : "Exploratory";
      lines.merge(label, outcome(outcome), (one, other) -> one + "; " + other);
    }
    put(lines, "Planned contrasts", joined(plan.path("contrasts"), PlanWords::contrast));
    put(
        lines,
        "Left out if",
        joined(plan.path("exclusions"), rule -> rule.asText().replaceFirst("\\.$", "")));
    put(lines, "Mowing", mowing());
    put(lines, "Feed", feed());
    put(lines, "Raters", said("ratersBlind", "do not know the arms", "know the arms"));
    put(lines, SEED, plan.path("seed").asText());
    return lines;
  }

  private static void put(Map<String, String> lines, String label, String words) {
    if (!words.isEmpty()) {
      lines.put(label, words);
    }
  }

  private static String joined(JsonNode list, java.util.function.Function<JsonNode, String> words) {
    return String.join(
        "; ",
        StreamSupport.stream(list.spliterator(), false)
            .map(words)
            .filter(each -> !each.isEmpty())
            .toList());
  }

  private static String arm(JsonNode arm) {
    List<String> more = new ArrayList<>();
    String clippings = arm.path("clippings").asText();
    if (!clippings.isEmpty() && !clippings.equals(arm.path("name").asText())) {
      more.add("clippings " + clippings);
    }
    if (arm.has("feedShare") && arm.path("feedShare").asDouble() != 1) {
      more.add("%s of the feed".formatted(arm.path("feedShare").asText()));
    }
    if (arm.has("note")) {
      more.add(arm.path("note").asText());
    }
    String name = arm.path("name").asText();
    return more.isEmpty() ? name : name + " (" + String.join(", ", more) + ")";
  }

  /** The layout in words. */
  public String layout() {
    List<String> parts = new ArrayList<>();
    parts.add(PlanChoices.design(plan.path("design").asText()));
    count(parts, "blocks", "block", "blocks");
    count(parts, "pairs", "pair of strips", "pairs of strips");
    return String.join(", ", parts);
  }

  private void count(List<String> parts, String field, String one, String many) {
    if (plan.has(field)) {
      int number = plan.path(field).asInt();
      parts.add(number + " " + (number == 1 ? one : many));
    }
  }

  private String plots() {
    JsonNode plots = plan.path("plots");
    List<String> parts = new ArrayList<>();
    if (plots.has("passes")) {
      parts.add(plots.path("passes").asInt() + " mower passes wide");
    }
    if (plots.has("guardPasses")) {
      parts.add(plots.path("guardPasses").asInt() + " guard");
    }
    distance(parts, plots, "lengthM", "%s long");
    distance(parts, plots, "edgeM", "%s from the edge");
    distance(parts, plots, "bedM", "%s from beds");
    return String.join(", ", parts);
  }

  private String cores() {
    JsonNode cores = plan.path("cores");
    List<String> parts = new ArrayList<>();
    if (cores.has("perPlot")) {
      parts.add(cores.path("perPlot").asInt() + " a plot");
    }
    if (cores.has("blindDuplicates")) {
      parts.add("%s of the bags divided in two".formatted(cores.path("blindDuplicates").asText()));
    }
    distance(parts, cores, "fromOldHolesM", "%s from old holes");
    return String.join(", ", parts);
  }

  private void distance(List<String> parts, JsonNode from, String field, String words) {
    if (from.has(field)) {
      double shown = Measure.DISTANCE.shown(from.path(field).asDouble(), units);
      double rounded = BigDecimal.valueOf(shown).round(TO_TELL).doubleValue();
      String symbol = Measure.DISTANCE.unit(units).symbol();
      parts.add(words.formatted(DisplayNumber.plain(rounded) + " " + symbol));
    }
  }

  private String season() {
    JsonNode season = plan.path("season");
    return season.has("from") && season.has("to")
        ? day(season.path("from").asText()) + " to " + day(season.path("to").asText())
        : "";
  }

  private String mowing() {
    JsonNode protocol = plan.path("protocol");
    List<String> parts = new ArrayList<>();
    if (protocol.has("mowingDay")) {
      parts.add("on " + weekday(protocol.path("mowingDay").asText()));
    }
    if (protocol.has("heightMm")) {
      String height = Measure.HEIGHT.typed(protocol.path("heightMm").asDouble(), units);
      parts.add("one height, %s %s".formatted(height, Measure.HEIGHT.unit(units).symbol()));
    }
    add(parts, said("bothHalvesSameDay", "all plots of a lawn on the same day", "days may differ"));
    add(parts, said("collectedFirst", "collected plots first", "in any order"));
    add(parts, said("deckCleaned", "deck cleaned between", "deck not cleaned between"));
    return String.join(", ", parts);
  }

  private String feed() {
    return switch (plan.path("protocol").path("feed").asText()) {
      case "equal" -> "equal for all arms";
      case "reduced" -> "deliberately less where clippings are returned";
      default -> "";
    };
  }

  private String said(String field, String yes, String no) {
    JsonNode flag = plan.path("protocol").path(field);
    return flag.isBoolean() ? flag.asBoolean() ? yes : no : "";
  }

  private static void add(List<String> parts, String part) {
    if (!part.isEmpty()) {
      parts.add(part);
    }
  }

  private static String weekday(String word) {
    return word.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String outcome(JsonNode outcome) {
    StringBuilder words = new StringBuilder(outcome.path("name").asText());
    List<String> more = new ArrayList<>();
    add(more, PlanChoices.kind(outcome.path("kind").asText()));
    add(more, outcome.path("unit").asText());
    add(more, PlanChoices.summary(outcome.path("summary").asText()));
    if (outcome.path("scale").asText().equals("log")) {
      more.add("compared as a ratio");
    }
    if (outcome.has("margin")) {
      String effect = outcome.path("scale").asText().equals("log") ? "ratio" : "difference";
      more.add("a %s of %s matters".formatted(effect, outcome.path("margin").asText()));
    }
    return more.isEmpty() ? words.toString() : words + " (" + String.join(", ", more) + ")";
  }

  private static String contrast(JsonNode pair) {
    return pair.size() == 2 ? pair.get(0).asText() + " − " + pair.get(1).asText() : "";
  }

  private static String day(String text) {
    LocalDate day = Dates.parse(text);
    return day == null ? text : DayWords.dayAndYear(day).replaceFirst("^\\p{L}+ ", "");
  }
}
