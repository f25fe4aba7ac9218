package leafturn.records.trial;

import leafturn.records.JsonObject;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.power.Layout;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SimulationQuestion.MixedAnalysis;
import leafturn.trials.power.SizeQuestion;
import leafturn.trials.power.Surroundings;
import org.jspecify.annotations.Nullable;

/** Reads how trials are simulated and analysed. */
final class SizeSimulation {
  private static final int FEWEST_TRIALS = 1000;
  private static final int MOST_TRIALS = 1_000_000;
  private static final double LARGEST_SEED = 9e15;

  private final JsonObject root;
  private final Setting setting;
  private final boolean asked;
  private final int trials;
  private final long seed;
  private final @Nullable MixedAnalysis analysis;

  /**
   * What the rest of the file says.
   *
   * @param layout of the design
   * @param compared the factor that is asked about
   * @param oneSided whether only one direction counts
   * @param log whether the outcome is a logarithm
   * @param hasTruth whether there is a difference to find or a margin to show
   */
  record Setting(Layout layout, String compared, boolean oneSided, boolean log, boolean hasTruth) {}

  SizeSimulation(JsonObject root, Setting setting) {
    this.root = root;
    this.setting = setting;
    this.asked = root.has("simulate");
    if (!asked) {
      if (!setting.layout.hasFormula()) {
        root.missing(
            "simulate", "{\"trials\": 1000, \"seed\": 1}, since this design has no formula");
      }
      trials = FEWEST_TRIALS;
      seed = 1;
      analysis = null;
      return;
    }
    JsonObject json = root.object("simulate");
    Integer count = json.wholeNumber("trials", FEWEST_TRIALS, MOST_TRIALS, "");
    Double start = json.number("seed", -LARGEST_SEED, LARGEST_SEED, "");
    if (!json.has("seed")) {
      json.missing("seed", "a whole number, so that the answer can be had again");
    } else if (start != null && start != Math.rint(start)) {
      json.fault("seed", "it is not a whole number.");
    }
    trials = count == null ? FEWEST_TRIALS : count;
    seed = start == null ? 1 : start.longValue();
    analysis = analysis(json);
    json.refuseOthers();
    check();
  }

  private @Nullable MixedAnalysis analysis(JsonObject json) {
    if (!json.has("model")) {
      return null;
    }
    TrialModel model = TrialModelFile.read(json.object("model"));
    String term = json.text("term");
    Boolean contrast = json.flag("firstContrast");
    if (model.scale() == TrialModel.Scale.ORDINAL) {
      json.fault("model", "simulated values are no classes; give the scale identity or log.");
    }
    if ((model.scale() == TrialModel.Scale.LOG) != setting.log) {
      json.fault(
          "model",
          "its scale is %s, but the outcome is simulated on the scale %s; let them agree."
              .formatted(model.scale().word(), setting.log ? "log" : "identity"));
    }
    boolean byContrast = contrast != null && contrast;
    if (byContrast && model.compare() == null) {
      json.fault(
          "firstContrast", "the model compares no means; give it compare, or leave this out.");
    }
    return new MixedAnalysis(model, term == null ? setting.compared : term, byContrast);
  }

  private void check() {
    if (!root.has("units")) {
      root.missing("units", "the number to simulate");
    }
    if (setting.oneSided && (analysis != null || setting.layout != Layout.SPLIT_YARD)) {
      root.fault("sides", "a mixed model's test has two sides; give 2 with it.");
    }
    if (!setting.hasTruth) {
      root.fault("simulate", "there is nothing to find; name a difference or a margin.");
    }
  }

  @Nullable SimulationQuestion question(SizeQuestion size, Surroundings around, boolean log) {
    return asked ? new SimulationQuestion(size, around, log, analysis, trials, seed) : null;
  }
}
