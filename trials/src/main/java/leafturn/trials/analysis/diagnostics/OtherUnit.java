package leafturn.trials.analysis.diagnostics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.quantity.DisplayNumber;
import org.jspecify.annotations.Nullable;

/** Some values about 100, 1000 or more times the others: most likely they are in another unit. */
public final class OtherUnit {
  private static final int FEWEST = 4;

  /** As far as the two heaps of values lie apart at least, as a ratio: assumed. */
  private static final double GAP = 20;

  private OtherUnit() {}

  /**
   * The sentence, or null where the values lie together.
   *
   * @param name of the column
   * @param values as measured; those that are not above 0 are passed over
   * @param lines of the file
   * @source common practice, no source
   */
  public static @Nullable String sentence(String name, double[] values, List<Integer> lines) {
    List<Integer> order =
        IntStream.range(0, values.length)
            .filter(i -> values[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .toList();
    int above = firstAbove(values, order);
    if (order.size() < FEWEST || values[order.get(above)] < GAP * values[order.get(above - 1)]) {
      return null;
    }
    List<Integer> low = order.subList(0, above);
    List<Integer> high = order.subList(above, order.size());
    int power = (int) Math.rint(level(values, high) - level(values, low));
    if (power < 2) {
      return null;
    }
    List<Integer> few = high.size() <= low.size() ? high : low;
    int first = few.stream().min(Comparator.naturalOrder()).orElseThrow();
    return "%d of %d values of %s, the first on line %d (%s), would lie with the others if %s by %s: look for another unit or a decimal mark gone astray."
        .formatted(
            few.size(),
            order.size(),
            name,
            lines.get(first),
            DisplayNumber.significant(values[first], 3),
            few == high ? "divided" : "multiplied",
            DisplayNumber.decimals(Math.pow(10, power), 0));
  }

  /** The place after the widest gap among ordered values; 0 where there are fewer than two. */
  private static int firstAbove(double[] values, List<Integer> order) {
    return IntStream.range(1, order.size())
        .boxed()
        .max(Comparator.comparingDouble(i -> values[order.get(i)] / values[order.get(i - 1)]))
        .orElse(0);
  }

  private static double level(double[] values, List<Integer> some) {
    return some.stream().mapToDouble(i -> Math.log10(values[i])).average().orElse(0);
  }
}
