package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
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
    TreeSet<String> methods = different(readings, Reading::method);
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
        readings.stream()
            .filter(reading -> reading.batch() != null)
            .map(reading -> reading.date() + "\n" + reading.batch())
            .distinct()
            .count();
    boolean goWithDates = cells == batches.size();
    return goWithDates
        ? Remark.note(
            "Each batch of %s is another date: dates and batches cannot be told apart, treatments"
                + " can.",
            name(readings))
        : Remark.warning(
            "%s was measured in %d batches; they are taken as blocks.",
            name(readings), batches.size());
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
