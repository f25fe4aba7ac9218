package leafturn.records.exchange;

import java.util.Map;
import leafturn.trials.design.Outcome;

/** Bags of a trial by what they hold. */
final class SampleBags {
  private SampleBags() {}

  /** One that holds soil or leaf, by its code. */
  static Map.Entry<String, TrialGround.Bag> of(TrialGround ground, Outcome.Kind kind) {
    return ground.bags().entrySet().stream()
        .filter(bag -> bag.getValue().holds() == kind)
        .findFirst()
        .orElseThrow();
  }
}
