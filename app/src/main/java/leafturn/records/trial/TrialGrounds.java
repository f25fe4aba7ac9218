package leafturn.records.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Design;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.observation.ObservedPlot;

/**
 * The ground of trials in the book: plots and bags as plan and seed lay them out. The last ones are
 * kept, since laying out takes longer than a page may. Safe for use from several threads.
 */
public final class TrialGrounds {
  private static final int KEPT = 16;

  private final Map<JsonNode, Kept> byPlan = new LinkedHashMap<>();

  /** A ground, and what of its layout stands in the way of a verdict. */
  private record Kept(TrialGround ground, List<String> doubts) {}

  /**
   * The ground of a trial.
   *
   * @throws InputException when its plan has faults or does not fit on its lawns
   */
  public TrialGround of(TrialSheet trial) {
    return kept(trial).ground();
  }

  /**
   * What of the layout of a trial stands in the way of a verdict, in sentences; they name the
   * treatments.
   *
   * @throws InputException when its plan has faults or does not fit on its lawns
   */
  public List<String> doubts(TrialSheet trial) {
    return kept(trial).doubts();
  }

  private Kept kept(TrialSheet trial) {
    synchronized (byPlan) {
      Kept before = byPlan.remove(trial.plan());
      Kept kept = before == null ? laidOut(trial) : before;
      byPlan.put(trial.plan(), kept);
      if (byPlan.size() > KEPT) {
        byPlan.remove(byPlan.keySet().iterator().next());
      }
      return kept;
    }
  }

  private static Kept laidOut(TrialSheet trial) {
    try {
      TrialLayout layout = TrialLayout.of(BookPlan.of(trial));
      return new Kept(of(layout), LayoutDoubts.of(layout));
    } catch (NoRoomException none) {
      throw new InputException(String.valueOf(none.getMessage()));
    }
  }

  /**
   * The ground of a plan in a file.
   *
   * @param place of the plan, for messages
   * @throws InputException when it does not fit on its lawns
   */
  static TrialGround of(String place, TrialPlan plan) {
    try {
      return of(TrialLayout.of(plan));
    } catch (NoRoomException none) {
      throw new InputException("%s: %s".formatted(place, none.getMessage()));
    }
  }

  /** The ground of a layout. */
  public static TrialGround of(TrialLayout layout) {
    Map<String, TrialGround.Bag> bags = new HashMap<>();
    layout
        .bags()
        .forEach(
            bag ->
                bags.put(
                    bag.code(),
                    new TrialGround.Bag(bag.holds(), bag.plot(), bag.date(), bag.duplicateOf())));
    Map<LocalDate, List<String>> walks = new HashMap<>();
    layout
        .walk()
        .forEach(
            stop ->
                walks.computeIfAbsent(stop.date(), day -> new ArrayList<>()).addAll(stop.plots()));
    return new TrialGround(layout.plan(), plots(layout), bags, walks, LayoutText.sha256(layout));
  }

  private static List<ObservedPlot> plots(TrialLayout layout) {
    return layout.lawns().stream()
        .flatMap(
            lawn ->
                lawn.plots().stream()
                    .map(plot -> observed(layout.plan(), plot, lawn.plots().size() == 2)))
        .toList();
  }

  /** The unit of a square is its row, that of other layouts the block. */
  private static ObservedPlot observed(TrialPlan plan, LaidPlot plot, boolean isOfTwo) {
    Design design = plan.arrangement().design();
    String lawn = plan.lawns().get(plot.unit().lawn()).name();
    String unit =
        design == Design.LATIN_SQUARE
            ? "row " + plot.unit().row()
            : design == Design.SPLIT_YARD ? lawn : lawn + ", block " + plot.unit().block();
    boolean halved = design == Design.SPLIT_YARD || design == Design.LISTED && isOfTwo;
    Map<String, String> traits = halved ? Map.of("side", plot.where()) : Map.of();
    return new ObservedPlot(
        plot.code(), unit, plot.unit().arm(), plot.place().measured().getArea(), traits);
  }
}
