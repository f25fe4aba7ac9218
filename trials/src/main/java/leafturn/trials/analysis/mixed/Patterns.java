package leafturn.trials.analysis.mixed;

import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the blocks of observations that are independent of each other, and those alike. */
final class Patterns {
  private final double[][] design;
  private final double[][] basis;
  private final List<RandomEffects> effects;
  private final int[] units;
  private final int[] positions;

  /**
   * @param design rows of the fixed part as they are coded: two blocks are alike if these are
   * @param basis the same rows on the orthonormal basis
   * @param units the unit over time of each row
   * @param positions of each row in time
   */
  Patterns(
      double[][] design,
      double[][] basis,
      List<RandomEffects> effects,
      int[] units,
      int[] positions) {
    this.design = design;
    this.basis = basis;
    this.effects = effects;
    this.units = units;
    this.positions = positions;
  }

  List<Pattern> find() {
    Map<Key, List<int[]>> alike = new LinkedHashMap<>();
    for (int[] block : blocks()) {
      int[] ordered = ordered(block);
      alike.computeIfAbsent(key(ordered), key -> new ArrayList<>()).add(ordered);
    }
    return alike.values().stream().map(this::pattern).toList();
  }

  /** Rows joined by a common group or unit, directly or through others. */
  private List<int[]> blocks() {
    int[] root = new int[design.length];
    Arrays.setAll(root, i -> i);
    for (RandomEffects set : effects) {
      join(root, set.groups());
    }
    join(root, units);
    Map<Integer, List<Integer>> byRoot = new LinkedHashMap<>();
    for (int i = 0; i < root.length; i++) {
      byRoot.computeIfAbsent(rootOf(root, i), r -> new ArrayList<>()).add(i);
    }
    return byRoot.values().stream()
        .map(rows -> rows.stream().mapToInt(Integer::intValue).toArray())
        .toList();
  }

  private static void join(int[] root, int[] groups) {
    Map<Integer, Integer> first = new HashMap<>();
    for (int i = 0; i < groups.length; i++) {
      Integer other = first.putIfAbsent(groups[i], i);
      if (other != null) {
        root[rootOf(root, i)] = rootOf(root, other);
      }
    }
  }

  private static int rootOf(int[] root, int row) {
    int at = row;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }

  private int[] ordered(int[] block) {
    Comparator<Integer> byDesign = (i, j) -> Arrays.compare(design[i], design[j]);
    return Arrays.stream(block)
        .boxed()
        .sorted(byDesign.thenComparing(i -> positions[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /** Everything that the covariance of a block depends on, as bits to be compared. */
  private Key key(int[] rows) {
    int width = design[0].length + 2;
    for (RandomEffects set : effects) {
      width += 1 + set.size();
    }
    LongBuffer bits = LongBuffer.allocate(width * rows.length);
    for (int row : rows) {
      for (double value : design[row]) {
        bits.put(Double.doubleToLongBits(value));
      }
      bits.put(positions[row]);
    }
    for (int unit : numbered(units, rows)) {
      bits.put(unit);
    }
    for (RandomEffects set : effects) {
      for (int group : numbered(set.groups(), rows)) {
        bits.put(group);
      }
      for (double[] column : set.columns()) {
        for (int row : rows) {
          bits.put(Double.doubleToLongBits(column[row]));
        }
      }
    }
    return new Key(bits.flip());
  }

  /** Compared by what the buffer holds. */
  private record Key(LongBuffer bits) {}

  private static int[] numbered(int[] groups, int[] rows) {
    Map<Integer, Integer> numbers = new HashMap<>();
    return Arrays.stream(rows)
        .map(row -> numbers.computeIfAbsent(groups[row], group -> numbers.size()))
        .toArray();
  }

  private Pattern pattern(List<int[]> members) {
    int[] rows = members.get(0);
    int directions = basis[0].length;
    double[] flat = new double[rows.length * directions];
    for (int i = 0; i < rows.length; i++) {
      System.arraycopy(basis[rows[i]], 0, flat, i * directions, directions);
    }
    int[][] groups = new int[effects.size()][];
    double[][][] columns = new double[effects.size()][][];
    for (int set = 0; set < groups.length; set++) {
      RandomEffects of = effects.get(set);
      groups[set] = numbered(of.groups(), rows);
      columns[set] = new double[of.size()][];
      for (int k = 0; k < of.size(); k++) {
        double[] column = of.columns()[k];
        columns[set][k] = Arrays.stream(rows).mapToDouble(row -> column[row]).toArray();
      }
    }
    int[] at = Arrays.stream(rows).map(row -> positions[row]).toArray();
    return new Pattern(rows.length, flat, groups, columns, numbered(units, rows), at, members);
  }
}
