package leafturn.trials.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hipparchus.random.RandomGenerator;

/**
 * The rows of a simulated trial, the dates of a plot one after the other, and the random parts that
 * add up in each.
 */
final class SimulatedRows {
  private final List<String> columns;
  private final List<List<String>> cells = new ArrayList<>();
  private final List<Component> components = new ArrayList<>();
  private final double[] effects;
  private final Design design;

  /** A random part: which of its draws each row takes. */
  private record Component(int[] groups, int count, double sd) {}

  private SimulatedRows(Design design, int units, double difference) {
    this.design = design;
    this.columns = columns(design);
    for (int unit = 1; unit <= units; unit++) {
      addUnit(unit);
    }
    int compared = columns.indexOf(design.comparesSecond() ? "second" : "practice");
    this.effects =
        cells.stream().mapToDouble(row -> effect(row.get(compared), difference)).toArray();
  }

  /** The rows of a design: two arms lie the difference apart, the others midway. */
  static SimulatedRows of(Design design, int units, double difference, Surroundings around) {
    SimulatedRows rows = new SimulatedRows(design, units, difference);
    rows.addComponents(around);
    return rows;
  }

  /** Names of the columns, the response aside. */
  static List<String> columns(Design design) {
    return switch (design.layout()) {
      case SPLIT_YARD -> List.of("yard", "practice", "date");
      case PAIRED_STRIPS -> List.of("pair", "practice", "date");
      case LISTED -> List.of("lawn", "practice", "plot", "date");
      case INDEPENDENT_GROUPS -> List.of("plot", "practice", "date");
      case RANDOMISED_BLOCK -> List.of("block", "practice", "date");
      case LATIN_SQUARE -> List.of("square", "row", "column", "practice", "date");
      case SPLIT_PLOT, STRIP_PLOT -> List.of("block", "practice", "second", "date");
      case YARDS_AND_YEARS -> List.of("yard", "year", "practice", "date");
    };
  }

  /** The cells of each row. */
  List<List<String>> cells() {
    return cells;
  }

  /** Values of all rows, drawn anew. */
  double[] draw(RandomGenerator random) {
    double[] values = effects.clone();
    for (Component component : components) {
      double[] draws = new double[component.count];
      for (int group = 0; group < draws.length; group++) {
        draws[group] = component.sd * random.nextGaussian();
      }
      for (int row = 0; row < values.length; row++) {
        values[row] += draws[component.groups[row]];
      }
    }
    addCourses(values, random);
    return values;
  }

  /** Each plot's own course over its dates, and what each reading adds. */
  private void addCourses(double[] values, RandomGenerator random) {
    PlotVariance variance = design.variance();
    double course = Math.sqrt(variance.plotByDate());
    double reading = Math.sqrt(variance.ofReading(design.sampling()));
    double rho = variance.dateCorrelation();
    double rest = Math.sqrt(1 - rho * rho);
    double before = 0;
    for (int row = 0; row < values.length; row++) {
      boolean first = row % design.sampling().dates() == 0;
      double drawn = random.nextGaussian();
      before = first ? drawn : rho * before + rest * drawn;
      values[row] += course * before + reading * random.nextGaussian();
    }
  }

  private static double effect(String arm, double difference) {
    return switch (arm) {
      case "returned", "arm 2" -> difference / 2;
      case "collected", "arm 1" -> -difference / 2;
      default -> 0;
    };
  }

  private void addUnit(int unit) {
    String name = Integer.toString(unit);
    switch (design.layout()) {
      case SPLIT_YARD -> {
        addDates(name, "collected");
        addDates(name, "returned");
      }
      case PAIRED_STRIPS -> forArms(arm -> addDates(name, arm));
      case LISTED ->
          forArms(
              arm -> {
                for (int plot = 1; plot <= design.perLawn(); plot++) {
                  addDates(name, arm, Integer.toString(plot));
                }
              });
      case INDEPENDENT_GROUPS -> forArms(arm -> addDates(arm + " " + name, arm));
      case RANDOMISED_BLOCK -> forArms(arm -> addDates(name, arm));
      case LATIN_SQUARE -> addSquare(name);
      case SPLIT_PLOT, STRIP_PLOT ->
          forArms(
              arm -> {
                for (int second = 1; second <= design.secondArms(); second++) {
                  addDates(name, arm, "arm " + second);
                }
              });
      case YARDS_AND_YEARS -> {
        for (int year = 1; year <= design.years(); year++) {
          addDates(name, Integer.toString(year), "collected");
          addDates(name, Integer.toString(year), "returned");
        }
      }
    }
  }

  private void forArms(Consumer<String> action) {
    for (int arm = 1; arm <= design.arms(); arm++) {
      action.accept("arm " + arm);
    }
  }

  private void addSquare(String square) {
    for (int row = 0; row < design.arms(); row++) {
      for (int column = 0; column < design.arms(); column++) {
        int arm = (row + column) % design.arms() + 1;
        addDates(square, square + "." + (row + 1), square + "." + (column + 1), "arm " + arm);
      }
    }
  }

  private void addDates(String... before) {
    for (int date = 1; date <= design.sampling().dates(); date++) {
      List<String> row = new ArrayList<>(List.of(before));
      row.add(Integer.toString(date));
      cells.add(List.copyOf(row));
    }
  }

  private void addComponents(Surroundings around) {
    List<String> plot = new ArrayList<>(columns);
    plot.remove("date");
    plot.remove("year");
    add(design.variance().plot(), plot.toArray(String[]::new));
    switch (design.layout()) {
      case SPLIT_YARD -> {
        add(around.block(), "yard");
        add(around.blockByDate(), "yard", "date");
      }
      case INDEPENDENT_GROUPS -> {}
      case RANDOMISED_BLOCK -> add(around.block(), "block");
      case PAIRED_STRIPS -> add(around.block(), "pair");
      case LISTED -> add(around.block(), "lawn");
      case LATIN_SQUARE -> {
        add(around.block(), "row");
        add(around.block(), "column");
      }
      case SPLIT_PLOT, STRIP_PLOT -> {
        add(around.block(), "block");
        add(design.wholePlot(), "block", "practice");
        if (design.layout() == Layout.STRIP_PLOT) {
          add(design.secondStrip(), "block", "second");
        }
      }
      case YARDS_AND_YEARS -> {
        add(around.block(), "yard");
        add(around.year(), "year");
        add(around.blockByYear(), "yard", "year");
        add(around.practiceByYear(), "practice", "year");
        add(around.plotByYear(), "yard", "practice", "year");
      }
    }
  }

  private void add(double variance, String... within) {
    if (variance == 0) {
      return;
    }
    Map<List<String>, Integer> known = new HashMap<>();
    int[] groups = new int[cells.size()];
    for (int row = 0; row < groups.length; row++) {
      List<String> key = new ArrayList<>();
      for (String column : within) {
        key.add(cells.get(row).get(columns.indexOf(column)));
      }
      groups[row] = known.computeIfAbsent(key, unseen -> known.size());
    }
    components.add(new Component(groups, known.size(), Math.sqrt(variance)));
  }
}
