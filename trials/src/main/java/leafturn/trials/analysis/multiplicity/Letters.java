package leafturn.trials.analysis.multiplicity;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Letters that show which means differ: two means share a letter if, and only if, they are not
 * significantly different. By inserting each significant pair and absorbing what another column
 * holds already.
 *
 * @source piepho2004, section 2
 */
public final class Letters {
  private Letters() {}

  /**
   * Letters of several means, from {@code a} for the first.
   *
   * @param differ {@code [mean][mean]}, whether two differ significantly
   * @return for each mean its letters in alphabetical order
   */
  public static List<String> of(boolean[][] differ) {
    List<BitSet> columns = new ArrayList<>();
    BitSet all = new BitSet();
    all.set(0, differ.length);
    columns.add(all);
    for (int i = 0; i < differ.length; i++) {
      for (int j = i + 1; j < differ.length; j++) {
        if (differ[i][j]) {
          columns = absorbed(inserted(columns, i, j));
        }
      }
    }
    columns.sort(Comparator.comparing(Letters::members, Letters::compare));
    return written(columns, differ.length);
  }

  private static List<BitSet> inserted(List<BitSet> columns, int one, int other) {
    List<BitSet> result = new ArrayList<>();
    for (BitSet column : columns) {
      if (column.get(one) && column.get(other)) {
        BitSet without = (BitSet) column.clone();
        without.clear(one);
        result.add(without);
        BitSet rest = (BitSet) column.clone();
        rest.clear(other);
        result.add(rest);
      } else {
        result.add(column);
      }
    }
    return result;
  }

  private static List<BitSet> absorbed(List<BitSet> columns) {
    List<BitSet> kept = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      BitSet column = columns.get(i);
      boolean needed = true;
      for (int j = 0; j < columns.size() && needed; j++) {
        boolean same = columns.get(j).equals(column);
        needed = j == i || !contains(columns.get(j), column) || (same && j > i);
      }
      if (needed) {
        kept.add(column);
      }
    }
    return kept;
  }

  private static boolean contains(BitSet whole, BitSet part) {
    BitSet rest = (BitSet) part.clone();
    rest.andNot(whole);
    return rest.isEmpty();
  }

  private static List<Integer> members(BitSet column) {
    return column.stream().boxed().toList();
  }

  private static int compare(List<Integer> one, List<Integer> other) {
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      int order = Integer.compare(one.get(i), other.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }

  private static List<String> written(List<BitSet> columns, int means) {
    List<String> letters = new ArrayList<>();
    for (int mean = 0; mean < means; mean++) {
      StringBuilder own = new StringBuilder();
      for (int c = 0; c < columns.size(); c++) {
        if (columns.get(c).get(mean)) {
          own.append(letter(c));
        }
      }
      letters.add(own.toString());
    }
    return letters;
  }

  private static String letter(int column) {
    String primes = "'".repeat(column / 52);
    int within = column % 52;
    return (char) (within < 26 ? 'a' + within : 'A' + within - 26) + primes;
  }
}
