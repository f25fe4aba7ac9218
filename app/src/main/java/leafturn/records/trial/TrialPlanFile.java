package leafturn.records.trial;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.JsonList;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.trials.design.Arm;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Design;
import leafturn.trials.design.Observing;
import leafturn.trials.design.PlanCheck;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.Protocol;
import leafturn.trials.design.Treatments;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import org.jspecify.annotations.Nullable;

/**
 * Reads the plan of a trial, a JSON document of the schema {@code docs/schemas/trial.schema.json}.
 * {@link TrialPlanText} writes it.
 */
public final class TrialPlanFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 5_000_000;

  private static final int SENTENCE = 1000;

  private final JsonObject root;
  private final @Nullable Path folder;

  private TrialPlanFile(JsonObject root, @Nullable Path folder) {
    this.root = root;
    this.folder = folder;
  }

  /**
   * Reads a plan from a file; files of outlines that it names lie in the same folder.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the file
   */
  public static TrialPlan read(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return whole(SourceText.read(file, LIMIT_BYTES), folder);
  }

  /**
   * Reads a plan from text, which names no file of an outline.
   *
   * @throws leafturn.records.InputException with one sentence for each fault of the text
   */
  public static TrialPlan read(SourceText source) {
    return whole(source, null);
  }

  private static TrialPlan whole(SourceText source, @Nullable Path folder) {
    Faults faults = new Faults(source.name());
    TrialPlan plan = new TrialPlanFile(JsonObject.root(source, faults), folder).plan();
    faults.throwIfAny();
    if (plan == null) {
      throw new IllegalStateException("a plan without a fault was not made");
    }
    return plan;
  }

  /** Reads a plan that is an object of a larger document, or reports its faults and gives null. */
  public static @Nullable TrialPlan read(JsonObject json) {
    return new TrialPlanFile(json, null).plan();
  }

  private @Nullable TrialPlan plan() {
    long before = root.faultsSoFar();
    String name =
        root.requiredText("name", TrialPlan.LONGEST_NAME, "what to call the trial, in a few words");
    String question =
        root.requiredText("question", SENTENCE, "what the trial is to answer, in a sentence");
    Treatments treatments = treatments();
    List<TrialLawn> lawns = new TrialLawnReading(folder).read(root);
    Arrangement arrangement = arrangement(treatments, lawns.size());
    Observing observing = TrialObservingReading.read(root);
    Protocol protocol = protocol(root.object("protocol"));
    Long seed = TrialSeed.read(root);
    if (!root.has("seed")) {
      root.missing("seed", "the whole number that every random choice comes from, as 20260401");
    }
    root.refuseOthers();
    boolean whole = !lawns.isEmpty() && lawns.size() == root.objects("lawns").size();
    if (treatments == null
        || arrangement == null
        || observing == null
        || protocol == null
        || !whole) {
      return null;
    }
    PlanCheck.of(treatments, arrangement, lawns, observing, protocol)
        .forEach(finding -> root.fault(finding.field(), finding.sentence()));
    if (seed == null || root.faultsSoFar() > before) {
      return null;
    }
    return new TrialPlan(name, question, treatments, arrangement, lawns, observing, protocol, seed);
  }

  /**
   * What a reading makes when it met no fault, and what the maker then finds wrong is reported too.
   *
   * @param before faults of the document before the parts were read
   */
  static <T> @Nullable T made(JsonObject json, String field, long before, Supplier<T> maker) {
    if (json.faultsSoFar() > before) {
      return null;
    }
    try {
      return maker.get();
    } catch (IllegalArgumentException wrong) {
      json.fault(field, wrong.getMessage() + ".");
      return null;
    }
  }

  private @Nullable Treatments treatments() {
    long before = root.faultsSoFar();
    String factor =
        root.requiredText("factor", Arm.LONGEST_NAME, "what the treatments are, as practice");
    List<Arm> arms = arms("arms");
    root.requireItems("arms", "the treatments, 2 to 8 objects with a name");
    String secondFactor = root.text("secondFactor", Arm.LONGEST_NAME);
    List<Arm> secondArms = arms("secondArms");
    if (secondFactor == null && !secondArms.isEmpty()) {
      root.missing("secondFactor", "what the levels of secondArms are levels of");
    }
    List<Contrast> contrasts = root.has("contrasts") ? contrasts() : usualContrasts(arms);
    return made(
        root,
        "arms",
        before,
        () -> new Treatments(factor, arms, secondFactor, secondArms, contrasts));
  }

  /** All pairs, the later arm first. */
  private static List<Contrast> usualContrasts(List<Arm> arms) {
    List<Contrast> pairs = new ArrayList<>();
    for (int second = 0; second < arms.size(); second++) {
      for (int first = second + 1; first < arms.size(); first++) {
        pairs.add(new Contrast(arms.get(first).name(), arms.get(second).name()));
      }
    }
    return pairs;
  }

  private List<Arm> arms(String field) {
    List<Arm> arms = new ArrayList<>();
    for (JsonObject json : root.objects(field)) {
      Arm arm = arm(json);
      if (arm != null) {
        arms.add(arm);
      }
    }
    return arms;
  }

  private static @Nullable Arm arm(JsonObject json) {
    long before = json.faultsSoFar();
    String name = json.requiredText("name", Arm.LONGEST_NAME, "what to call it");
    Arm.Clippings clippings =
        Choice.read(json, "clippings", Arm.Clippings.values(), Arm.Clippings::word);
    Double feedShare =
        json.number("feedShare", Arm.FEED_SHARE.low(), Arm.FEED_SHARE.high(), "1 for the usual");
    String note = json.text("note", SENTENCE);
    json.refuseOthers();
    return made(
        json,
        "name",
        before,
        () -> new Arm(name, clippings, feedShare == null ? 1 : feedShare, note));
  }

  private List<Contrast> contrasts() {
    List<Contrast> contrasts = new ArrayList<>();
    for (JsonList pair : root.list("contrasts").lists()) {
      List<String> names = pair.texts(Arm.LONGEST_NAME);
      if (names.size() == 2) {
        contrasts.add(new Contrast(names.get(0), names.get(1)));
      } else {
        root.fault(
            "contrasts",
            "a comparison names %d treatments; give two, the first minus the second."
                .formatted(names.size()));
      }
    }
    return contrasts;
  }

  private @Nullable Arrangement arrangement(@Nullable Treatments treatments, int lawns) {
    Design design = Choice.read(root, "design", Design.values(), Design::word);
    if (!root.has("design")) {
      root.missing("design", "one of " + Choice.words(Design.values(), Design::word));
    }
    Arrangement.Sides sides =
        Choice.read(root, "sides", Arrangement.Sides.values(), Arrangement.Sides::word);
    if (sides != null && design != null && design != Design.SPLIT_YARD) {
      root.fault("sides", "only split-yard gives out sides; leave it out.");
    }
    List<List<String>> allowed =
        root.list("allowedLayouts").lists().stream()
            .map(layout -> layout.texts(Arm.LONGEST_NAME))
            .toList();
    PlotRule plots = plots(root.object("plots"));
    if (design == null || treatments == null || plots == null) {
      blocks(Design.LISTED, 0, lawns);
      return null;
    }
    int blocks = blocks(design, treatments.arms().size(), lawns);
    return new Arrangement(
        design, blocks, sides == null ? Arrangement.Sides.COIN : sides, allowed, plots);
  }

  private int blocks(Design design, int arms, int lawns) {
    String field = design == Design.PAIRED_STRIPS ? "pairs" : "blocks";
    Integer given = root.wholeNumber(field, 1, Arrangement.MOST_BLOCKS, "");
    boolean asked = design.countsBlocks() || design == Design.LISTED;
    if (design.countsBlocks() && !root.has(field)) {
      root.missing(field, "how many there are");
    } else if (!asked && given != null) {
      root.fault(field, "%s counts no blocks; leave it out.".formatted(design.word()));
    }
    if (asked && given != null) {
      return given;
    }
    return design == Design.LATIN_SQUARE ? arms : lawns;
  }

  private static @Nullable PlotRule plots(JsonObject json) {
    long before = json.faultsSoFar();
    PlotRule usual = PlotRule.USUAL;
    Integer passes = json.wholeNumber("passes", 1, (int) PlotRule.PASSES.high(), "");
    Integer guard = json.wholeNumber("guardPasses", 0, (int) PlotRule.GUARD_PASSES.high(), "");
    Double length = json.number("lengthM", PlotRule.LENGTH_M.low(), PlotRule.LENGTH_M.high(), "m");
    Double edge = json.number("edgeM", 0, PlotRule.DISTANCE_M.high(), "m");
    Double bed = json.number("bedM", 0, PlotRule.DISTANCE_M.high(), "m");
    json.refuseOthers();
    return made(
        json,
        "passes",
        before,
        () ->
            new PlotRule(
                passes == null ? usual.passes() : passes,
                guard == null ? usual.guardPasses() : guard,
                length,
                edge == null ? usual.edgeM() : edge,
                bed == null ? usual.bedM() : bed));
  }

  private static @Nullable Protocol protocol(JsonObject json) {
    long before = json.faultsSoFar();
    DayOfWeek day = Choice.read(json, "mowingDay", DayOfWeek.class);
    Double height =
        json.number("heightMm", Protocol.HEIGHT_MM.low(), Protocol.HEIGHT_MM.high(), "mm");
    boolean sameDay = unlessFalse(json, "bothHalvesSameDay");
    boolean collectedFirst = unlessFalse(json, "collectedFirst");
    boolean deckCleaned = unlessFalse(json, "deckCleaned");
    boolean blind = unlessFalse(json, "ratersBlind");
    Protocol.Feed feed = Choice.read(json, "feed", Protocol.Feed.values(), Protocol.Feed::word);
    json.refuseOthers();
    return made(
        json,
        "heightMm",
        before,
        () ->
            new Protocol(
                day,
                height,
                sameDay,
                collectedFirst,
                deckCleaned,
                blind,
                feed == null ? Protocol.Feed.EQUAL : feed));
  }

  private static boolean unlessFalse(JsonObject json, String name) {
    return !Boolean.FALSE.equals(json.flag(name));
  }
}
