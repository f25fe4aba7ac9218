package leafturn.records.trial;

import java.nio.file.Path;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.SourceText;
import leafturn.trials.observation.PowerFromResults;
import leafturn.trials.power.Design;
import leafturn.trials.power.DifferenceTest;
import leafturn.trials.power.DifferenceTest.Rejections;
import leafturn.trials.power.Layout;
import leafturn.trials.power.PlotVariance;
import leafturn.trials.power.Sampling;
import leafturn.trials.power.SizeQuestion;
import org.jspecify.annotations.Nullable;

/**
 * Reads a question about the size of a trial, a JSON document of the schema {@code
 * docs/schemas/size.schema.json}.
 */
public final class SizeFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 1_000_000;

  /** Units, dates or cores beyond this are no trial on lawns. */
  static final int MOST_UNITS = 100_000;

  private static final double USUAL_ALPHA = 0.05;
  private static final double USUAL_POWER = 0.8;

  /** Nearer to 0 and 1 nothing is planned, and the integrals take minutes. */
  private static final double LEAST_ALPHA = 1e-4;

  private static final double MOST_POWER = 0.99999;
  private static final int MOST_ARMS = 30;
  private static final int MOST_DATES = 1000;

  private final JsonObject root;
  private final Faults faults;
  private final Layout layout;
  private final SizeVariances variances;
  private final SizeEffects effects;

  private SizeFile(SourceText source) {
    this.faults = new Faults(source.name());
    this.root = JsonObject.root(source, faults);
    refuseObserved();
    Layout read = Choice.read(root, "design", Layout.values(), Layout::word);
    if (!root.has("design")) {
      root.missing("design", "split-yard or another design");
    }
    this.layout = read == null ? Layout.SPLIT_YARD : read;
    this.variances = new SizeVariances(root, layout);
    this.effects = new SizeEffects(root, variances.isRelative());
  }

  /**
   * Reads a question from a file.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the file
   */
  public static SizeDocument read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a question from text.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the text
   */
  public static SizeDocument read(SourceText source) {
    return new SizeFile(source).document();
  }

  private void refuseObserved() {
    for (String name : PowerFromResults.FIELDS) {
      if (root.has(name)) {
        root.fault(name, PowerFromResults.refusal().sentence());
      }
    }
  }

  private SizeDocument document() {
    String question = root.text("question", 500);
    Sampling sampling = sampling();
    int arms = arms();
    int secondArms = layout.hasSecondFactor() ? requiredArms("secondArms") : 1;
    boolean second = layout.hasSecondFactor() && isSecond();
    int years = layout.hasFormula() ? 1 : years();
    int perLawn = perLawn();
    Integer units = units(arms, perLawn);
    DifferenceTest test = test();
    boolean any = isAny(second ? secondArms : arms);
    Double power = SizeFields.inside(root, "power", test.alpha(), MOST_POWER);
    double wanted = power == null ? USUAL_POWER : power;
    SizeEffects.Effects asked = effects.read(second ? secondArms : arms);
    SizeDocument.CoresWanted cores = cores();
    SizeSimulation simulation =
        new SizeSimulation(
            root,
            new SizeSimulation.Setting(
                layout,
                second ? "second" : "practice",
                test.sides() == 1,
                effects.isLog(),
                effects.wasTried()));
    var around = variances.surroundings(variances.values().ofSeasonMean(sampling));
    variances.end();
    root.end();
    Design design =
        new Design(
            layout,
            arms,
            secondArms,
            second,
            years,
            variances.values(),
            variances.wholePlot(),
            variances.secondStrip(),
            sampling,
            perLawn);
    SizeQuestion size =
        new SizeQuestion(
            design,
            range(design),
            test,
            any,
            wanted,
            asked.difference(),
            asked.margin(),
            asked.trueDifference(),
            units);
    return new SizeDocument(
        question == null ? "" : question,
        size,
        effects.isLog(),
        variances.outcome(),
        variances.used(),
        cores,
        simulation.question(size, around, effects.isLog()));
  }

  private SizeQuestion.@Nullable Range range(Design design) {
    PlotVariance low = variances.low();
    if (!variances.hasRange() || low.ofSeasonMean(design.sampling()) == 0) {
      return null;
    }
    return new SizeQuestion.Range(
        design.with(low, design.sampling()), design.with(variances.high(), design.sampling()));
  }

  private Sampling sampling() {
    return new Sampling(
        SizeFields.count(root, "dates", MOST_DATES, 1),
        SizeFields.count(root, "cores", MOST_UNITS, 1),
        SizeFields.count(root, "composites", MOST_DATES, 1),
        SizeFields.count(root, "duplicates", MOST_DATES, 1));
  }

  private int arms() {
    Integer arms = root.wholeNumber("arms", 2, layout.isOfPairs() ? 2 : MOST_ARMS, "");
    return arms == null ? 2 : arms;
  }

  private int requiredArms(String name) {
    Integer arms = root.wholeNumber(name, 2, MOST_ARMS, "");
    if (arms == null && !root.has(name)) {
      root.missing(name, "the number of arms of the second factor");
    }
    return arms == null ? 2 : arms;
  }

  private int years() {
    Integer years = root.wholeNumber("years", 2, 50, "");
    if (years == null && !root.has("years")) {
      root.missing("years", "their number, 2 or more");
    }
    return years == null ? 2 : years;
  }

  /** Pairs of strips, or plots of each arm, on each lawn. */
  private int perLawn() {
    Integer number =
        layout.hasNumberPerLawn() ? root.wholeNumber("perLawn", 1, MOST_UNITS, "") : null;
    if (number == null && layout.hasNumberPerLawn() && !root.has("perLawn")) {
      root.missing(
          "perLawn",
          layout == Layout.LISTED
              ? "plots of each arm on each lawn"
              : "pairs of strips on each lawn");
    }
    return number == null ? 1 : number;
  }

  private boolean isSecond() {
    String compare =
        Choice.read(root, "compare", new String[] {"practice", "second"}, word -> word);
    return "second".equals(compare);
  }

  private boolean isAny(int arms) {
    String test = Choice.read(root, "test", new String[] {"pair", "any"}, word -> word);
    if ("any".equals(test) && arms == 2) {
      return false;
    }
    return "any".equals(test);
  }

  private @Nullable Integer units(int arms, int perLawn) {
    Integer units = root.wholeNumber("units", 0, MOST_UNITS, layout.units());
    int fewest =
        Design.oneFactor(layout, arms, PlotVariance.whole(1), Sampling.ONCE)
            .onEachLawn(perLawn)
            .fewestUnits();
    if (units != null && units < fewest) {
      root.fault(
          "units",
          "%d %s %s nothing to judge a difference by, whatever is sampled in it; give %d or more."
              .formatted(
                  units,
                  units == 1 ? layout.unit() : layout.units(),
                  units == 1 ? "leaves" : "leave",
                  fewest));
      return null;
    }
    return units;
  }

  private DifferenceTest test() {
    Double alpha = SizeFields.inside(root, "alpha", LEAST_ALPHA, 0.5);
    Integer sides = root.wholeNumber("sides", 1, 2, "");
    Rejections counted = Choice.read(root, "rejections", Rejections.values(), Rejections::word);
    return new DifferenceTest(
        alpha == null ? USUAL_ALPHA : alpha,
        sides == null ? 2 : sides,
        counted == null ? Rejections.BOTH_TAILS : counted);
  }

  private SizeDocument.@Nullable CoresWanted cores() {
    if (!root.has("coresFor")) {
      return null;
    }
    JsonObject json = root.object("coresFor");
    Double error = SizeFields.inside(json, "relativeError", 0.001, 10);
    if (!json.has("relativeError")) {
      json.missing("relativeError", "a fraction of the mean, as 0.1");
    }
    Double cv = SizeFields.above0(json, "cv", 10, "a coefficient of variation");
    if (!json.has("cv")) {
      json.missing("cv", "the coefficient of variation between cores, as 0.4");
    }
    Double level = SizeFields.inside(json, "level", 0.5, 1);
    json.refuseOthers();
    if (error == null || cv == null) {
      return null;
    }
    if (cv / error > 400) {
      json.fault(
          "relativeError", "no number of cores up to a million reaches it; give a larger one.");
    }
    return new SizeDocument.CoresWanted(cv, error, level == null ? 0.95 : level);
  }

  /** Whether a text stands where a number belongs because the number is to come from results. */
  static boolean refersToResults(@Nullable JsonValue value) {
    return value != null
        && value.content() instanceof String text
        && PowerFromResults.isAskedBy(text);
  }

  static String noPowerFromResults() {
    return PowerFromResults.refusal().sentence();
  }
}
