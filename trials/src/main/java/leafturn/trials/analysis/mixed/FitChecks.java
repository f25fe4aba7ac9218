package leafturn.trials.analysis.mixed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.fixed.ColumnBasis;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;

/** Whether the data can carry a model at all. */
public final class FitChecks {
  /** Rows times the square of the fixed part's columns: some seconds of work. */
  private static final double MOST_WORK = 4e9;

  private FitChecks() {}

  /**
   * @throws TrialFaultException for a fixed part that would take too long
   */
  static void size(int columns, int rows) {
    if ((double) rows * columns * columns > MOST_WORK) {
      throw new TrialFaultException(
          "The fixed part has %,d coefficients for %,d observations, too many to work out; a factor of so many levels belongs in random, or is a number and belongs in covariates."
              .formatted(columns, rows));
    }
  }

  /**
   * @throws TrialFaultException with a sentence for each thing that cannot work
   */
  static void check(
      TrialModel model, ModelFrame frame, ColumnBasis basis, List<RandomEffects> effects) {
    List<String> faults = singleGroups(effects);
    // One yard leaves few rows, and few rows leave random terms nothing: the cause is told alone.
    faults.addAll(0, faults.isEmpty() ? ofFixed(model, frame, basis) : ofData(model, frame));
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
    for (RandomEffects set : effects) {
      checkGroups(set, model, frame, faults);
      checkConfounded(set, basis, faults);
    }
    checkRepeats(model, effects, faults);
    if (model.overTime() != null) {
      checkTimes(model.overTime(), frame, effects, faults);
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  /** A sentence for each thing that cannot work in the fixed part alone. */
  public static List<String> ofFixed(TrialModel model, ModelFrame frame, ColumnBasis basis) {
    List<String> faults = ofData(model, frame);
    if (frame.rows() <= basis.rank()) {
      faults.add(
          "%d observations carry %d coefficients, so nothing is left to judge the error by; leave terms out or observe more plots."
              .formatted(frame.rows(), basis.rank()));
    }
    return faults;
  }

  private static List<String> ofData(TrialModel model, ModelFrame frame) {
    List<String> faults = new ArrayList<>();
    checkValues(model, frame, faults);
    checkLevels(model, frame, faults);
    return faults;
  }

  private static List<String> singleGroups(List<RandomEffects> effects) {
    List<String> faults = new ArrayList<>();
    for (RandomEffects set : effects) {
      if (set.groupCount() < 2) {
        faults.add(
            "The random term within %s has a single group; a variance needs at least two. Leave the term out, or observe another group."
                .formatted(set.label()));
      }
    }
    return faults;
  }

  private static void checkValues(TrialModel model, ModelFrame frame, List<String> faults) {
    double[] values = frame.response().values();
    if (values.length > 1 && Arrays.stream(values).allMatch(value -> value == values[0])) {
      faults.add(
          "All %d values of %s are %s; where nothing varies there is nothing to analyse."
              .formatted(values.length, frame.response().name(), asInTheFile(model, values[0])));
    }
  }

  /** A value of the response as it stood in the file, without the noise of its logarithm. */
  private static String asInTheFile(TrialModel model, double value) {
    double given = model.scale() == TrialModel.Scale.LOG ? Math.exp(value) : value;
    return new BigDecimal(given, new MathContext(10)).stripTrailingZeros().toPlainString();
  }

  private static void checkLevels(TrialModel model, ModelFrame frame, List<String> faults) {
    model.fixed().stream()
        .flatMap(term -> term.variables().stream())
        .distinct()
        .filter(model::isFactor)
        .map(frame::factor)
        .filter(factor -> levelsPresent(factor) < 2)
        .forEach(
            factor ->
                faults.add(
                    "%s has one level among the usable rows, '%s'; an effect needs at least two."
                        .formatted(factor.name(), factor.levels().get(factor.codes()[0]))));
  }

  private static long levelsPresent(Factor factor) {
    return Arrays.stream(factor.codes()).distinct().count();
  }

  private static void checkGroups(
      RandomEffects set, TrialModel model, ModelFrame frame, List<String> faults) {
    if (model.overTime() != null) {
      return;
    }
    if (set.groupCount() == frame.rows()) {
      faults.add(
          "The random term within %s has one observation in each group, so it cannot be told from the residual; leave it out."
              .formatted(set.label()));
    } else if (holdsTheResidual(set)) {
      faults.add(
          "The random term within %s with slopes has one observation for each of its effects (%s), so it cannot be told from the residual; leave the slopes out, or observe each combination more than once."
              .formatted(set.label(), String.join(", ", set.effects())));
    }
  }

  /**
   * Whether a choice of the effects' variances does the same as a residual: the rows differ in as
   * many ways as there are effects, and no group has two rows alike.
   */
  private static boolean holdsTheResidual(RandomEffects set) {
    Set<List<Double>> kinds = new HashSet<>();
    Set<List<Double>> ofGroups = new HashSet<>();
    for (int row = 0; row < set.groups().length; row++) {
      List<Double> kind = new ArrayList<>();
      for (double[] column : set.columns()) {
        kind.add(column[row] + 0.0);
      }
      kinds.add(List.copyOf(kind));
      kind.add((double) set.groups()[row]);
      if (!ofGroups.add(kind) || kinds.size() > set.size()) {
        return false;
      }
    }
    return kinds.stream().noneMatch(kind -> kind.stream().allMatch(effect -> effect == 0));
  }

  /** A random term whose groups each have coefficients of their own leaves nothing to vary. */
  private static void checkConfounded(RandomEffects set, ColumnBasis basis, List<String> faults) {
    if (set.groupCount() > basis.rank()) {
      return;
    }
    for (int group = 0; group < set.groupCount(); group++) {
      double[] indicator = new double[set.groups().length];
      for (int i = 0; i < indicator.length; i++) {
        indicator[i] = set.groups()[i] == group ? set.columns()[0][i] : 0;
      }
      if (!basis.spans(indicator)) {
        return;
      }
    }
    faults.add(
        "The random term within %s is confounded with the fixed part: the fixed terms already tell its %d groups apart, so nothing of the groups is left to vary at random; more units per treatment are needed."
            .formatted(set.label(), set.groupCount()));
  }

  private static void checkRepeats(
      TrialModel model, List<RandomEffects> effects, List<String> faults) {
    for (int i = 0; i < effects.size(); i++) {
      for (int j = 0; j < i; j++) {
        RandomEffects one = effects.get(i);
        RandomEffects other = effects.get(j);
        if (Arrays.equals(one.groups(), other.groups())
            && one.effects().stream().anyMatch(other.effects()::contains)) {
          faults.add(
              "The random terms within %s and within %s form the same groups%s; leave one out."
                  .formatted(other.label(), one.label(), neverTogether(model, one, other)));
        }
      }
    }
  }

  /** That a treatment in the one term never varies within the groups of the other. */
  private static String neverTogether(TrialModel model, RandomEffects one, RandomEffects other) {
    boolean oneIsFiner = one.within().size() > other.within().size();
    RandomEffects fine = oneIsFiner ? one : other;
    RandomEffects coarse = oneIsFiner ? other : one;
    List<String> added = new ArrayList<>(fine.within());
    added.removeAll(coarse.within());
    boolean isFixed =
        added.size() == 1
            && model.fixed().stream().anyMatch(term -> term.variables().contains(added.get(0)));
    return isFixed && fine.within().containsAll(coarse.within())
        ? ": no %s has two levels of %s, so they cannot be compared within any %1$s, only between them"
            .formatted(coarse.label(), added.get(0))
        : "";
  }

  private static void checkTimes(
      OverTime overTime, ModelFrame frame, List<RandomEffects> effects, List<String> faults) {
    int[] units = RandomEffects.groups(overTime.unit(), frame);
    Map<List<Integer>, Integer> seen = new HashMap<>();
    for (int i = 0; i < units.length && faults.size() < 10; i++) {
      int position = frame.times().positions()[i];
      Integer earlier = seen.putIfAbsent(List.of(units[i], position), i);
      if (earlier != null) {
        faults.add(
            "Lines %d and %d are both of %s at %s %s; a unit has one row for each time (average subsamples first, or name what tells them apart in overTime.unit)."
                .formatted(
                    frame.lines().get(earlier),
                    frame.lines().get(i),
                    unitName(overTime, frame, i),
                    overTime.time(),
                    frame.times().labels().get(position)));
      }
    }
    if (frame.times().labels().size() < 2) {
      faults.add("overTime.time '%s' has a single time.".formatted(overTime.time()));
    }
    if (Arrays.stream(units).distinct().count() == frame.rows()) {
      faults.add(
          "overTime.unit %s has one row in each unit; a correlation over time needs units observed repeatedly."
              .formatted(String.join("*", overTime.unit())));
    }
    if (overTime.correlation() == OverTime.Correlation.COMPOUND_SYMMETRY
        || overTime.correlation() == OverTime.Correlation.UNSTRUCTURED) {
      effects.stream()
          .filter(set -> Arrays.equals(set.groups(), units))
          .forEach(
              set ->
                  faults.add(
                      "The random term within %s is already part of the %s correlation over time; leave one out."
                          .formatted(set.label(), overTime.correlation().word())));
    }
  }

  private static String unitName(OverTime overTime, ModelFrame frame, int row) {
    List<String> names = new ArrayList<>();
    for (String name : overTime.unit()) {
      Factor factor = frame.factor(name);
      names.add(name + " " + factor.levels().get(factor.codes()[row]));
    }
    return String.join(", ", names);
  }
}
