package leafturn.trials.analysis.mixed;

import java.util.Arrays;

/**
 * The random effects of a block and how often they meet: Z'Z, arranged so that the set with the
 * most effects, whose groups never meet each other, can be eliminated first. Effects are numbered
 * set after set and group after group, those of the eliminated set first.
 */
final class CrossProducts {
  private final Pattern pattern;
  private final int[] sizes;
  private final int[] starts;
  private final int[] groupCounts;
  private final int eliminated;
  private final int effects;
  private final int[] setOf;
  private final double[][] own;
  private final int[][] near;
  private final double[][] joint;
  private final double[][] others;

  CrossProducts(Pattern pattern) {
    this.pattern = pattern;
    int sets = pattern.groups().length;
    sizes = new int[sets];
    groupCounts = new int[sets];
    starts = new int[sets];
    int most = -1;
    for (int set = 0; set < sets; set++) {
      sizes[set] = pattern.columns()[set].length;
      groupCounts[set] = Arrays.stream(pattern.groups()[set]).max().orElse(-1) + 1;
      if (most < 0 || count(set) > count(most)) {
        most = set;
      }
    }
    eliminated = most;
    int next = most < 0 ? 0 : count(most);
    for (int set = 0; set < sets; set++) {
      if (set != eliminated) {
        starts[set] = next;
        next += count(set);
      }
    }
    effects = next;
    setOf = setOf();
    int groups = most < 0 ? 0 : groupCounts[most];
    own = new double[groups][];
    near = new int[groups][];
    joint = new double[groups][];
    others = new double[remaining()][remaining()];
    if (most >= 0) {
      addEliminated();
      addOthers();
    }
  }

  private int[] setOf() {
    int[] sets = new int[effects];
    for (int set = 0; set < sizes.length; set++) {
      Arrays.fill(sets, starts[set], starts[set] + count(set), set);
    }
    return sets;
  }

  private int count(int set) {
    return groupCounts[set] * sizes[set];
  }

  /** How many random effects there are. */
  int effects() {
    return effects;
  }

  /** The set that is eliminated first; -1 where there is none. */
  int eliminated() {
    return eliminated;
  }

  int sets() {
    return sizes.length;
  }

  /** Effects in one group of a set. */
  int size(int set) {
    return sizes[set];
  }

  int groups(int set) {
    return groupCounts[set];
  }

  /** The number of a set's first effect. */
  int start(int set) {
    return starts[set];
  }

  /** The set of an effect. */
  int setOf(int effect) {
    return setOf[effect];
  }

  /** Effects of the eliminated set. */
  int first() {
    return eliminated < 0 ? 0 : count(eliminated);
  }

  /** Effects of all other sets. */
  int remaining() {
    return effects - first();
  }

  /** Z_g'Z_g of one group of the eliminated set, row by row. */
  double[] own(int group) {
    return own[group];
  }

  /** The other effects that meet a group of the eliminated set, from 0 and rising. */
  int[] near(int group) {
    return near[group];
  }

  /** Z_r'Z_g of the effects near a group, {@code [near * size + effect]}. */
  double[] joint(int group) {
    return joint[group];
  }

  /** Z_r'Z_r of the effects of the other sets, its upper triangle. */
  double[][] others() {
    return others;
  }

  /** The first effect of the group to which a row belongs in a set. */
  int at(int set, int row) {
    return starts[set] + pattern.groups()[set][row] * sizes[set];
  }

  /** What an effect of a set is multiplied with in a row. */
  double factor(int set, int effect, int row) {
    return pattern.columns()[set][effect][row];
  }

  /** Z'x for several vectors, {@code [row * columns + column]}. */
  double[] times(double[] x, int columns) {
    double[] sums = new double[effects * columns];
    for (int set = 0; set < sizes.length; set++) {
      for (int a = 0; a < sizes[set]; a++) {
        double[] factors = pattern.columns()[set][a];
        for (int row = 0; row < pattern.size(); row++) {
          int to = (at(set, row) + a) * columns;
          int from = row * columns;
          for (int j = 0; j < columns; j++) {
            sums[to + j] += factors[row] * x[from + j];
          }
        }
      }
    }
    return sums;
  }

  /** x - Z b for several vectors. */
  double[] less(double[] x, double[] b, int columns) {
    double[] rest = x.clone();
    for (int set = 0; set < sizes.length; set++) {
      for (int a = 0; a < sizes[set]; a++) {
        double[] factors = pattern.columns()[set][a];
        for (int row = 0; row < pattern.size(); row++) {
          int from = (at(set, row) + a) * columns;
          int to = row * columns;
          for (int j = 0; j < columns; j++) {
            rest[to + j] -= factors[row] * b[from + j];
          }
        }
      }
    }
    return rest;
  }

  private void addEliminated() {
    int[][] rowsOf = rowsByGroup();
    int size = sizes[eliminated];
    double[] sums = new double[remaining() * size];
    boolean[] met = new boolean[remaining()];
    for (int group = 0; group < rowsOf.length; group++) {
      own[group] = new double[size * size];
      int[] list = new int[16];
      int count = 0;
      for (int row : rowsOf[group]) {
        addOwn(own[group], row);
        for (int set = 0; set < sizes.length; set++) {
          for (int a = 0; set != eliminated && a < sizes[set]; a++) {
            int effect = at(set, row) + a - first();
            if (!met[effect]) {
              met[effect] = true;
              list = count == list.length ? Arrays.copyOf(list, 2 * count) : list;
              list[count++] = effect;
            }
            for (int b = 0; b < size; b++) {
              sums[effect * size + b] += factor(set, a, row) * factor(eliminated, b, row);
            }
          }
        }
      }
      keep(group, Arrays.copyOf(list, count), sums, met);
    }
  }

  private void addOwn(double[] sum, int row) {
    int size = sizes[eliminated];
    for (int a = 0; a < size; a++) {
      for (int b = 0; b < size; b++) {
        sum[a * size + b] += factor(eliminated, a, row) * factor(eliminated, b, row);
      }
    }
  }

  private void keep(int group, int[] list, double[] sums, boolean[] met) {
    int size = sizes[eliminated];
    Arrays.sort(list);
    near[group] = list;
    joint[group] = new double[list.length * size];
    for (int i = 0; i < list.length; i++) {
      for (int b = 0; b < size; b++) {
        joint[group][i * size + b] = sums[list[i] * size + b];
        sums[list[i] * size + b] = 0;
      }
      met[list[i]] = false;
    }
  }

  private int[][] rowsByGroup() {
    int[] groups = pattern.groups()[eliminated];
    int[] counts = new int[groupCounts[eliminated]];
    for (int group : groups) {
      counts[group]++;
    }
    int[][] rows = new int[counts.length][];
    for (int group = 0; group < counts.length; group++) {
      rows[group] = new int[counts[group]];
    }
    for (int row = groups.length - 1; row >= 0; row--) {
      rows[groups[row]][--counts[groups[row]]] = row;
    }
    return rows;
  }

  private void addOthers() {
    for (int row = 0; row < pattern.size(); row++) {
      for (int set = 0; set < sizes.length; set++) {
        for (int other = 0; set != eliminated && other < sizes.length; other++) {
          if (other != eliminated) {
            addOthers(row, set, other);
          }
        }
      }
    }
  }

  private void addOthers(int row, int set, int other) {
    for (int a = 0; a < sizes[set]; a++) {
      int i = at(set, row) + a - first();
      for (int b = 0; b < sizes[other]; b++) {
        int j = at(other, row) + b - first();
        if (i <= j) {
          others[i][j] += factor(set, a, row) * factor(other, b, row);
        }
      }
    }
  }
}
