package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import leafturn.trials.analysis.data.Response;
import leafturn.trials.analysis.data.Spelling;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.Randomisation;

/**
 * A trial of units that each hold every arm once, from a table of its results: rows of one plot and
 * date are subsamples and averaged.
 */
public final class TabledTrial {
  private static final String ONCE = "season";
  private static final int MOST_FAULTS = 10;

  private final TrialTable table;
  private final AskedTrial asked;
  private final Map<String, Plot> plots = new LinkedHashMap<>();
  private final List<PlotReading> readings = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();

  private TabledTrial(TrialTable table, AskedTrial asked) {
    this.table = table;
    this.asked = asked;
  }

  /**
   * What the trial of a table has found.
   *
   * @throws TrialFaultException with a sentence for each thing the table lacks
   */
  public static Findings findings(TrialTable table, AskedTrial asked) {
    TabledTrial trial = new TabledTrial(table, asked);
    trial.checkColumns();
    trial.read();
    List<String> units = trial.plots.values().stream().map(Plot::unit).distinct().toList();
    return Findings.of(
        trial.facts(units),
        List.copyOf(trial.plots.values()),
        List.of(asked.outcome()),
        Map.of(asked.outcome().name(), trial.readings));
  }

  private void checkColumns() {
    AskedTrial.Columns columns = asked.columns();
    Map<String, String> named = new LinkedHashMap<>();
    named.put("the outcome", asked.outcome().name());
    named.put("yards or blocks", columns.unit());
    named.put("arms", columns.factor());
    named.put("dates", Objects.requireNonNullElse(columns.time(), columns.unit()));
    named.put("plots", Objects.requireNonNullElse(columns.plot(), columns.unit()));
    named.forEach(
        (what, column) -> {
          if (!table.has(column)) {
            faults.add(
                "The column of %s is to be '%s', which the data do not have; they have %s."
                    .formatted(what, column, String.join(", ", table.columns())));
          }
        });
    throwIfAny();
    named.entrySet().stream()
        .filter(each -> !each.getKey().equals("the outcome"))
        .map(Map.Entry::getValue)
        .distinct()
        .forEach(column -> faults.addAll(Spelling.alike(table, column)));
    throwIfAny();
  }

  private void read() {
    AskedTrial.Columns columns = asked.columns();
    String[] units = table.cells(columns.unit());
    String[] arms = table.cells(columns.factor());
    String[] codes = table.cells(Objects.requireNonNullElse(columns.plot(), columns.unit()));
    String[] times =
        columns.time() == null ? new String[units.length] : table.cells(columns.time());
    Response values =
        Response.of(asked.outcome().name(), table.cells(asked.outcome().name()), table.lines());
    List<String> order = Arrays.stream(times).filter(Objects::nonNull).distinct().toList();
    for (int row = 0; row < units.length; row++) {
      boolean named = !units[row].isEmpty() && !arms[row].isEmpty() && !codes[row].isEmpty();
      if (!named || "".equals(times[row]) || Double.isNaN(values.values()[row])) {
        continue;
      }
      String code = columns.plot() == null ? units[row] + ", " + arms[row] : codes[row];
      add(Plot.of(code, units[row], arms[row]), table.lines().get(row));
      String date = times[row] == null ? ONCE : times[row];
      Double day = times[row] == null ? Double.valueOf(0) : Times.number(date);
      readings.add(
          new PlotReading(
              code,
              date,
              day == null ? order.indexOf(date) : day,
              values.values()[row],
              values.belowDetection()[row]));
    }
    throwIfAny();
  }

  private void add(Plot plot, int line) {
    LaidTrial laid = asked.laid();
    if (faults.size() >= MOST_FAULTS) {
      return;
    }
    if (laid != null) {
      addLaid(laid, plot, line);
      return;
    }
    Plot other = plots.putIfAbsent(plot.code(), plot);
    if (other != null && !other.equals(plot)) {
      faults.add(
          "Line %d: plot %s is in %s with '%s', but an earlier line has it in %s with '%s'."
              .formatted(line, plot.code(), plot.unit(), plot.arm(), other.unit(), other.arm()));
    }
  }

  private void addLaid(LaidTrial laid, Plot plot, int line) {
    laid.plots().forEach(each -> plots.putIfAbsent(each.code(), each));
    Plot planned = plots.get(plot.code());
    if (planned == null) {
      faults.add(
          "Line %d: the plan has no plot '%s'; it has %s and others."
              .formatted(line, plot.code(), laid.plots().get(0).code()));
    } else if (!planned.arm().equals(plot.arm())) {
      faults.add(
          "Line %d: plot %s has '%s' by the plan, but the table says '%s'."
              .formatted(line, plot.code(), planned.arm(), plot.arm()));
    }
  }

  private void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  private TrialFacts facts(List<String> units) {
    AskedTrial.Scope scope = asked.scope();
    int started = Objects.requireNonNullElse(scope.started(), units.size());
    if (started < units.size()) {
      throw new TrialFaultException(
          "The trial is to have started with %d units, but the data hold %d."
              .formatted(started, units.size()));
    }
    LaidTrial laid = asked.laid();
    return new TrialFacts(
        asked.name(),
        asked.question(),
        laid == null ? Design.UNITS : laid.design(),
        asked.columns().factor(),
        laid == null ? asked.columns().unit() : laid.unitWord(),
        contrasts(),
        Objects.requireNonNullElse(scope.yards(), Math.max(1, units.size())),
        Math.max(1, started),
        true,
        asked.columns().time() == null ? Double.NaN : scope.seasonFrom(),
        laid == null ? Randomisation.free(asked.seed()) : laid.randomisation(),
        asked.record());
  }

  private List<Contrast> contrasts() {
    Set<String> arms =
        new LinkedHashSet<>(plots.values().stream().map(Plot::arm).sorted().toList());
    if (arms.size() < 2) {
      throw new TrialFaultException(
          "%s has %d level among the usable rows%s; a comparison needs two."
              .formatted(
                  asked.columns().factor(),
                  arms.size(),
                  arms.isEmpty() ? "" : ", '" + arms.iterator().next() + "'"));
    }
    for (Contrast contrast : asked.contrasts()) {
      for (String arm : List.of(contrast.first(), contrast.second())) {
        if (!arms.contains(arm)) {
          throw new TrialFaultException(
              "'%s' is to be compared, but %s has no such level; it has %s."
                  .formatted(arm, asked.columns().factor(), String.join(", ", arms)));
        }
      }
    }
    if (!asked.contrasts().isEmpty()) {
      return asked.contrasts();
    }
    String control = Objects.requireNonNullElse(asked.control(), arms.iterator().next());
    return arms.stream()
        .filter(arm -> !arm.equals(control))
        .map(arm -> new Contrast(arm, control))
        .toList();
  }
}
