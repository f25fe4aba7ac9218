package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import leafturn.trials.analysis.data.Spelling;
import org.jspecify.annotations.Nullable;

/**
 * Whether an outcome was measured by one method, in one laboratory and in which batches.
 * Extractants take different parts of what is in the soil: Mehlich-3, Olsen and Bray values are not
 * one quantity.
 */
public final class MethodChange {
  private MethodChange() {}

  /** What a change of method, laboratory or batch means. */
  public static List<Remark> remarks(List<Reading> readings) {
    List<Remark> remarks = new ArrayList<>();
    TreeSet<String> methods = different(readings, methodOf(readings));
    if (methods.size() > 1) {
      remarks.add(
          Remark.refused(
              "%s was measured by %s, which are not one quantity; analyse each method by itself.",
              name(readings), String.join(" and ", methods)));
    }
    TreeSet<String> laboratories = different(readings, Reading::laboratory);
    if (laboratories.size() > 1) {
      remarks.add(
          Remark.warning(
              "%s comes from %s; laboratories differ by 15 to 20 %% in P and K, so compare within"
                  + " each and take the laboratory as a block.",
              name(readings), String.join(" and ", laboratories)));
    }
    TreeSet<String> batches = different(readings, Reading::batch);
    if (batches.size() > 1) {
      remarks.add(batches(readings, batches));
    }
    return remarks;
  }

  private static Remark batches(List<Reading> readings, TreeSet<String> batches) {
    long cells =
        withBatch(readings)
            .map(reading -> reading.date() + "\n" + reading.batch())
            .distinct()
            .count();
    long dates = withBatch(readings).map(Reading::date).distinct().count();
    boolean goWithDates = cells == batches.size() && dates == batches.size();
    return goWithDates
        ? Remark.note(
            "Each batch of %s is another date: dates and batches cannot be told apart, treatments"
                + " can.",
            name(readings))
        : Remark.warning(
            "%s was measured in %d batches; they are taken as blocks.",
            name(readings), batches.size());
  }

  private static Stream<Reading> withBatch(List<Reading> readings) {
    return readings.stream().filter(reading -> reading.batch() != null);
  }

  /**
   * The method of a reading as it was first written: names that differ only in capitals, spaces or
   * hyphens are one.
   */
  static Function<Reading, @Nullable String> methodOf(List<Reading> readings) {
    Map<String, String> first = new HashMap<>();
    for (Reading reading : readings) {
      String method = reading.method();
      if (method != null) {
        first.putIfAbsent(bare(method), method);
      }
    }
    return reading -> {
      String method = reading.method();
      return method == null ? null : first.getOrDefault(bare(method), method);
    };
  }

  private static String bare(String method) {
    return Spelling.plain(method).replaceAll("[\\p{Pd}_ ]", "");
  }

  private static String name(List<Reading> readings) {
    return readings.get(0).outcome();
  }

  private static TreeSet<String> different(
      List<Reading> readings, Function<Reading, @Nullable String> what) {
    TreeSet<String> found = new TreeSet<>();
    readings.stream().map(what).filter(Objects::nonNull).forEach(found::add);
    return found;
  }
}
