package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.JsonList;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.AskedTrial;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import org.jspecify.annotations.Nullable;

/**
 * Reads the section {@code trial} of a model file: what a table does not say of its trial. Columns
 * that it leaves out follow from the model.
 */
final class TrialSection {
  private static final int LONGEST = 200;
  private static final int LONGEST_SENTENCE = 1000;
  private static final double MOST = 1e9;
  private static final double MOST_RATIO = 1000;

  private final JsonObject json;
  private final TrialModel model;
  private final boolean whole;

  private TrialSection(JsonObject json, TrialModel model, boolean whole) {
    this.json = json;
    this.model = model;
    this.whole = whole;
  }

  /**
   * The trial of a section, its faults being reported; null where it does not name the columns of
   * yards and arms.
   *
   * @param whole whether that is a fault
   */
  static @Nullable AskedTrial read(JsonObject json, TrialModel model, boolean whole) {
    TrialSection section = new TrialSection(json, model, whole);
    AskedTrial.Columns columns = section.columns();
    Outcome outcome = section.outcome();
    List<Contrast> contrasts = section.contrasts();
    Integer yards = json.wholeNumber("yards", 1, 100_000, "");
    Integer started = json.wholeNumber("started", 1, 100_000, "");
    LocalDate from = json.date("seasonFrom");
    Long seed = TrialSeed.read(json);
    PlanRecord record =
        new PlanRecord(null, section.sentences("deviations"), section.sentences("exclusions"));
    String name = Objects.requireNonNullElse(json.text("name", LONGEST), "");
    String question = Objects.requireNonNullElse(json.text("question", LONGEST_SENTENCE), "");
    json.refuseOthers();
    if (columns == null || outcome == null) {
      return null;
    }
    double first = from == null ? Double.NaN : from.toEpochDay();
    return new AskedTrial(
        name,
        question,
        columns,
        contrasts,
        model.compare() == null ? null : model.compare().control(),
        outcome,
        new AskedTrial.Scope(yards, started, first),
        seed,
        record,
        null);
  }

  /**
   * What follows from a model alone: two arms compared in units, and nothing else in the fixed part
   * but dates; null where it is another kind of model.
   */
  static @Nullable AskedTrial usual(TrialModel model) {
    Faults faults = new Faults("");
    TrialSection none =
        new TrialSection(JsonObject.root(new SourceText("trial", "{}"), faults), model, true);
    Comparison compare = model.compare();
    String unit = none.unitOfModel();
    if (compare == null || unit == null || model.scale() == TrialModel.Scale.ORDINAL) {
      return null;
    }
    String time = none.timeOfModel();
    boolean others =
        model.fixed().stream()
            .flatMap(term -> term.variables().stream())
            .anyMatch(name -> !name.equals(compare.factor()) && !name.equals(time));
    return others ? null : read(none.json, model, true);
  }

  private AskedTrial.@Nullable Columns columns() {
    Comparison compare = model.compare();
    String unit = column("yard", unitOfModel(), "the column of yards or blocks");
    String factor = column("arm", compare == null ? null : compare.factor(), "the column of arms");
    String time = json.holdsNull("date") ? null : json.text("date", LONGEST);
    if (time == null && !json.holdsNull("date")) {
      time = timeOfModel();
    }
    String plot = json.text("plot", LONGEST);
    return unit.isEmpty() || factor.isEmpty()
        ? null
        : new AskedTrial.Columns(unit, factor, time, plot);
  }

  private String column(String field, @Nullable String usual, String right) {
    String given = json.text(field, LONGEST);
    if (given != null) {
      return given;
    }
    if (usual == null && whole) {
      json.missing(field, right);
    }
    return usual == null ? "" : usual;
  }

  private @Nullable String unitOfModel() {
    return model.random().stream()
        .map(RandomTerm::within)
        .filter(within -> within.size() == 1)
        .map(within -> within.get(0))
        .findFirst()
        .orElse(null);
  }

  private @Nullable String timeOfModel() {
    OverTime overTime = model.overTime();
    if (overTime != null) {
      return overTime.time();
    }
    Comparison compare = model.compare();
    return compare != null && compare.within().size() == 1 ? compare.within().get(0) : null;
  }

  private @Nullable Outcome outcome() {
    Outcome.Kind kind = Choice.read(json, "kind", Outcome.Kind.values(), Outcome.Kind::word);
    Outcome.Summary summary =
        Choice.read(json, "summary", Outcome.Summary.values(), Outcome.Summary::word);
    Double low = json.number("low", -MOST, MOST, "");
    Double high = json.number("high", -MOST, MOST, "");
    boolean log = model.scale() == TrialModel.Scale.LOG;
    Double margin =
        log
            ? SizeFields.inside(json, "margin", 1, MOST_RATIO)
            : SizeFields.above0(json, "margin", MOST, "a difference");
    boolean isRating = kind == Outcome.Kind.RATING || model.scale() == TrialModel.Scale.ORDINAL;
    Boolean primary = json.flag("primary");
    try {
      return new Outcome(
          model.response(),
          isRating
              ? Outcome.Kind.RATING
              : Objects.requireNonNullElse(kind, Outcome.Kind.MEASUREMENT),
          Objects.requireNonNullElse(json.text("unit", LONGEST), ""),
          low,
          high,
          log ? Outcome.Scale.LOG : Outcome.Scale.IDENTITY,
          Objects.requireNonNullElse(summary, Outcome.Summary.SEASON_MEAN),
          margin,
          primary == null || primary);
    } catch (IllegalArgumentException wrong) {
      Outcome.Scale scale = log ? Outcome.Scale.LOG : Outcome.Scale.IDENTITY;
      boolean wide = Outcome.isTooWide(low, high, scale, margin);
      json.fault(wide ? "margin" : "kind", wrong.getMessage() + ".");
      return null;
    }
  }

  private List<Contrast> contrasts() {
    List<Contrast> contrasts = new ArrayList<>();
    for (JsonList pair : json.list("contrasts").lists()) {
      List<String> names = pair.texts(LONGEST);
      if (names.size() == 2 && !names.get(0).equals(names.get(1))) {
        contrasts.add(new Contrast(names.get(0), names.get(1)));
      } else {
        json.fault(
            "contrasts",
            "a comparison names two different arms, as [[\"returned\", \"collected\"]].");
      }
    }
    return contrasts;
  }

  private List<String> sentences(String field) {
    return json.list(field).texts(LONGEST_SENTENCE);
  }
}
