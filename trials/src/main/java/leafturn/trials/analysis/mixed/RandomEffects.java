package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;

/**
 * Random effects that are correlated with each other and vary between the same groups.
 *
 * @param within the factors that form the groups
 * @param effects names of the effects: the mean, slopes
 * @param groups the group of each row, from 0
 * @param groupCount how many groups there are
 * @param columns what each effect is multiplied with, {@code [effect][row]}, scaled to a mean
 *     square of 1
 * @param scales what the columns were divided by
 */
public record RandomEffects(
    List<String> within,
    List<String> effects,
    int[] groups,
    int groupCount,
    double[][] columns,
    double[] scales) {

  /** Effects in one group. */
  public int size() {
    return effects.size();
  }

  /** The groups' factors as one name. */
  public String label() {
    return String.join("*", within);
  }

  /** The random effects of a model, uncorrelated effects apart from each other. */
  public static List<RandomEffects> of(TrialModel model, ModelFrame frame) {
    List<RandomEffects> all = new ArrayList<>();
    model.random().forEach(term -> all.addAll(of(model, frame, term)));
    return all;
  }

  /** The sets of one random term: one, or one for each uncorrelated effect. */
  public static List<RandomEffects> of(TrialModel model, ModelFrame frame, RandomTerm term) {
    RandomEffects together = of(term, model, frame);
    if (term.correlated()) {
      return List.of(together);
    }
    List<RandomEffects> apart = new ArrayList<>();
    for (int k = 0; k < together.size(); k++) {
      apart.add(together.only(k));
    }
    return apart;
  }

  /** The group of each row that a combination of factors forms, numbered as they are met. */
  public static int[] groups(List<String> within, ModelFrame frame) {
    Map<List<Integer>, Integer> numbers = new HashMap<>();
    int[] groups = new int[frame.rows()];
    for (int i = 0; i < groups.length; i++) {
      List<Integer> key = new ArrayList<>(within.size());
      for (String name : within) {
        key.add(frame.factor(name).codes()[i]);
      }
      groups[i] = numbers.computeIfAbsent(key, k -> numbers.size());
    }
    return groups;
  }

  private RandomEffects only(int effect) {
    return new RandomEffects(
        within,
        List.of(effects.get(effect)),
        groups,
        groupCount,
        new double[][] {columns[effect]},
        new double[] {scales[effect]});
  }

  private static RandomEffects of(RandomTerm term, TrialModel model, ModelFrame frame) {
    List<String> names = new ArrayList<>();
    List<double[]> columns = new ArrayList<>();
    if (term.intercept()) {
      names.add(FixedColumns.INTERCEPT);
      double[] ones = new double[frame.rows()];
      Arrays.fill(ones, 1);
      columns.add(ones);
    }
    for (String slope : term.slopes()) {
      if (model.isFactor(slope)) {
        addLevels(frame.factor(slope), term.intercept() ? 1 : 0, names, columns);
      } else {
        names.add(slope);
        columns.add(frame.covariate(slope).clone());
      }
    }
    double[] scales = new double[columns.size()];
    for (int k = 0; k < scales.length; k++) {
      scales[k] = scaleToUnit(columns.get(k));
    }
    int[] groups = groups(term.within(), frame);
    int count = 0;
    for (int group : groups) {
      count = Math.max(count, group + 1);
    }
    return new RandomEffects(
        term.within(), names, groups, count, columns.toArray(double[][]::new), scales);
  }

  private static void addLevels(
      Factor factor, int first, List<String> names, List<double[]> columns) {
    for (int level = first; level < factor.levels().size(); level++) {
      names.add(factor.name() + "[" + factor.levels().get(level) + "]");
      double[] column = new double[factor.codes().length];
      for (int i = 0; i < column.length; i++) {
        column[i] = factor.codes()[i] == level ? 1 : 0;
      }
      columns.add(column);
    }
  }

  private static double scaleToUnit(double[] column) {
    double squares = 0;
    int used = 0;
    for (double value : column) {
      squares += value * value;
      used += value == 0 ? 0 : 1;
    }
    double scale = used == 0 ? 1 : Math.sqrt(squares / used);
    for (int i = 0; i < column.length; i++) {
      column[i] /= scale;
    }
    return scale;
  }
}
