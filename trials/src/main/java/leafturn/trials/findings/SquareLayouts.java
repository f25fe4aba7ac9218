package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.Numbers;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.layout.CyclicSquares;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.jspecify.annotations.Nullable;

/**
 * The Latin squares that might have been drawn: the cyclic square with its rows, columns and
 * letters in any order. For a comparison only the places of its two arms count, so that these alone
 * are gone through, each as often as squares have it.
 *
 * @source fisher1935
 */
final class SquareLayouts {
  private final double[][] values;
  private final int size;
  private double bound;
  private long extreme;

  private SquareLayouts(double[][] values) {
    this.values = values;
    this.size = values.length;
  }

  /** The test of a comparison; null where the plots are no square with known rows and columns. */
  static @Nullable RandomisationTest test(
      Contrast contrast, SeasonTable table, double[] seasons, long seed) {
    int size = (int) Math.round(Math.sqrt(table.plots().size()));
    double[][] values = new double[size][size];
    int[] first = new int[size];
    int[] second = new int[size];
    Set<Integer> met = new HashSet<>();
    for (int i = 0; i < seasons.length; i++) {
      Plot plot = table.plots().get(i);
      int row = place(plot.row(), size);
      int column = place(plot.column(), size);
      if (row < 0 || column < 0 || !met.add(row * size + column)) {
        return null;
      }
      values[row][column] = seasons[i];
      if (plot.arm().equals(contrast.first())) {
        first[row] = column;
      } else if (plot.arm().equals(contrast.second())) {
        second[row] = column;
      }
    }
    if (size < 3 || met.size() < size * size) {
      return null;
    }
    SquareLayouts layouts = new SquareLayouts(values);
    double observed = Math.abs(layouts.mean(first) - layouts.mean(second));
    if (Double.isNaN(observed)) {
      return null;
    }
    layouts.bound = observed * (1 - RandomisationTest.SAME);
    return size > CyclicSquares.MOST_LISTED
        ? layouts.sampled(RandomSource.XO_RO_SHI_RO_128_PP.create(seed))
        : layouts.all();
  }

  private static int place(@Nullable String name, int size) {
    Double number = name == null ? null : Numbers.parse(name);
    if (number == null || number != Math.rint(number)) {
      return -1;
    }
    return number >= 1 && number <= size ? (int) number.doubleValue() - 1 : -1;
  }

  /** Mean of the plots at one column in each row; NaN where none has a value. */
  private double mean(int[] columnOfRow) {
    double sum = 0;
    int count = 0;
    for (int row = 0; row < size; row++) {
      double value = values[row][columnOfRow[row]];
      if (!Double.isNaN(value)) {
        sum += value;
        count++;
      }
    }
    return sum / count;
  }

  private RandomisationTest all() {
    List<int[]> orders = new ArrayList<>();
    addOrders(new ArrayList<>(List.of(0)), orders);
    long squares = 0;
    for (int[] rows : orders) {
      for (int[] columns : orders) {
        for (int pair = 0; pair < size * size; pair++) {
          if (pair / size != pair % size) {
            squares++;
            count(columnsOf(pair / size, rows, columns), columnsOf(pair % size, rows, columns));
          }
        }
      }
    }
    return new RandomisationTest(
        (double) extreme / squares,
        CyclicSquares.places(size),
        CyclicSquares.smallestP(size),
        false,
        false);
  }

  /** All orders that begin with 0: another beginning only gives the letters other names. */
  private void addOrders(List<Integer> begun, List<int[]> orders) {
    if (begun.size() == size) {
      orders.add(begun.stream().mapToInt(Integer::intValue).toArray());
      return;
    }
    for (int next = 1; next < size; next++) {
      if (!begun.contains(next)) {
        begun.add(next);
        addOrders(begun, orders);
        begun.remove(begun.size() - 1);
      }
    }
  }

  /**
   * Where a letter of the cyclic square stands in each row, {@code columns} telling where each
   * went.
   */
  private int[] columnsOf(int letter, int[] rows, int[] columns) {
    int[] places = new int[size];
    for (int row = 0; row < size; row++) {
      places[row] = columns[Math.floorMod(letter - rows[row], size)];
    }
    return places;
  }

  private void count(int[] one, int[] other) {
    double found = Math.abs(mean(one) - mean(other));
    extreme += found < bound ? 0 : 1;
  }

  private RandomisationTest sampled(UniformRandomProvider chance) {
    List<Integer> numbers = new ArrayList<>(IntStream.range(0, size).boxed().toList());
    for (int layout = 1; layout < RandomisationTest.IN_SAMPLE; layout++) {
      int[] rows = shuffled(numbers, chance);
      int[] columns = shuffled(numbers, chance);
      int first = chance.nextInt(size);
      int second = (first + 1 + chance.nextInt(size - 1)) % size;
      count(columnsOf(first, rows, columns), columnsOf(second, rows, columns));
    }
    return RandomisationTest.ofSample(extreme);
  }

  private static int[] shuffled(List<Integer> numbers, UniformRandomProvider chance) {
    for (int last = numbers.size() - 1; last > 0; last--) {
      Collections.swap(numbers, last, chance.nextInt(last + 1));
    }
    return numbers.stream().mapToInt(Integer::intValue).toArray();
  }
}
