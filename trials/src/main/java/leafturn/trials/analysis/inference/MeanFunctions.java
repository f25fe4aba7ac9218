package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.analysis.data.Factor;
import leafturn.trials.analysis.fixed.Cell;
import leafturn.trials.analysis.fixed.FixedFit;
import org.jspecify.annotations.Nullable;

/** Marginal means as functions of the coefficients of the basis. */
final class MeanFunctions {
  private final FixedFit fit;
  private final List<String> factors;
  private final Map<String, Double> covariateMeans = new LinkedHashMap<>();

  MeanFunctions(FixedFit fit) {
    this.fit = fit;
    this.factors =
        fit.model().fixed().stream()
            .flatMap(term -> term.variables().stream())
            .filter(fit.model()::isFactor)
            .distinct()
            .toList();
    fit.frame()
        .covariates()
        .forEach(
            (name, values) ->
                covariateMeans.put(name, Arrays.stream(values).average().orElse(Double.NaN)));
  }

  /** All combinations of the levels of some factors, the last changing fastest. */
  List<Map<String, String>> combinations(List<String> names) {
    List<Map<String, String>> all = new ArrayList<>();
    all.add(Map.of());
    for (String name : names) {
      List<Map<String, String>> longer = new ArrayList<>();
      for (Map<String, String> shorter : all) {
        for (String level : fit.frame().factor(name).levels()) {
          Map<String, String> combination = new LinkedHashMap<>(shorter);
          combination.put(name, level);
          longer.add(combination);
        }
      }
      all = longer;
    }
    return all;
  }

  /**
   * The mean at some levels over all combinations of the other factors.
   *
   * @return null if it cannot be estimated
   */
  double @Nullable [] mean(Map<String, String> levels) {
    List<String> others = factors.stream().filter(name -> !levels.containsKey(name)).toList();
    List<Map<String, String>> cells = combinations(others);
    double[] sum = new double[fit.columns().size()];
    for (Map<String, String> cell : cells) {
      double[] row = fit.columns().row(cell(levels, cell));
      for (int j = 0; j < sum.length; j++) {
        sum[j] += row[j] / cells.size();
      }
    }
    return fit.basis().onBasis(sum);
  }

  private Cell cell(Map<String, String> fixed, Map<String, String> other) {
    return new Cell(
        name -> {
          Factor factor = fit.frame().factor(name);
          String level = fixed.containsKey(name) ? fixed.get(name) : other.get(name);
          return factor.levels().indexOf(level);
        },
        name -> Objects.requireNonNull(covariateMeans.get(name)));
  }
}
