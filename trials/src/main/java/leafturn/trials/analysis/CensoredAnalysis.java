package leafturn.trials.analysis;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.censored.CensoredFit;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.TrialModel;
import org.jspecify.annotations.Nullable;

/**
 * A trial of which so many values lie below detection that none may stand in for them: by censored
 * likelihood up to 70 %, above that the proportions above the limit alone. For models without
 * random terms and without correlation over time (blocks stand in the fixed part).
 *
 * @param observations used
 * @param fit null where only proportions can be compared
 * @param above how many values of each level lie above their limit
 * @param warnings what a reader should know, in sentences
 */
public record CensoredAnalysis(
    int observations,
    @Nullable CensoredFit fit,
    List<MarginalTests.Test> tests,
    List<Coefficient> coefficients,
    List<MeansAndContrasts.Mean> means,
    List<MeansAndContrasts.Contrast> contrasts,
    List<Above> above,
    List<String> warnings) {

  /** How many of the values of one level lie above their detection limit. */
  public record Above(String factor, String level, int above, int values) {}

  /** Whether a table asks for this analysis under a model. */
  public static boolean isFor(TrialTable table, TrialModel model) {
    if (model.scale() == TrialModel.Scale.ORDINAL
        || !model.random().isEmpty()
        || model.overTime() != null) {
      return false;
    }
    ModelFrame frame = ModelFrame.of(table, model);
    return BelowDetection.share(frame) > BelowDetection.MOST_FOR_HALF;
  }

  /**
   * Analyses a table.
   *
   * @throws TrialFaultException with a sentence for each fault of data or model
   */
  public static CensoredAnalysis of(TrialTable table, TrialModel model) {
    ModelFrame frame = ModelFrame.of(table, model);
    List<String> warnings = new ArrayList<>(table.repeatedRows());
    warnings.addAll(frame.notes());
    int below = frame.response().countBelowDetection();
    if (BelowDetection.share(frame) > BelowDetection.MOST_AT_ALL) {
      warnings.add(
          "%d of %d values of %s lie below their detection limit; above 70 %% no mean can be told, so only the numbers above the limit are given."
              .formatted(below, frame.rows(), model.response()));
      return new CensoredAnalysis(
          frame.rows(),
          null,
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          above(model, frame),
          warnings);
    }
    warnings.add(
        "%d of %d values of %s lie below their detection limit; nothing stands in for them: they count as below it in the likelihood (maximum likelihood, normal errors on this scale)."
            .formatted(below, frame.rows(), model.response()));
    return fitted(model, frame, warnings);
  }

  private static CensoredAnalysis fitted(
      TrialModel model, ModelFrame frame, List<String> warnings) {
    CensoredFit fit = CensoredFit.of(model, frame);
    List<MeansAndContrasts.Mean> means = List.of();
    List<MeansAndContrasts.Contrast> contrasts = List.of();
    Comparison compare = model.compare();
    if (compare != null) {
      TrialAnalysis.checkControl(frame, compare);
      MeansAndContrasts compared = new MeansAndContrasts(fit, fit, compare);
      means = compared.means();
      contrasts = compared.contrasts();
    }
    return new CensoredAnalysis(
        frame.rows(),
        fit,
        new MarginalTests(fit).all(fit),
        fit.coefficients(fit.covariance()),
        means,
        contrasts,
        above(model, frame),
        warnings);
  }

  /** By the compared factor, else by each factor of the fixed part. */
  private static List<Above> above(TrialModel model, ModelFrame frame) {
    Comparison compare = model.compare();
    List<String> factors = compare == null ? model.factors() : List.of(compare.factor());
    List<Above> all = new ArrayList<>();
    for (String factor : factors) {
      List<String> levels = frame.factor(factor).levels();
      int[] codes = frame.factor(factor).codes();
      for (int level = 0; level < levels.size(); level++) {
        int above = 0;
        int values = 0;
        for (int row = 0; row < codes.length; row++) {
          values += codes[row] == level ? 1 : 0;
          above += codes[row] == level && !frame.response().belowDetection()[row] ? 1 : 0;
        }
        all.add(new Above(factor, levels.get(level), above, values));
      }
    }
    return all;
  }
}
