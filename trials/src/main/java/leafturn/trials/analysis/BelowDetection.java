package leafturn.trials.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.Response;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.model.TrialModel;

/**
 * Values below a detection limit in a mixed model: up to 15 % of them stand at half their limit,
 * with a run at the limit and one near zero beside it; more would decide the result themselves.
 *
 * @source antweiler2008, as summarised in the method page; the 15 % are common practice, no source
 */
public final class BelowDetection {
  /** Share of values below detection that may stand at half their limit. */
  public static final double MOST_FOR_HALF = 0.15;

  static final double MOST_AT_ALL = 0.7;

  private final ModelFrame frame;
  private final boolean log;
  private final int count;

  private BelowDetection(ModelFrame frame, TrialModel model) {
    this.frame = frame;
    this.log = model.scale() == TrialModel.Scale.LOG;
    this.count = frame.response().countBelowDetection();
  }

  /**
   * @throws TrialFaultException where too many values are below detection
   */
  static BelowDetection of(ModelFrame frame, TrialModel model) {
    BelowDetection below = new BelowDetection(frame, model);
    double share = share(frame);
    String found =
        "%d of %d values of %s (%.0f %%) lie below their detection limit"
            .formatted(below.count, frame.rows(), frame.response().name(), 100 * share);
    if (share > MOST_AT_ALL) {
      throw new TrialFaultException(
          found
              + "; above 70 % only the proportion above the limit can be compared: leave out the random terms to have it counted.");
    }
    if (share > MOST_FOR_HALF) {
      throw new TrialFaultException(
          found
              + "; above 15 % a stand-in such as half the limit would decide the result, and the censored likelihood takes no random terms. Give blocks or yards as fixed terms (one value a plot), compare ranks, or have the samples measured by a method with a lower limit.");
    }
    return below;
  }

  /** How much of the response lies below detection, 0 to 1. */
  static double share(ModelFrame frame) {
    return (double) frame.response().countBelowDetection() / frame.rows();
  }

  /** The observations with half the limit for each value below it. */
  ModelFrame atHalf() {
    return at(0.5);
  }

  private ModelFrame at(double share) {
    if (count == 0) {
      return frame;
    }
    Response response = frame.response();
    double[] values = response.values().clone();
    for (int i = 0; i < values.length; i++) {
      if (response.belowDetection()[i]) {
        values[i] = log ? values[i] + Math.log(share) : values[i] * share;
      }
    }
    return new ModelFrame(
        new Response(response.name(), values, response.belowDetection()),
        frame.factors(),
        frame.covariates(),
        frame.times(),
        frame.lines(),
        frame.notes());
  }

  /** What the stand-in does to each test. */
  List<String> sensitivity(
      List<MarginalTests.Test> half, Function<ModelFrame, List<MarginalTests.Test>> run) {
    if (count == 0) {
      return List.of();
    }
    List<MarginalTests.Test> limit = run.apply(at(1));
    List<MarginalTests.Test> low = run.apply(at(log ? 0.1 : 0));
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "%d of %d values lie below their detection limit and stand at half of it."
            .formatted(count, frame.rows()));
    for (int i = 0; i < half.size(); i++) {
      sentences.add(
          "Stand-ins for values below detection: p of %s is %.3g at half the limit, %.3g at the limit, %.3g at %s."
              .formatted(
                  half.get(i).term(),
                  half.get(i).p(),
                  limit.get(i).p(),
                  low.get(i).p(),
                  log ? "a tenth of it" : "zero"));
    }
    return sentences;
  }
}
