package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Treatments beside whatever else may go with them: side, slope, mower, rater, laboratory, date.
 * Where every level of the other goes with one treatment alone, the two cannot be told apart.
 */
public final class Confounding {
  /**
   * A table of counts.
   *
   * @param what the other thing, for instance "side"
   * @param counts plots or readings by treatment and then by level of the other
   */
  public record CrossTable(String what, Map<String, Map<String, Integer>> counts) {
    /** All levels of the other thing. */
    public Set<String> levels() {
      return counts.values().stream()
          .flatMap(row -> row.keySet().stream())
          .collect(Collectors.toCollection(TreeSet::new));
    }

    private int count(String arm, String level) {
      return counts.getOrDefault(arm, Map.of()).getOrDefault(level, 0);
    }

    private int total(String level) {
      return counts.keySet().stream().mapToInt(arm -> count(arm, level)).sum();
    }

    private Set<String> armsAt(String level) {
      return counts.keySet().stream()
          .filter(arm -> count(arm, level) > 0)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** What is wrong with it, or nothing. */
    List<Remark> remarks() {
      Set<String> levels = levels();
      if (levels.size() < 2 || counts.size() < 2) {
        return List.of();
      }
      if (levels.stream().allMatch(level -> armsAt(level).size() == 1)) {
        String pairs =
            levels.stream()
                .map(level -> "%s with %s".formatted(String.join("", armsAt(level)), level))
                .collect(Collectors.joining(", "));
        return List.of(
            Remark.refused(
                "Treatment and %s always go together (%s): whatever is found may be either of"
                    + " them.",
                what, pairs));
      }
      List<Remark> remarks = new ArrayList<>();
      for (String level : levels) {
        if (total(level) < counts.size()) {
          continue; // too few for every treatment to be there
        }
        for (String arm : counts.keySet()) {
          if (count(arm, level) == 0) {
            remarks.add(
                Remark.warning(
                    "%s never goes with %s %s; compare only where both are there.",
                    arm, what, level));
          }
        }
      }
      return remarks;
    }
  }

  private final List<ObservedPlot> plots;
  private final Map<String, ObservedPlot> byCode;

  /**
   * @param plots of the layout
   */
  public Confounding(List<ObservedPlot> plots) {
    this.plots = List.copyOf(plots);
    this.byCode =
        plots.stream()
            .collect(
                Collectors.toMap(
                    ObservedPlot::code, Function.identity(), (one, other) -> one, TreeMap::new));
  }

  /** The traits of the plots beside the treatments. */
  public List<CrossTable> ofPlots() {
    Set<String> names = new TreeSet<>();
    plots.forEach(plot -> names.addAll(plot.traits().keySet()));
    List<CrossTable> tables = new ArrayList<>();
    for (String name : names) {
      Map<String, Map<String, Integer>> counts = new TreeMap<>();
      for (ObservedPlot plot : plots) {
        count(counts, plot.arm(), plot.traits().get(name));
      }
      tables.add(new CrossTable(name, counts));
    }
    return tables;
  }

  /** Rater, laboratory, method and date of an outcome's readings beside the treatments. */
  public List<CrossTable> ofReadings(List<Reading> readings) {
    Map<String, Function<Reading, @Nullable String>> others = new LinkedHashMap<>();
    others.put("rater", Reading::rater);
    others.put("laboratory", Reading::laboratory);
    others.put("method", MethodChange.methodOf(readings));
    others.put("batch", Reading::batch);
    others.put("date", reading -> reading.date().toString());
    List<CrossTable> tables = new ArrayList<>();
    others.forEach(
        (what, level) -> {
          Map<String, Map<String, Integer>> counts = new TreeMap<>();
          for (Reading reading : readings) {
            ObservedPlot plot = byCode.get(reading.plot());
            if (plot != null) {
              count(counts, plot.arm(), level.apply(reading));
            }
          }
          tables.add(new CrossTable(what, counts));
        });
    return tables;
  }

  /** Everything that cannot be told from the treatments, or only partly. */
  public List<Remark> remarks(List<Reading> readings) {
    List<Remark> remarks = new ArrayList<>();
    ofPlots().forEach(table -> remarks.addAll(table.remarks()));
    ofReadings(readings).forEach(table -> remarks.addAll(table.remarks()));
    return remarks;
  }

  private static void count(
      Map<String, Map<String, Integer>> counts, String arm, @Nullable String level) {
    if (level != null) {
      counts.computeIfAbsent(arm, key -> new TreeMap<>()).merge(level, 1, Integer::sum);
    }
  }
}
