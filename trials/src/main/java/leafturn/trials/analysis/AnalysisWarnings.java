package leafturn.trials.analysis;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import leafturn.trials.analysis.data.Response;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.diagnostics.DeletionResiduals;
import leafturn.trials.analysis.diagnostics.OtherUnit;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts.Contrast;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;

/** What a reader of an analysis should know, in sentences. */
final class AnalysisWarnings {
  private static final double FEW_DF = 5;

  /** A share of the variance that is rounding alone. */
  private static final double NOTHING = 1e-24;

  private AnalysisWarnings() {}

  static List<String> of(
      MixedFit fit,
      List<MarginalTests.Test> tests,
      List<Coefficient> coefficients,
      List<Contrast> contrasts) {
    List<String> warnings = new ArrayList<>(fit.warnings());
    if (isWithoutError(fit)) {
      warnings.add(
          "The model leaves nothing of %s unexplained, so there is no error to judge by: F, p and intervals mean nothing here; look whether values were copied or computed from each other."
              .formatted(fit.model().response()));
    }
    addOtherUnit(warnings, fit);
    addOrderOfWords(warnings, fit);
    fit.boundary().forEach(term -> warnings.add(boundary(term, fit.model().degreesOfFreedom())));
    coefficients.stream()
        .filter(coefficient -> !coefficient.isEstimable())
        .forEach(
            coefficient ->
                warnings.add(
                    "%s is not estimable: the data cannot tell it from the terms before it."
                        .formatted(coefficient.name())));
    tests.forEach(test -> addTest(warnings, test));
    long lost = contrasts.stream().filter(contrast -> !contrast.estimate().isEstimable()).count();
    if (lost > 0) {
      warnings.add(
          "%d of %d comparisons are not estimable, because a combination of levels was never observed."
              .formatted(lost, contrasts.size()));
    }
    contrasts.stream()
        .map(Contrast::withoutNewUnit)
        .filter(Objects::nonNull)
        .distinct()
        .forEach(warnings::add);
    warnings.addAll(DeletionResiduals.of(fit).sentences());
    return warnings;
  }

  private static boolean isWithoutError(MixedFit fit) {
    double[] values = fit.frame().response().values();
    double mean = Arrays.stream(values).average().orElse(0);
    double spread = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElse(0);
    return fit.residualVariance() < NOTHING * spread;
  }

  private static void addOtherUnit(List<String> warnings, MixedFit fit) {
    Response response = fit.frame().response();
    boolean log = fit.model().scale() == TrialModel.Scale.LOG;
    double[] measured = response.values().clone();
    for (int i = 0; i < measured.length; i++) {
      measured[i] = log ? Math.exp(measured[i]) : measured[i];
      measured[i] = response.belowDetection()[i] ? Double.NaN : measured[i];
    }
    String sentence = OtherUnit.sentence(response.name(), measured, fit.frame().lines());
    if (sentence != null) {
      warnings.add(sentence);
    }
  }

  /** Positions among times that are words follow their letters unless the model orders them. */
  private static void addOrderOfWords(List<String> warnings, MixedFit fit) {
    OverTime overTime = fit.model().overTime();
    if (overTime == null || fit.model().levels().containsKey(overTime.time())) {
      return;
    }
    List<String> labels = fit.frame().times().labels();
    boolean byPosition =
        overTime.correlation() == OverTime.Correlation.AR1
            || overTime.correlation() == OverTime.Correlation.HETEROGENEOUS_AR1;
    if (byPosition && labels.stream().anyMatch(label -> Times.number(label) == null)) {
      warnings.add(
          "The times of %s are words without an order of their own and were taken in the order of their letters (%s); if that is not the order in time, levels.%s must tell it, from the first to the last."
              .formatted(overTime.time(), String.join(", ", labels), overTime.time()));
    }
  }

  private static void addTest(List<String> warnings, MarginalTests.Test test) {
    if (!test.isEstimable()) {
      warnings.add(
          "%s is not estimable: it is confounded with other terms, or a combination of levels was never observed."
              .formatted(test.term()));
    } else if (!(test.denominatorDf() > 0)) {
      warnings.add(
          "%s has no replicates to be judged by (0 degrees of freedom), so there is no p value; only the difference between these units can be stated."
              .formatted(test.term()));
    } else if (Math.rint(100 * test.denominatorDf()) < 100 * FEW_DF) {
      warnings.add(
          "%s is judged on %s; with fewer than 5, only very large effects can be seen."
              .formatted(test.term(), degrees(test.denominatorDf())));
    }
  }

  private static String degrees(double df) {
    String number =
        new BigDecimal(df).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    return number + (number.equals("1") ? " degree of freedom" : " degrees of freedom");
  }

  private static String boundary(String term, DegreesOfFreedom df) {
    if (!MixedFit.isHeld(term)) {
      return "The likelihood is best at the boundary: %s; standard errors and tests that rest on it are rough, and a structure with fewer parameters is safer."
          .formatted(term);
    }
    String consequence =
        df == DegreesOfFreedom.SATTERTHWAITE
            ? "Satterthwaite's degrees of freedom leave that stratum out and may be far too many; kenward-roger or design keep it."
            : "its stratum is kept in the degrees of freedom.";
    return "Held at the boundary: %s; %s".formatted(term, consequence);
  }
}
