package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Range;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import leafturn.trials.design.CoreRule;
import leafturn.trials.design.Observing;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/** Reads what is observed in a trial: season, dates, cores, outcomes and exclusion rules. */
final class TrialObservingReading {
  private static final int UNIT = 40;
  private static final int SENTENCE = 1000;
  private static final double LARGEST = 1e9;
  private static final int USUAL_CORES = 15;
  private static final double USUAL_DEPTH_CM = 10;
  private static final double USUAL_DISTANCE_M = 0.3;

  private TrialObservingReading() {}

  static @Nullable Observing read(JsonObject root) {
    long before = root.faultsSoFar();
    if (!root.has("season")) {
      root.missing("season", "an object with its first day in from and its last in to");
    }
    JsonObject season = root.object("season");
    LocalDate from = root.has("season") ? season.requiredDate("from") : LocalDate.EPOCH;
    LocalDate to = root.has("season") ? season.requiredDate("to") : LocalDate.EPOCH;
    season.refuseOthers();
    List<LocalDate> dates = root.list("dates").dates();
    root.requireItems("dates", "the days of observation, in order");
    List<Outcome> outcomes = new ArrayList<>();
    for (JsonObject json : root.objects("outcomes")) {
      Outcome outcome = outcome(json);
      if (outcome != null) {
        outcomes.add(outcome);
      }
    }
    root.requireItems("outcomes", "what is observed; exactly one of them primary");
    boolean soil = outcomes.stream().anyMatch(outcome -> outcome.kind() == Outcome.Kind.SOIL);
    CoreRule cores = cores(root.object("cores"), soil ? dates : List.of());
    List<String> exclusions = root.list("exclusions").texts(SENTENCE);
    return cores == null
        ? null
        : TrialPlanFile.made(
            root,
            "season",
            before,
            () -> new Observing(from, to, dates, cores, outcomes, exclusions));
  }

  /**
   * @param usual the dates of cores where none are given
   */
  private static @Nullable CoreRule cores(JsonObject json, List<LocalDate> usual) {
    long before = json.faultsSoFar();
    Integer perPlot = json.wholeNumber("perPlot", 0, (int) CoreRule.PER_PLOT.high(), "");
    Double depth = number(json, "depthCm", CoreRule.DEPTH_CM);
    Integer composites = json.wholeNumber("composites", 1, (int) CoreRule.COMPOSITES.high(), "");
    Double blind = number(json, "blindDuplicates", CoreRule.BLIND_DUPLICATES);
    Double distance = number(json, "fromOldHolesM", CoreRule.FROM_OLD_HOLES_M);
    List<LocalDate> dates = json.has("dates") ? json.list("dates").dates() : usual;
    json.refuseOthers();
    return TrialPlanFile.made(
        json,
        "perPlot",
        before,
        () ->
            new CoreRule(
                perPlot == null ? USUAL_CORES : perPlot,
                depth == null ? USUAL_DEPTH_CM : depth,
                composites == null ? 1 : composites,
                blind == null ? CoreRule.USUAL_BLIND_DUPLICATES : blind,
                distance == null ? USUAL_DISTANCE_M : distance,
                dates));
  }

  private static @Nullable Double number(JsonObject json, String name, Range range) {
    return json.number(name, range.low(), range.high(), range.unit());
  }

  private static @Nullable Outcome outcome(JsonObject json) {
    long before = json.faultsSoFar();
    String name = json.requiredText("name", Outcome.LONGEST_NAME, "what to call it");
    Outcome.Kind kind = Choice.read(json, "kind", Outcome.Kind.values(), Outcome.Kind::word);
    if (!json.has("kind")) {
      json.missing("kind", "one of " + Choice.words(Outcome.Kind.values(), Outcome.Kind::word));
    }
    String unit = json.requiredText("unit", UNIT, "the unit of its values, as mg/kg or 1-9");
    Double low = json.number("low", -LARGEST, LARGEST, "");
    Double high = json.number("high", -LARGEST, LARGEST, "");
    Outcome.Scale scale = Choice.read(json, "scale", Outcome.Scale.values(), Outcome.Scale::word);
    Outcome.Summary summary =
        Choice.read(json, "summary", Outcome.Summary.values(), Outcome.Summary::word);
    Double margin = number(json, "margin", Outcome.MARGIN);
    boolean primary = Boolean.TRUE.equals(json.flag("primary"));
    json.refuseOthers();
    if (kind == null) {
      return null;
    }
    Outcome.Scale analysed = scale == null ? Outcome.Scale.IDENTITY : scale;
    return TrialPlanFile.made(
        json,
        Outcome.isTooWide(low, high, analysed, margin) ? "margin" : "name",
        before,
        () ->
            new Outcome(
                name,
                kind,
                unit,
                low,
                high,
                analysed,
                summary == null ? Outcome.Summary.SEASON_MEAN : summary,
                margin,
                primary));
  }
}
