package leafturn.web.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import leafturn.web.sheet.Words;

/** The form of a trial's plan; its paths are those of the plan's document. */
public final class TrialPlanForm {
  /** The lawns of the book that take part, by id; no part of the plan's document. */
  public static final String LAWNS = "inBook";

  private static final int MOST_ROWS = 8;
  private static final int FEWEST_ARMS = 2;

  private final List<Choice> lawns;
  private final Units units;

  /**
   * @param lawns of the book, by id
   * @param units the reader's
   */
  public TrialPlanForm(List<Choice> lawns, Units units) {
    this.lawns = List.copyOf(lawns);
    this.units = units;
  }

  /**
   * The form with its defaults filled in.
   *
   * @param seed of the draw, one that nobody can guess
   */
  public Form begun(long seed) {
    Form form =
        Form.blank(shape(com.fasterxml.jackson.databind.node.MissingNode.getInstance()), units)
            .with("design", "split-yard")
            .with("factor", "practice")
            .with("arms[0].name", "collected")
            .with("arms[0].clippings", "collected")
            .with("arms[1].name", "returned")
            .with("arms[1].clippings", "returned")
            .with("plots.passes", "3")
            .with("plots.guardPasses", "1")
            .with("plots.edgeM", usual("1", "3"))
            .with("plots.bedM", usual("1", "3"))
            .with("cores.perPlot", "15")
            .with("cores.fromOldHolesM", usual("0.3", "1"));
    return outcomes(form)
        .with("contrasts", "returned − collected")
        .with("protocol.feed", "equal")
        .with("seed", Long.toString(seed));
  }

  /** What stands in for a distance, round in the reader's unit. */
  private String usual(String m, String ft) {
    return units == Units.US ? ft : m;
  }

  private static Form outcomes(Form form) {
    return form.with("outcomes[0].name", "quality")
        .with("outcomes[0].kind", "rating")
        .with("outcomes[0].unit", "1-9")
        .with("outcomes[0].low", "1")
        .with("outcomes[0].high", "9")
        .with("outcomes[0].scale", "identity")
        .with("outcomes[0].summary", "season-mean")
        .with("outcomes[0].margin", "0.5")
        .with("outcomes[0].primary", "true");
  }

  /** The fields, with rows enough for a plan's document. */
  public FormShape shape(JsonNode plan) {
    List<Group> groups = new ArrayList<>();
    groups.add(question());
    groups.addAll(arms(plan));
    groups.add(design());
    groups.add(secondFactor(plan));
    groups.add(where());
    groups.add(plots());
    groups.add(season());
    groups.addAll(outcomes(plan));
    groups.add(rules());
    groups.add(protocol());
    return new FormShape(groups);
  }

  private static Group question() {
    return new Group(
        "The question",
        "",
        List.of(
            Field.text("name", "Name").hint("Two or three words, for lists and labels.").needed(),
            Field.longText("question", "Question")
                .hint("What the trial is to answer, in a sentence.")
                .needed()));
  }

  private static List<Group> arms(JsonNode plan) {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < MOST_ROWS; i++) {
      String path = "arms[%d].".formatted(i);
      Group arm =
          Group.row(
              "Arm " + (i + 1),
              Field.text(path + "name", "Name"),
              Field.oneOf(path + "clippings", "Clippings", PlanChoices.CLIPPINGS),
              Field.number(path + "feedShare", "Share of the feed, 1 for all", ""),
              Field.text(path + "note", "What else it is"));
      boolean seen = i < Math.max(FEWEST_ARMS, plan.path("arms").size());
      groups.add(seen ? arm : arm.folded("More arms, up to eight"));
    }
    return groups;
  }

  private static Group design() {
    return new Group(
        "The layout",
        "The unit of a split yard is the half yard, however many cores, dates and raters it has.",
        List.of(
            Field.oneOf("design", "Layout", PlanChoices.DESIGNS)
                .hint(
                    "Split yards say something of yards such as these; strips in one lawn only of"
                        + " that lawn.")
                .needed(),
            Field.oneOf("sides", "Sides of split yards", PlanChoices.SIDES)
                .hint("Balanced: each arm equally often on each side. Left empty: a coin a yard."),
            Field.text("factor", "What the arms are").hint("For instance practice.").needed(),
            Field.number("blocks", "Blocks", "")
                .hint("For complete blocks, split plots and strip plots: of all lawns together."),
            Field.number("pairs", "Pairs of strips", "").hint("For paired strips: on each lawn."),
            Field.longText("allowedLayouts", "Allowed layouts")
                .hint("For a list of your own: a layout a line, the arm of each plot in order."),
            Field.number("seed", "Seed of the draw", "")
                .hint(
                    "Any whole number; the same seed draws the same layout and the same codes of bags, so give two trials different ones. The one filled in was drawn by chance.")
                .needed()));
  }

  private static Group secondFactor(JsonNode plan) {
    List<Field> fields = new ArrayList<>();
    fields.add(
        Field.text("secondFactor", "Second factor")
            .hint("For split plots and strip plots, for instance nitrogen."));
    for (int i = 0; i < MOST_ROWS; i++) {
      fields.add(Field.text("secondArms[%d].name".formatted(i), "Its level " + (i + 1)));
    }
    Group group = new Group("A second factor, if any", "", fields);
    return plan.path("secondArms").isEmpty()
        ? group.folded("A second factor, for split plots and strip plots")
        : group;
  }

  private Group where() {
    return new Group(
        "The lawns",
        "Outlines and beds are taken from the book as they are when you save.",
        List.of(
            Field.someOf(LAWNS, "Lawns that take part", lawns)
                .hint(
                    "A lawn without an outline cannot be laid out; draw it on its page first, or take it there from a GeoJSON file, which gives the plots a place on the earth too.")));
  }

  private static Group plots() {
    return new Group(
        "Plots and cores",
        "",
        List.of(
            Field.number("plots.passes", "Width of a plot", "mower passes")
                .hint("Three, so that the middle one is sampled (engineering judgement)."),
            Field.number("plots.guardPasses", "Guard between plots", "mower passes")
                .hint("One deck width, for clippings drift."),
            Field.number("plots.lengthM", "Length of a plot", Measure.DISTANCE)
                .hint("Left empty: as long as the lawn allows."),
            Field.number("plots.edgeM", "Kept from the edge", Measure.DISTANCE)
                .hint("Paths, downspouts and dogs are along the edge (engineering judgement)."),
            Field.number("plots.bedM", "Kept from beds and trees", Measure.DISTANCE),
            Field.number("cores.perPlot", "Cores a plot and date", "")
                .hint(
                    "Fifteen, one in each cell of a grid: fact sheets of Massachusetts, Rutgers and"
                        + " Penn State ask for 12 to 15. They are no replicates; 0: no soil is sampled."),
            Field.number("cores.composites", "Bags a plot and date", "")
                .hint("Two, once a season, tell the plots apart from the cores."),
            Field.number("cores.blindDuplicates", "Share of bags divided in two", "")
                .hint(
                    "Blind duplicates: the second half has a code of its own and tells how well the"
                        + " laboratory measures. Left empty: 0.1; 0: none."),
            Field.number("cores.depthCm", "Depth of the cores", Measure.DEPTH),
            Field.number("cores.fromOldHolesM", "Kept from old holes", Measure.DISTANCE),
            Field.longText("cores.dates", "Days on which cores are taken")
                .hint("Among the days below; left empty: as the outcomes ask.")));
  }

  private static Group season() {
    return new Group(
        "The season",
        "",
        List.of(
            Field.date("season.from", "From").needed(),
            Field.date("season.to", "To").needed(),
            Field.longText("dates", "Days on which something is read")
                .hint("As 2026-04-20, with gaps or a line each, in order.")
                .needed()));
  }

  private static List<Group> outcomes(JsonNode plan) {
    List<Group> groups = new ArrayList<>();
    for (int i = 0; i < MOST_ROWS; i++) {
      String path = "outcomes[%d].".formatted(i);
      Stream<Field> fields =
          Stream.of(
              Field.text(path + "name", "Name"),
              Field.oneOf(path + "kind", "Kind", PlanChoices.KINDS),
              Field.text(path + "unit", "Unit"),
              Field.number(path + "low", "Lowest value", ""),
              Field.number(path + "high", "Highest value", ""),
              Field.oneOf(path + "scale", "Compared", PlanChoices.SCALES),
              Field.oneOf(path + "summary", "Summary of the season", PlanChoices.SUMMARIES),
              Field.number(path + "margin", "Difference that matters", "")
                  .hint("In the unit; for a ratio as 1.2."),
              Field.flag(path + "primary", "Primary: it alone gets a verdict"));
      Group outcome = Group.row("Outcome " + (i + 1), fields.toArray(Field[]::new));
      boolean seen = i < Math.max(1, plan.path("outcomes").size());
      groups.add(seen ? outcome : outcome.folded("More outcomes, up to eight"));
    }
    return groups;
  }

  private static Group rules() {
    return new Group(
        "Fixed beforehand",
        "",
        List.of(
            Field.longText("contrasts", "Planned comparisons")
                .hint("A line each, as: returned − collected. Left empty: all pairs."),
            Field.longText("exclusions", "What leaves a plot out")
                .hint("A line each, for instance: more than a tenth of the plot dug up.")));
  }

  private static Group protocol() {
    return new Group(
        "Kept the same for all plots",
        "What differs between the halves besides the practice is taken for the practice.",
        List.of(
            Field.oneOf("protocol.mowingDay", "Mowing day", Words.of(DayOfWeek.class)),
            Field.number("protocol.heightMm", "Cut height", Measure.HEIGHT),
            flag("bothHalvesSameDay", "All plots of a lawn mown the same day"),
            flag("collectedFirst", "Collected plots mown first"),
            flag("deckCleaned", "Deck cleaned and bag emptied between plots"),
            flag("ratersBlind", "Raters do not know the arms")
                .hint("Then forms for raters show plots without their arms."),
            Field.oneOf("protocol.feed", "Feed", PlanChoices.FEEDS)
                .hint("Less feed where clippings are returned asks another question; say which.")
                .needed()));
  }

  private static Field flag(String name, String label) {
    return Field.oneOf("protocol." + name, label, Words.YES_OR_NO).needed();
  }
}
