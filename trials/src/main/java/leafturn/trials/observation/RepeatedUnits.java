package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;

/**
 * Units of a treatment that were read on several dates, or by several cores, without a random term
 * that holds those rows together: the model then takes each row for a unit of its own.
 *
 * <p>What a column is can only be guessed: it repeats units where it holds dates or is called after
 * dates, cores or raters, and it tells units apart where the model makes it random or it is called
 * after yards, plots or blocks. Without both nothing is said.
 *
 * @source hurlbert1984
 */
public final class RepeatedUnits {
  private static final Set<String> REPEATS =
      Set.of(
          "date",
          "dates",
          "day",
          "days",
          "week",
          "month",
          "time",
          "visit",
          "core",
          "sample",
          "subsample",
          "rater",
          "duplicate",
          "reading");
  private static final Set<String> UNITS =
      Set.of("yard", "lawn", "plot", "block", "pair", "unit", "strip", "bag");

  private final TrialModel model;
  private final List<String> columns;
  private final List<List<String>> rows;

  private RepeatedUnits(TrialTable table, TrialModel model) {
    this.model = model;
    this.columns = table.columns();
    int response = columns.indexOf(model.response());
    this.rows =
        table.rows().stream().filter(row -> response >= 0 && !row.get(response).isBlank()).toList();
  }

  /** A warning for each factor that is judged by rows instead of units. */
  public static List<Remark> remarks(TrialTable table, TrialModel model) {
    return new RepeatedUnits(table, model).remarks();
  }

  private List<Remark> remarks() {
    Set<String> repeats = new LinkedHashSet<>(columns.stream().filter(this::isRepeat).toList());
    Set<String> names = units();
    names.removeAll(repeats);
    List<String> factors =
        model.fixed().stream()
            .map(Term::variables)
            .filter(variables -> variables.size() == 1)
            .map(variables -> variables.get(0))
            .filter(name -> model.factors().contains(name) && !repeats.contains(name))
            .filter(name -> !names.contains(name) && columns.contains(name))
            .toList();
    if (names.isEmpty() || factors.isEmpty() || rows.isEmpty()) {
      return List.of();
    }
    Set<String> all = new LinkedHashSet<>(names);
    all.addAll(factors);
    List<String> unit = least(all);
    Optional<String> by = told(unit, repeats);
    return by.isEmpty()
        ? List.of()
        : factors.stream()
            .filter(name -> !isHeld(name))
            .map(name -> remark(name, unit, by.get()))
            .toList();
  }

  /** The columns without those that the others determine. */
  private List<String> least(Set<String> names) {
    List<String> least = new ArrayList<>(names);
    for (int i = least.size() - 1; i >= 0 && least.size() > 1; i--) {
      List<String> without = new ArrayList<>(least);
      without.remove(i);
      if (units(without) == units(least)) {
        least = without;
      }
    }
    return List.copyOf(least);
  }

  private long units(List<String> names) {
    return rows.stream().map(row -> cells(row, names)).distinct().count();
  }

  /** Columns that tell units apart. */
  private Set<String> units() {
    Set<String> names = new LinkedHashSet<>();
    model.random().forEach(term -> names.addAll(term.within()));
    OverTime overTime = model.overTime();
    if (overTime != null) {
      names.addAll(overTime.unit());
    }
    Set<String> fixed = new HashSet<>();
    model.fixed().forEach(term -> fixed.addAll(term.variables()));
    names.removeAll(fixed);
    columns.stream()
        .filter(name -> words(name).stream().anyMatch(UNITS::contains))
        .forEach(names::add);
    names.removeIf(name -> !columns.contains(name) || name.equals(model.response()));
    return names;
  }

  private static List<String> words(String heading) {
    return List.of(heading.toLowerCase(Locale.ROOT).split("[^a-z]+", -1));
  }

  private boolean isRepeat(String name) {
    if (name.equals(model.response())) {
      return false;
    }
    OverTime overTime = model.overTime();
    boolean isTime = overTime != null && overTime.time().equals(name);
    return isTime || words(name).stream().anyMatch(REPEATS::contains) || holdsDates(name);
  }

  private boolean holdsDates(String name) {
    int at = columns.indexOf(name);
    return !rows.isEmpty() && rows.stream().allMatch(row -> Times.isDate(row.get(at).strip()));
  }

  /** The column by which at least half of the units have several rows. */
  private Optional<String> told(List<String> unit, Set<String> repeats) {
    for (String column : repeats) {
      int at = columns.indexOf(column);
      Map<List<String>, Set<String>> seen = new HashMap<>();
      for (List<String> row : rows) {
        seen.computeIfAbsent(cells(row, unit), any -> new HashSet<>()).add(row.get(at).strip());
      }
      long several = seen.values().stream().filter(values -> values.size() > 1).count();
      if (2 * several >= seen.size()) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }

  private List<String> cells(List<String> row, List<String> names) {
    return names.stream().map(name -> row.get(columns.indexOf(name)).strip()).toList();
  }

  /**
   * Whether groups of several rows in which a factor does not change have an error of their own.
   */
  private boolean isHeld(String factor) {
    OverTime overTime = model.overTime();
    return (overTime != null && holds(overTime.unit(), factor))
        || model.random().stream()
            .anyMatch(term -> term.slopes().contains(factor) || holds(term.within(), factor));
  }

  private boolean holds(List<String> within, String factor) {
    if (!columns.containsAll(within)) {
      return true;
    }
    if (within.stream().anyMatch(this::isRepeat)) {
      return false;
    }
    Map<List<String>, String> level = new LinkedHashMap<>();
    int at = columns.indexOf(factor);
    boolean constant =
        rows.stream()
            .allMatch(
                row -> {
                  String own = row.get(at).strip();
                  String before = level.putIfAbsent(cells(row, within), own);
                  return before == null || before.equals(own);
                });
    return constant && level.size() < rows.size();
  }

  private Remark remark(String factor, List<String> unit, String by) {
    return Remark.warning(
        "%s was given to %d units (%s) that were read several times (%s), but no random term holds"
            + " the rows of one unit together: each of the %d rows counts as a unit of its own, and p of %s may"
            + " be far too small or too large; add the random term within %s.",
        factor,
        units(unit),
        String.join(", ", unit),
        by,
        rows.size(),
        factor,
        String.join(", ", unit));
  }
}
