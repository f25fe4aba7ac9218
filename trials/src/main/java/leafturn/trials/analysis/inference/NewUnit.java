package leafturn.trials.analysis.inference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.trials.analysis.fixed.FixedColumns;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.RandomEffects;
import leafturn.trials.analysis.mixed.VarianceInformation;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.jspecify.annotations.Nullable;

/**
 * What a difference is in a unit (yard, year) that was not in the trial: the mean difference give
 * or take how much it varies between units, which the random terms of unit and treatment together
 * tell. Where each unit has one observation of each treatment, the residual tells it, errors of
 * measurement included. Degrees of freedom are those of the sum of both variances.
 *
 * @source higgins2009; satterthwaite1946
 */
public final class NewUnit {
  /** With fewer the variance is not known: the quantile of t then says nothing but that. */
  private static final double LEAST_DF = 1;

  private static final String AT_ZERO =
      "how much it varies between units is estimated at zero, which more units might show to be wrong";
  private static final String FEW_DF =
      "less than one degree of freedom stands behind how much it varies between units; more units would tell";

  private final MixedFit fit;
  private final Comparison comparison;
  private final Set<String> unit = new LinkedHashSet<>();
  private final List<Integer> telling = new ArrayList<>();
  private final boolean residualTells;

  /**
   * An interval for the difference in a new unit.
   *
   * @param unit the factors that make a unit
   */
  public record Interval(List<String> unit, double df, double lower, double upper) {}

  /**
   * The interval, or a sentence why there is none; neither where nothing in the model tells how a
   * difference varies between units.
   */
  record Answer(@Nullable Interval interval, @Nullable String why) {
    static final Answer NOT_ASKED = new Answer(null, null);
  }

  NewUnit(MixedFit fit, Comparison comparison) {
    this.fit = fit;
    this.comparison = comparison;
    Set<String> fixed = new HashSet<>();
    fit.model().fixed().forEach(term -> fixed.addAll(term.variables()));
    for (RandomTerm term : fit.model().random()) {
      if (term.within().stream().noneMatch(fixed::contains)) {
        unit.addAll(term.within());
      }
    }
    for (int set = 0; set < fit.randomEffects().size() && !unit.isEmpty(); set++) {
      if (tells(fit.randomEffects().get(set))) {
        telling.add(set);
      }
    }
    residualTells = telling.isEmpty() && !unit.isEmpty() && isOncePerUnit();
    if (!telling.isEmpty()) {
      unit.retainAll(told());
    }
  }

  /** The factors whose new levels the interval is for. */
  private Set<String> told() {
    Set<String> told = new HashSet<>();
    telling.forEach(set -> told.addAll(fit.randomEffects().get(set).within()));
    return told;
  }

  /** Whether effects differ between treatments within a unit and between units. */
  private boolean tells(RandomEffects effects) {
    List<String> others = new ArrayList<>(effects.within());
    boolean between = others.remove(comparison.factor());
    others.removeAll(comparison.within());
    boolean slopes = effects.effects().stream().anyMatch(this::isOfFactor);
    boolean mean = effects.effects().equals(List.of(FixedColumns.INTERCEPT));
    return unit.containsAll(others) && !others.isEmpty() && (between ? mean : slopes);
  }

  private boolean isOfFactor(String effect) {
    return effect.startsWith(comparison.factor() + "[");
  }

  /** Whether units have each treatment once; where most have a single one, plots are no units. */
  private boolean isOncePerUnit() {
    List<String> names = new ArrayList<>(unit);
    names.addAll(comparison.within());
    int[] units = RandomEffects.groups(names, fit.frame());
    names.add(comparison.factor());
    int[] groups = RandomEffects.groups(names, fit.frame());
    Map<Integer, Integer> treatments = new HashMap<>();
    Set<Integer> met = new HashSet<>();
    for (int row = 0; row < groups.length; row++) {
      if (!met.add(groups[row])) {
        return false;
      }
      treatments.merge(units[row], 1, Integer::sum);
    }
    long single = treatments.values().stream().filter(count -> count == 1).count();
    return fit.model().overTime() == null && 2 * single < treatments.size();
  }

  /**
   * The interval at the level of the comparison.
   *
   * @param function of the difference
   * @param first the level from which the second is taken
   */
  Answer answer(Estimate estimate, double[] function, String first, String second) {
    if (telling.isEmpty() && !residualTells) {
      return Answer.NOT_ASKED;
    }
    if (!fit.hasVarianceInformation()) {
      return without("how well the variances are known cannot be worked out for so many effects");
    }
    VarianceInformation known = fit.varianceInformation();
    int parameters = known.first().length;
    double[] slopes = new double[parameters];
    double varies = addVariance(slopes, first, second);
    double[] share = Matrices.product(known.covariance(), function);
    for (int i = 0; i < parameters; i++) {
      slopes[i] -= Matrices.form(share, known.first()[i], share);
    }
    double variance = Matrices.dot(function, share) + varies;
    double df = 2 * variance * variance / Matrices.form(slopes, known.uncertainty(), slopes);
    if (!(df >= LEAST_DF)) {
      return without(varies > 0 ? FEW_DF : AT_ZERO);
    }
    double spread = Math.sqrt(estimate.se() * estimate.se() + varies);
    double reach = spread * Tails.tQuantileTwoSided(1 - comparison.levelFraction(), df);
    return new Answer(
        new Interval(List.copyOf(unit), df, estimate.value() - reach, estimate.value() + reach),
        null);
  }

  private Answer without(String why) {
    String names = String.join(" and ", unit);
    return new Answer(
        null,
        "No range is given for the difference in a new %s: %s. It is at least as wide as the interval of the mean difference."
            .formatted(names, why));
  }

  /** How much the difference varies between units, and the slopes of that. */
  private double addVariance(double[] slopes, String first, String second) {
    int last = slopes.length - 1;
    double residual = fit.residualVariance();
    if (residualTells) {
      slopes[last] += 2;
      return 2 * residual;
    }
    double relative = 0;
    int parameter = 0;
    for (int set = 0; set < fit.randomEffects().size(); set++) {
      RandomEffects effects = fit.randomEffects().get(set);
      double[] weights = weights(effects, first, second);
      boolean means = effects.within().contains(comparison.factor());
      double times = !telling.contains(set) ? 0 : means ? 2 : 1;
      double[][] gamma = fit.relativeCovariance(set);
      for (int a = 0; a < effects.size(); a++) {
        for (int b = 0; b <= a; b++) {
          double weight = times * weights[a] * weights[b] * (a == b ? 1 : 2);
          relative += weight * gamma[a][b];
          slopes[parameter++] += weight * residual;
        }
      }
    }
    slopes[last] += relative;
    return relative * residual;
  }

  private double[] weights(RandomEffects effects, String first, String second) {
    double[] weights = new double[effects.size()];
    for (int a = 0; a < weights.length; a++) {
      String effect = effects.effects().get(a);
      boolean mean = effects.within().contains(comparison.factor());
      if (mean || effect.equals(comparison.factor() + "[" + first + "]")) {
        weights[a] = 1 / effects.scales()[a];
      } else if (effect.equals(comparison.factor() + "[" + second + "]")) {
        weights[a] = -1 / effects.scales()[a];
      }
    }
    return weights;
  }
}
