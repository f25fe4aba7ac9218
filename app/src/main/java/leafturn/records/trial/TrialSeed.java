package leafturn.records.trial;

import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.trials.design.TrialPlan;
import org.jspecify.annotations.Nullable;

/** The seed of a trial's layout in a document. */
final class TrialSeed {
  private TrialSeed() {}

  /** The seed, or null where it is missing or wrong. */
  static @Nullable Long read(JsonObject json) {
    JsonValue value = json.take("seed");
    if (value == null) {
      return null;
    }
    if (value.content() instanceof Double number
        && number == Math.rint(number)
        && number >= 0
        && number <= TrialPlan.MOST_SEED) {
      return number.longValue();
    }
    json.fault(
        "seed",
        "%s is no seed; give a whole number of up to 15 figures, as 20260401."
            .formatted(value.shown()));
    return null;
  }
}
