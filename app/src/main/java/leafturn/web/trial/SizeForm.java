package leafturn.web.trial;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Units;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.ListedLayouts;
import leafturn.trials.power.Spread;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import org.jspecify.annotations.Nullable;

/** The question about a trial's size that follows from its plan, as a form. */
public final class SizeForm {
  private final TrialPlan plan;
  private final String outcome;
  private final boolean log;

  /**
   * @param outcome whose starting values stand in the form
   */
  public SizeForm(TrialPlan plan, String outcome) {
    this.plan = plan;
    this.outcome = outcome;
    this.log =
        Spread.of(outcome).stream()
            .anyMatch(row -> row.part() == Spread.Part.CORE && row.isRelative());
  }

  /** The outcome with starting values that is most like the plan's primary one. */
  public static String outcomeOf(TrialPlan plan) {
    Outcome primary = plan.primary();
    String name = primary.name().toLowerCase(Locale.ROOT);
    return switch (primary.kind()) {
      case RATING -> "visual rating";
      case TISSUE -> "leaf potassium";
      case MEASUREMENT -> "clipping dry matter";
      case SOIL ->
          name.contains("phosph")
              ? "soil phosphorus"
              : name.contains("nitrogen")
                  ? "soil total nitrogen"
                  : name.contains("organic") ? "surface organic matter" : "soil potassium";
    };
  }

  /** The fields. */
  public FormShape shape() {
    List<Choice> outcomes = Spread.outcomes().stream().map(Choice::of).toList();
    List<Field> asked = new ArrayList<>();
    asked.add(
        Field.oneOf("outcome", "Varies like", outcomes)
            .hint("The primary outcome of the plan is %s.".formatted(plan.primary().name()))
            .needed());
    asked.add(
        log
            ? Field.number("ratio", "Ratio that matters", "")
                .hint("1.2 is a fifth more, or as much less.")
            : Field.number("difference", "Difference that matters", plan.primary().unit()));
    asked.add(
        Field.number(
                log ? "marginRatio" : "margin",
                "Margin within which it does not matter",
                log ? "" : plan.primary().unit())
            .hint("From the plan, where it has one on this scale."));
    List<Field> measured =
        List.of(
            Field.number("units", capital(unit()), "").hint("Left empty, their number is asked."),
            Field.number("dates", "Dates in the season", ""),
            Field.number("cores", "Cores or ratings of a plot on a date", ""));
    List<Field> spreads = new ArrayList<>();
    for (Spread row : Spread.of(outcome)) {
      spreads.add(spread(row));
    }
    if (design().equals("split-plot") || design().equals("strip-plot")) {
      spreads.add(
          Field.number("variances.wholePlot", "Variance between main plots or strips", "")
              .needed());
    }
    if (design().equals("strip-plot")) {
      spreads.add(
          Field.number("variances.secondStrip", "Variance between the other strips", "").needed());
    }
    return new FormShape(
        List.of(
            new Group("What it is to show", "", asked),
            new Group("How it is measured", "", measured),
            new Group(
                "How much plots vary that are treated alike",
                log
                    ? "As standard deviation over mean (CV). These are where to start; your own are better."
                    : "As standard deviation. These are where to start; your own are better.",
                spreads)));
  }

  private static Field spread(Spread row) {
    String unit = row.unit().equals("-") ? "" : row.unit();
    return Field.number(path(row), capital(row.meaning()), unit)
        .hint(
            "%s, from %s to %s; %s: %s."
                .formatted(
                    DisplayNumber.plain(row.value()),
                    DisplayNumber.plain(row.low()),
                    DisplayNumber.plain(row.high()),
                    row.status(),
                    row.source()));
  }

  private static String path(Spread row) {
    return row.part() == Spread.Part.DATE_CORRELATION
        ? "dateCorrelation"
        : "spread." + row.part().word();
  }

  /** Whether the difference that it fills in is the margin of the plan. */
  public boolean asksForMargin() {
    return plan.primary().margin() != null
        && plan.primary().summary() != Outcome.Summary.SLOPE
        && log == (plan.primary().scale() == Outcome.Scale.LOG);
  }

  /** In what the question is another one than the plan's, in sentences. */
  public List<String> apart() {
    Outcome primary = plan.primary();
    List<String> apart = new ArrayList<>();
    if (primary.summary() == Outcome.Summary.SLOPE) {
      apart.add(
          "The plan compares the change of %s through the season. What is told here is of means over the season: it does not tell how many %s a change needs, and the plan's margin a day is not asked for."
              .formatted(primary.name(), unit()));
    } else if (primary.summary() == Outcome.Summary.LAST_DATE) {
      apart.add(
          "The plan compares the last date alone, so one date is asked for; more dates would help only a mean over them.");
    }
    if (primary.kind() == Outcome.Kind.MEASUREMENT && outcome.equals(outcomeOf(plan))) {
      apart.add(
          "There are no starting values for %s: those of %s stand in. Give your own."
              .formatted(primary.name(), outcome));
    }
    if (primary.margin() != null
        && primary.summary() != Outcome.Summary.SLOPE
        && !asksForMargin()) {
      apart.add(
          "The plan's margin is on another scale than these values and is not asked for; give the difference that matters on this one.");
    }
    return apart;
  }

  /** The form as the plan fills it. */
  public Form filled(Units units) {
    Form form = Form.blank(shape(), units);
    for (Map.Entry<String, String> each : planned().entrySet()) {
      form = form.with(each.getKey(), each.getValue());
    }
    for (Spread row : Spread.of(outcome)) {
      form = form.with(path(row), DisplayNumber.plain(row.value()));
    }
    if (!design().equals("split-yard")) {
      form = form.with("variances.wholePlot", "0.01").with("variances.secondStrip", "0.01");
    }
    return form;
  }

  private Map<String, String> planned() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("outcome", outcome);
    Outcome primary = plan.primary();
    Double margin = primary.margin();
    if (margin != null && asksForMargin()) {
      values.put(log ? "ratio" : "difference", DisplayNumber.plain(margin));
      values.put(log ? "marginRatio" : "margin", DisplayNumber.plain(margin));
    } else if (log) {
      values.put("ratio", "1.2");
    }
    if (plannedUnits() > 1 || design().equals("latin-square")) {
      values.put("units", Integer.toString(plannedUnits()));
    }
    boolean soil = primary.kind() == Outcome.Kind.SOIL;
    int dates = soil ? plan.observing().cores().dates().size() : plan.observing().dates().size();
    boolean one = primary.summary() == Outcome.Summary.LAST_DATE;
    values.put("dates", Integer.toString(one ? 1 : Math.max(1, dates)));
    int cores = soil ? plan.observing().cores().perPlot() : 1;
    values.put("cores", Integer.toString(Math.max(1, cores)));
    return values;
  }

  /** A form as it was sent, without what still stands at its starting value. */
  public Form changed(Form sent) {
    return sent.without(
        path ->
            Spread.of(outcome).stream()
                .anyMatch(
                    row ->
                        path(row).equals(path)
                            && sent.value(path).equals(DisplayNumber.plain(row.value()))));
  }

  /** What the plan says and the form does not show, as a document. */
  public String base() {
    ObjectNode base = JsonNodeFactory.instance.objectNode();
    base.put("design", design());
    if (!design().equals("split-yard")) {
      base.put("arms", plan.treatments().arms().size());
    }
    if (!plan.treatments().secondArms().isEmpty()) {
      base.put("secondArms", plan.treatments().secondArms().size());
    }
    Integer perLawn = perLawn();
    if (perLawn != null) {
      base.put("perLawn", perLawn);
    }
    return base.toString();
  }

  private String design() {
    return plan.arrangement().design().word();
  }

  /** What the plan's list of allowed layouts can show, in a sentence; none without one. */
  public List<String> ofList() {
    List<List<String>> allowed = plan.arrangement().allowedLayouts();
    if (allowed.isEmpty()) {
      return List.of();
    }
    double smallest = ListedLayouts.smallestP(plan.treatments().contrasts().get(0), allowed);
    return List.of(
        "Over the %d layouts of this plan that could be drawn it is %s%s."
            .formatted(
                allowed.size(),
                DisplayNumber.significant(smallest, 3),
                smallest > Effect.ALPHA ? ", so that no difference can be shown; allow more" : ""));
  }

  /** Pairs of strips, or plots of each treatment, on each lawn; null for other designs. */
  private @Nullable Integer perLawn() {
    Arrangement arrangement = plan.arrangement();
    return switch (arrangement.design()) {
      case PAIRED_STRIPS -> arrangement.blocks();
      case LISTED -> {
        int plots = arrangement.allowedLayouts().get(0).size();
        yield Math.max(1, plots / plan.lawns().size() / plan.treatments().arms().size());
      }
      default -> null;
    };
  }

  private String unit() {
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD -> "yards";
      case LATIN_SQUARE -> "squares";
      case PAIRED_STRIPS -> "pairs of strips";
      case LISTED -> "lawns";
      default -> "blocks";
    };
  }

  private int plannedUnits() {
    int blocks = plan.arrangement().blocks();
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD, LISTED -> plan.lawns().size();
      case LATIN_SQUARE -> 1;
      case PAIRED_STRIPS -> blocks * plan.lawns().size();
      default -> blocks;
    };
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
