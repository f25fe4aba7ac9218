package leafturn.trials.analysis;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.Approximation;
import leafturn.trials.analysis.inference.Containment;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.MixedModel;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.TrialModel;

/**
 * A trial analysed as its model asks: from data to likelihood to tests.
 *
 * @param fit the fitted mixed model
 * @param tests of the terms of the fixed part
 * @param coefficients in treatment coding
 * @param means of the compared factor; none where nothing is compared
 * @param contrasts between them
 * @param warnings what a reader should know, in sentences
 */
public record TrialAnalysis(
    MixedFit fit,
    List<MarginalTests.Test> tests,
    List<Coefficient> coefficients,
    List<MeansAndContrasts.Mean> means,
    List<MeansAndContrasts.Contrast> contrasts,
    List<String> warnings) {

  /**
   * Analyses a table.
   *
   * @throws TrialFaultException with a sentence for each fault of data or model
   */
  public static TrialAnalysis of(TrialTable table, TrialModel model) {
    ModelFrame frame = ModelFrame.of(table, model);
    BelowDetection below = BelowDetection.of(frame, model);
    TrialAnalysis analysis = of(model, below.atHalf());
    List<String> warnings = new ArrayList<>(table.repeatedRows());
    warnings.addAll(analysis.warnings);
    warnings.addAll(below.sensitivity(analysis.tests, at -> of(model, at).tests));
    return new TrialAnalysis(
        analysis.fit,
        analysis.tests,
        analysis.coefficients,
        analysis.means,
        analysis.contrasts,
        warnings);
  }

  private static TrialAnalysis of(TrialModel model, ModelFrame frame) {
    MixedFit fit = MixedModel.fit(model, frame);
    Approximation by = approximation(fit, model.degreesOfFreedom());
    List<MarginalTests.Test> tests = new MarginalTests(fit).all(by);
    List<Coefficient> coefficients = fit.coefficients(by.covariance());
    Comparison compare = model.compare();
    List<MeansAndContrasts.Mean> means = List.of();
    List<MeansAndContrasts.Contrast> contrasts = List.of();
    if (compare != null) {
      checkControl(frame, compare);
      MeansAndContrasts compared = new MeansAndContrasts(fit, by, compare);
      means = compared.means();
      contrasts = compared.contrasts();
    }
    List<String> warnings = AnalysisWarnings.of(fit, tests, coefficients, contrasts);
    return new TrialAnalysis(fit, tests, coefficients, means, contrasts, warnings);
  }

  private static Approximation approximation(MixedFit fit, DegreesOfFreedom kind) {
    return switch (kind) {
      case KENWARD_ROGER -> new KenwardRoger(fit);
      case SATTERTHWAITE -> new Satterthwaite(fit);
      case DESIGN -> new Containment(fit);
    };
  }

  static void checkControl(ModelFrame frame, Comparison compare) {
    List<String> levels = frame.factor(compare.factor()).levels();
    if (compare.control() != null && !levels.contains(compare.control())) {
      throw new TrialFaultException(
          "compare.control is '%s', which is no level of %s; its levels are %s."
              .formatted(compare.control(), compare.factor(), String.join(", ", levels)));
    }
  }
}
