package leafturn.trials.analysis.data;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;

/**
 * The observations that a model can use: rows with every value it needs.
 *
 * @param response on the scale of the model
 * @param factors by name, those of random terms and units included
 * @param covariates by name
 * @param times of the observations; empty codes where the model has no dates
 * @param lines of the file on which the rows stand
 * @param notes what was left out and why
 */
public record ModelFrame(
    Response response,
    Map<String, Factor> factors,
    Map<String, double[]> covariates,
    Times times,
    List<Integer> lines,
    List<String> notes) {

  /** Observations used. */
  public int rows() {
    return response.values().length;
  }

  /** A factor that the model names. */
  public Factor factor(String name) {
    return Objects.requireNonNull(factors.get(name), name);
  }

  /** A covariate that the model names. */
  public double[] covariate(String name) {
    return Objects.requireNonNull(covariates.get(name), name);
  }

  /**
   * Takes from a table what a model asks for.
   *
   * @throws TrialFaultException with every fault found
   */
  public static ModelFrame of(TrialTable table, TrialModel model) {
    ModelChecks.check(table, model);
    List<String> faults = new ArrayList<>();
    Map<String, Factor> factors = new LinkedHashMap<>();
    Map<String, double[]> covariates = new LinkedHashMap<>();
    for (String name : factorsOf(model)) {
      if (!model.levels().containsKey(name)) {
        faults.addAll(Spelling.alike(table, name));
      }
      collect(
          faults,
          () -> factors.put(name, Factor.of(name, table.cells(name), model.levels().get(name))));
    }
    for (String name : model.covariates()) {
      collect(
          faults,
          () -> covariates.put(name, Response.numbers(name, table.cells(name), table.lines())));
    }
    List<Response> response = new ArrayList<>();
    List<Times> times = new ArrayList<>();
    collect(faults, () -> response.add(responseOf(table, model)));
    collect(faults, () -> times.add(timesOf(table, model)));
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
    return complete(
        new ModelFrame(
            response.get(0), factors, covariates, times.get(0), table.lines(), List.of()));
  }

  private static Response responseOf(TrialTable table, TrialModel model) {
    String name = model.response();
    if (model.scale() == TrialModel.Scale.ORDINAL) {
      Factor classes = Factor.of(name, table.cells(name), model.levels().get(name));
      double[] values =
          Arrays.stream(classes.codes())
              .mapToDouble(code -> code < 0 ? Double.NaN : code)
              .toArray();
      return new Response(name, values, new boolean[values.length]);
    }
    Response read = Response.of(name, table.cells(name), table.lines());
    return model.scale() == TrialModel.Scale.LOG ? logOf(read, table.lines()) : read;
  }

  private static Response logOf(Response read, List<Integer> lines) {
    double[] logs = new double[read.values().length];
    for (int i = 0; i < logs.length; i++) {
      double value = read.values()[i];
      if (value <= 0) {
        throw new TrialFaultException(
            "Line %d: %s is %s, which has no logarithm; use the identity scale, or say that it is below the detection limit, as in <0.5."
                .formatted(
                    lines.get(i),
                    read.name(),
                    BigDecimal.valueOf(value).stripTrailingZeros().toPlainString()));
      }
      logs[i] = Math.log(value);
    }
    return new Response(read.name(), logs, read.belowDetection());
  }

  private static Times timesOf(TrialTable table, TrialModel model) {
    OverTime overTime = model.overTime();
    return overTime == null
        ? Times.none(table.rows().size())
        : Times.of(overTime, table, model.levels().get(overTime.time()));
  }

  private static Set<String> factorsOf(TrialModel model) {
    Set<String> names = new LinkedHashSet<>(model.factors());
    model.random().forEach(term -> names.addAll(term.within()));
    if (model.overTime() != null) {
      names.addAll(model.overTime().unit());
    }
    names.removeAll(model.covariates());
    if (model.scale() == TrialModel.Scale.ORDINAL) {
      names.remove(model.response());
    }
    return names;
  }

  private static void collect(List<String> faults, Runnable reading) {
    try {
      reading.run();
    } catch (TrialFaultException wrong) {
      faults.addAll(wrong.faults());
    }
  }

  private static ModelFrame complete(ModelFrame all) {
    int[] rows = IntStream.range(0, all.rows()).filter(all::isComplete).toArray();
    if (rows.length == 0) {
      throw new TrialFaultException(
          "No row has %s and everything the model needs; at least one column is missing throughout."
              .formatted(all.response.name()));
    }
    List<String> notes = new ArrayList<>();
    if (rows.length < all.rows()) {
      notes.add(
          "%d of %d rows were left out because a value is missing; nothing was filled in."
              .formatted(all.rows() - rows.length, all.rows()));
    }
    Map<String, Factor> factors = new LinkedHashMap<>();
    all.factors.forEach((name, factor) -> factors.put(name, factor.at(rows)));
    Map<String, double[]> covariates = new LinkedHashMap<>();
    all.covariates.forEach(
        (name, values) ->
            covariates.put(name, Arrays.stream(rows).mapToDouble(row -> values[row]).toArray()));
    List<Integer> lines = Arrays.stream(rows).mapToObj(all.lines::get).toList();
    return new ModelFrame(
        all.response.at(rows), factors, covariates, all.times.at(rows), lines, notes);
  }

  private boolean isComplete(int row) {
    return !Double.isNaN(response.values()[row])
        && factors.values().stream().noneMatch(factor -> factor.codes()[row] == Factor.MISSING)
        && covariates.values().stream().noneMatch(values -> Double.isNaN(values[row]))
        && times.isKnown(row);
  }
}
