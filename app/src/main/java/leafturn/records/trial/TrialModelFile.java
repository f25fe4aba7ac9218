package leafturn.records.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.SourceText;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.findings.AskedTrial;
import org.jspecify.annotations.Nullable;

/**
 * Reads the model of an analysis, a JSON document of the schema {@code
 * docs/schemas/trial-model.schema.json}.
 */
public final class TrialModelFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 1_000_000;

  private static final double USUAL_LEVEL = 0.95;

  private final JsonObject root;

  private TrialModelFile(JsonObject root) {
    this.root = root;
  }

  /**
   * A model with what its file says of the trial.
   *
   * @param trial null where it says nothing
   */
  public record ModelAndTrial(TrialModel model, @Nullable AskedTrial trial) {
    /** What follows of the trial from the model alone; null where it is no comparison in units. */
    public @Nullable AskedTrial usualTrial() {
      return TrialSection.usual(model);
    }
  }

  /**
   * Reads a model, with the section on its trial, from a file.
   *
   * @param wholeTrial whether a section has to name every column of its trial, as a document of
   *     findings needs them; without it one that does not counts as none
   * @throws leafturn.records.InputException with one sentence for each fault of the file
   */
  public static ModelAndTrial readWithTrial(Path file, boolean wholeTrial) {
    return of(SourceText.read(file, LIMIT_BYTES)).modelAndTrial(wholeTrial);
  }

  /**
   * Reads a model from a file.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the file
   */
  public static TrialModel read(Path file) {
    return readWithTrial(file, true).model();
  }

  /**
   * Reads a model from text.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the text
   */
  public static TrialModel read(SourceText source) {
    return of(source).modelAndTrial(true).model();
  }

  /** Reads a model inside another document, whose faults tell what is wrong with it. */
  static TrialModel read(JsonObject json) {
    TrialModel model = new TrialModelFile(json).model();
    json.refuseOthers();
    return model;
  }

  private static TrialModelFile of(SourceText source) {
    return new TrialModelFile(JsonObject.root(source, new Faults(source.name())));
  }

  private ModelAndTrial modelAndTrial(boolean wholeTrial) {
    TrialModel model = model();
    AskedTrial trial =
        none("trial") ? null : TrialSection.read(root.object("trial"), model, wholeTrial);
    root.end();
    return new ModelAndTrial(model, trial);
  }

  private TrialModel model() {
    String response = root.requiredText("response", 200, "the name of the column to explain");
    TrialModel.Scale scale =
        Choice.read(root, "scale", TrialModel.Scale.values(), TrialModel.Scale::word);
    List<String> factors = texts(root, "factors");
    List<String> covariates = texts(root, "covariates");
    List<Term> fixed = texts(root, "fixed").stream().map(Term::of).toList();
    Boolean intercept = root.flag("intercept");
    List<RandomTerm> random = root.objects("random").stream().map(this::random).toList();
    OverTime overTime = none("overTime") ? null : overTime(root.object("overTime"));
    DegreesOfFreedom df =
        Choice.read(root, "df", DegreesOfFreedom.values(), DegreesOfFreedom::word);
    Comparison compare = none("compare") ? null : compare(root.object("compare"));
    Map<String, List<String>> levels = levels();
    return new TrialModel(
        response,
        scale == null ? TrialModel.Scale.IDENTITY : scale,
        factors,
        covariates,
        fixed,
        intercept == null || intercept,
        random,
        overTime,
        df == null ? DegreesOfFreedom.KENWARD_ROGER : df,
        compare,
        levels);
  }

  private boolean none(String name) {
    return !root.has(name) || root.holdsNull(name);
  }

  private RandomTerm random(JsonObject json) {
    List<String> within = texts(json, "within");
    json.requireItems("within", "the factors whose combinations vary at random, as [\"block\"]");
    List<String> slopes = texts(json, "slopes");
    Boolean intercept = json.flag("intercept");
    Boolean correlated = json.flag("correlated");
    json.refuseOthers();
    return new RandomTerm(
        within, slopes, intercept == null || intercept, correlated == null || correlated);
  }

  private OverTime overTime(JsonObject json) {
    List<String> unit = texts(json, "unit");
    json.requireItems("unit", "the factors that tell the units apart, as [\"plot\"]");
    String time = json.requiredText("time", 200, "the column of dates");
    OverTime.Correlation correlation =
        Choice.read(json, "correlation", OverTime.Correlation.values(), OverTime.Correlation::word);
    if (!json.has("correlation")) {
      json.missing(
          "correlation", Choice.words(OverTime.Correlation.values(), OverTime.Correlation::word));
    }
    json.refuseOthers();
    return new OverTime(unit, time, correlation == null ? OverTime.Correlation.AR1 : correlation);
  }

  private Comparison compare(JsonObject json) {
    String factor = json.requiredText("factor", 200, "the factor whose means are compared");
    List<String> within = oneOrMore(json, "within");
    String control = json.holdsNull("control") ? null : json.text("control");
    Double level = json.number("level", 0.5, 0.999999, "");
    Comparison.Multiplicity multiplicity =
        Choice.read(
            json, "multiplicity", Comparison.Multiplicity.values(), Comparison.Multiplicity::word);
    json.refuseOthers();
    return new Comparison(
        factor,
        within,
        control,
        level == null ? USUAL_LEVEL : level,
        multiplicity == null ? Comparison.Multiplicity.NONE : multiplicity);
  }

  private Map<String, List<String>> levels() {
    Map<String, List<String>> levels = new LinkedHashMap<>();
    JsonValue value = root.take("levels");
    Map<String, JsonValue> members = value == null ? Map.of() : value.members();
    if (members == null) {
      root.fault("levels", "it is no object; give a list of levels by factor.");
      return Map.of();
    }
    members.forEach((name, list) -> levels.put(name, texts(root, list)));
    return levels;
  }

  private static List<String> oneOrMore(JsonObject json, String name) {
    if (!json.has(name) || json.holdsNull(name)) {
      return List.of();
    }
    JsonValue value = json.take(name);
    return value != null && value.content() instanceof String text
        ? List.of(text.strip())
        : texts(json, name);
  }

  private static List<String> texts(JsonObject json, String name) {
    JsonValue value = json.take(name);
    return value == null ? List.of() : texts(json, value);
  }

  private static List<String> texts(JsonObject json, JsonValue list) {
    List<JsonValue> items = list.items();
    if (items == null) {
      json.fault(list, "it is not a list; give texts in square brackets.");
      return List.of();
    }
    List<String> texts = new ArrayList<>();
    for (JsonValue item : items) {
      if (item.content() instanceof String text && !text.isBlank()) {
        texts.add(text.strip());
      } else {
        json.fault(item, item.shown() + " is not usable; give a text in quotation marks.");
      }
    }
    return texts;
  }
}
