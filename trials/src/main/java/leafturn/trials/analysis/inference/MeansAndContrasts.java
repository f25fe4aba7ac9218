package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.trials.analysis.fixed.FixedFit;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import leafturn.trials.analysis.multiplicity.Letters;
import leafturn.trials.analysis.numeric.Tails;
import org.jspecify.annotations.Nullable;

/**
 * Estimated means of a factor's levels, every combination of the other factors counting the same
 * and covariates at their means, and the differences between them.
 *
 * @source searle1980
 */
public final class MeansAndContrasts {
  private static final double NONE = Double.NaN;

  private final FixedFit fit;
  private final Approximation by;
  private final Comparison comparison;
  private final MeanFunctions functions;
  private final @Nullable NewUnit newUnit;
  private final List<Mean> means = new ArrayList<>();
  private final List<Contrast> contrasts = new ArrayList<>();

  /** A mean; {@code letters} is null where all are compared with a control. */
  public record Mean(
      Map<String, String> levels,
      Estimate estimate,
      double lower,
      double upper,
      @Nullable String letters) {}

  /**
   * The first mean less the second, {@code within} the levels of other factors; {@code newUnit} is
   * null where the trial does not tell how the difference varies between units, and {@code
   * withoutNewUnit} says why where the model would have told it.
   */
  public record Contrast(
      String first,
      String second,
      Map<String, String> within,
      Estimate estimate,
      double pAdjusted,
      double lower,
      double upper,
      NewUnit.@Nullable Interval newUnit,
      @Nullable String withoutNewUnit) {}

  /** Two levels and their difference; no function where it cannot be estimated. */
  private record Pair(int first, int second, double @Nullable [] function, Estimate estimate) {}

  /** Estimates what a comparison asks for. */
  public MeansAndContrasts(FixedFit fit, Approximation by, Comparison comparison) {
    this.fit = fit;
    this.by = by;
    this.comparison = comparison;
    this.functions = new MeanFunctions(fit);
    this.newUnit = fit instanceof MixedFit mixed ? new NewUnit(mixed, comparison) : null;
    for (Map<String, String> within : functions.combinations(comparison.within())) {
      addFamily(within);
    }
  }

  /** The means, in the order of the levels. */
  public List<Mean> means() {
    return means;
  }

  /** The differences. */
  public List<Contrast> contrasts() {
    return contrasts;
  }

  private void addFamily(Map<String, String> within) {
    List<String> levels = fit.frame().factor(comparison.factor()).levels();
    List<double @Nullable []> own = new ArrayList<>();
    List<Map<String, String>> cells = new ArrayList<>();
    for (String level : levels) {
      Map<String, String> cell = new LinkedHashMap<>(within);
      cell.put(comparison.factor(), level);
      cells.add(cell);
      own.add(functions.mean(cell));
    }
    List<Contrast> family = contrasts(levels, own, within);
    List<String> letters = comparison.control() == null ? letters(own, levels, family) : null;
    for (int i = 0; i < levels.size(); i++) {
      means.add(mean(cells.get(i), own.get(i), letters == null ? null : letters.get(i)));
    }
    contrasts.addAll(family);
  }

  private Mean mean(
      Map<String, String> cell, double @Nullable [] function, @Nullable String letters) {
    Estimate estimate = Estimate.of(fit, by, function);
    double reach =
        estimate.df() > 0
            ? estimate.se() * Tails.tQuantileTwoSided(1 - comparison.levelFraction(), estimate.df())
            : Double.NaN;
    return new Mean(cell, estimate, estimate.value() - reach, estimate.value() + reach, letters);
  }

  private List<Pair> pairs(List<String> levels, List<double @Nullable []> own) {
    List<Pair> pairs = new ArrayList<>();
    int control = comparison.control() == null ? -1 : levels.indexOf(comparison.control());
    for (int i = 0; i < levels.size(); i++) {
      if (control < 0) {
        for (int j = i + 1; j < levels.size(); j++) {
          pairs.add(pair(i, j, own));
        }
      } else if (i != control) {
        pairs.add(pair(i, control, own));
      }
    }
    return pairs;
  }

  private Pair pair(int first, int second, List<double @Nullable []> own) {
    double[] function = difference(own.get(first), own.get(second));
    return new Pair(first, second, function, Estimate.of(fit, by, function));
  }

  private List<Contrast> contrasts(
      List<String> levels, List<double @Nullable []> own, Map<String, String> within) {
    List<Pair> pairs = pairs(levels, own);
    Family family = family(pairs);
    List<Contrast> result = new ArrayList<>();
    int next = 0;
    for (Pair pair : pairs) {
      String first = levels.get(pair.first);
      String second = levels.get(pair.second);
      Estimate estimate = pair.estimate;
      if (pair.function == null) {
        result.add(new Contrast(first, second, within, estimate, NONE, NONE, NONE, null, null));
      } else {
        double reach = estimate.se() * family.reach(next, comparison.levelFraction());
        double low = estimate.value() - reach;
        double high = estimate.value() + reach;
        double p = family.adjusted(next++);
        NewUnit.Answer other =
            newUnit == null
                ? NewUnit.Answer.NOT_ASKED
                : newUnit.answer(estimate, pair.function, first, second);
        result.add(
            new Contrast(
                first, second, within, estimate, p, low, high, other.interval(), other.why()));
      }
    }
    return result;
  }

  /** The comparisons that can be estimated. */
  private Family family(List<Pair> pairs) {
    List<double[]> functions = new ArrayList<>();
    List<Estimate> estimates = new ArrayList<>();
    Set<Integer> compared = new LinkedHashSet<>();
    for (Pair pair : pairs) {
      if (pair.function != null) {
        functions.add(pair.function);
        estimates.add(pair.estimate);
        compared.add(pair.first);
        compared.add(pair.second);
      }
    }
    return new Family(
        comparison.multiplicity(), compared.size(), functions, estimates, by.covariance());
  }

  private static double @Nullable [] difference(
      double @Nullable [] first, double @Nullable [] second) {
    if (first == null || second == null) {
      return null;
    }
    double[] difference = new double[first.length];
    for (int i = 0; i < difference.length; i++) {
      difference[i] = first[i] - second[i];
    }
    return difference;
  }

  /** Letters from the smallest mean up; none where a mean or a comparison is missing. */
  private @Nullable List<String> letters(
      List<double @Nullable []> own, List<String> levels, List<Contrast> family) {
    if (family.stream().anyMatch(contrast -> Double.isNaN(contrast.pAdjusted))) {
      return null;
    }
    double[] values = own.stream().mapToDouble(f -> Estimate.of(fit, by, f).value()).toArray();
    List<Integer> rising = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      rising.add(i);
    }
    rising.sort((i, j) -> Double.compare(values[i], values[j]));
    boolean[][] differ = new boolean[values.length][values.length];
    for (Contrast contrast : family) {
      int first = rising.indexOf(levels.indexOf(contrast.first));
      int second = rising.indexOf(levels.indexOf(contrast.second));
      boolean significant = contrast.pAdjusted < 1 - comparison.levelFraction();
      differ[Math.min(first, second)][Math.max(first, second)] = significant;
    }
    List<String> byRank = Letters.of(differ);
    List<String> letters = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      letters.add(byRank.get(rising.indexOf(i)));
    }
    return letters;
  }

  /** How the number of comparisons was allowed for. */
  public Multiplicity multiplicity() {
    return comparison.multiplicity();
  }
}
