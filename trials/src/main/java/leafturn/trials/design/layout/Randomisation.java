package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Design;
import leafturn.trials.design.TrialPlan;

/**
 * Gives treatments to the positions of a plan's blocks, by its seed alone.
 *
 * @source fisher1935
 */
public final class Randomisation {
  private static final int IN_SET = 4;

  private final TrialPlan plan;
  private final Arrangement arrangement;
  private final List<String> arms;
  private final List<Unit> units = new ArrayList<>();

  private Randomisation(TrialPlan plan) {
    this.plan = plan;
    this.arrangement = plan.arrangement();
    this.arms = plan.treatments().names();
  }

  /** All plots: lawn by lawn, block by block, on each row from the first column to the last. */
  public static List<Unit> of(TrialPlan plan) {
    Randomisation draw = new Randomisation(plan);
    draw.all();
    return List.copyOf(draw.units);
  }

  private void all() {
    switch (arrangement.design()) {
      case SPLIT_YARD -> halves();
      case RANDOMISED_BLOCK -> blocks();
      case LATIN_SQUARE -> square();
      case SPLIT_PLOT, STRIP_PLOT -> twoFactors();
      case PAIRED_STRIPS -> pairs();
      case LISTED -> listed();
      default -> throw new IllegalStateException("a design without a rule");
    }
  }

  private Chance chance(long purpose) {
    return Chance.of(plan.seed(), Purpose.TREATMENTS, purpose);
  }

  private void halves() {
    int yards = plan.lawns().size();
    List<Boolean> turned = new ArrayList<>();
    Chance chance = chance(0);
    if (arrangement.sides() == Arrangement.Sides.BALANCED) {
      int first = yards / 2 + (yards % 2 == 1 && chance.coin() ? 1 : 0);
      IntStream.range(0, yards).forEach(yard -> turned.add(yard < first));
      halves(chance.shuffled(turned));
    } else {
      IntStream.range(0, yards).forEach(yard -> turned.add(chance.coin()));
      halves(turned);
    }
  }

  private void halves(List<Boolean> turned) {
    for (int yard = 0; yard < turned.size(); yard++) {
      row(yard, yard + 1, 1, turned.get(yard) ? reversed(arms) : arms);
    }
  }

  private static List<String> reversed(List<String> pair) {
    return List.of(pair.get(1), pair.get(0));
  }

  private void row(int lawn, int block, int row, List<String> order) {
    for (int column = 0; column < order.size(); column++) {
      units.add(new Unit(lawn, block, row, column + 1, order.get(column), null));
    }
  }

  private int lawnOf(int block) {
    return (block - 1) / (arrangement.blocks() / plan.lawns().size());
  }

  private void blocks() {
    for (int block = 1; block <= arrangement.blocks(); block++) {
      row(lawnOf(block), block, 1, chance(block).shuffled(arms));
    }
  }

  /** Rows, columns and treatments of the cyclic square, each in random order. */
  private void square() {
    int size = arms.size();
    Chance chance = chance(0);
    List<Integer> numbers = IntStream.range(0, size).boxed().toList();
    List<Integer> rows = chance.shuffled(numbers);
    List<Integer> columns = chance.shuffled(numbers);
    List<String> letters = chance.shuffled(arms);
    for (int row = 0; row < size; row++) {
      int shift = rows.get(row);
      row(0, 1, row + 1, columns.stream().map(at -> letters.get((at + shift) % size)).toList());
    }
  }

  /**
   * The first factor on whole strips. The second anew on each strip of a split plot, but alike on
   * all strips of a strip plot's block.
   */
  private void twoFactors() {
    boolean across = arrangement.design() == Design.STRIP_PLOT;
    List<String> second = plan.treatments().secondNames();
    for (int block = 1; block <= arrangement.blocks(); block++) {
      Chance chance = chance(block);
      List<String> strips = chance.shuffled(arms);
      List<List<String>> levels = new ArrayList<>();
      List<String> alike = chance.shuffled(second);
      for (int strip = 0; strip < strips.size(); strip++) {
        levels.add(across ? alike : chance.shuffled(second));
      }
      for (int row = 0; row < second.size(); row++) {
        for (int strip = 0; strip < strips.size(); strip++) {
          units.add(
              new Unit(
                  lawnOf(block),
                  block,
                  row + 1,
                  strip + 1,
                  strips.get(strip),
                  levels.get(strip).get(row)));
        }
      }
    }
  }

  /** Two pairs by two as ABBA or BAAB, so that neither treatment leans to one side of the lawn. */
  private void pairs() {
    int block = 0;
    for (int lawn = 0; lawn < plan.lawns().size(); lawn++) {
      Chance chance = chance(lawn);
      List<String> order = arms;
      for (int strip = 0; strip < 2 * arrangement.blocks(); strip += 2) {
        order = strip % IN_SET == 0 ? (chance.coin() ? reversed(arms) : arms) : reversed(order);
        block++;
        row(lawn, block, 1, order);
      }
    }
  }

  private void listed() {
    List<List<String>> layouts = arrangement.allowedLayouts();
    List<String> drawn = layouts.get(chance(0).below(layouts.size()));
    int inBlock = drawn.size() / arrangement.blocks();
    for (int block = 1; block <= arrangement.blocks(); block++) {
      row(lawnOf(block), block, 1, drawn.subList((block - 1) * inBlock, block * inBlock));
    }
  }
}
