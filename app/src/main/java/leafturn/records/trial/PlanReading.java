package leafturn.records.trial;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.records.sheet.Limits;

/** Reads the plan of a trial in the book, with all its faults at once. */
public final class PlanReading {
  private static final int MOST_ARMS = 8;

  private PlanReading() {}

  /**
   * Checks a plan.
   *
   * @throws InputException with every fault, each naming its field
   */
  public static void check(JsonNode plan) {
    Faults faults = new Faults("plan");
    JsonObject json = JsonObject.root(new SourceText("plan", plan.toString()), faults);
    json.requiredText("name", Limits.NAME, "what its people call it");
    json.requiredText("question", Limits.NOTE, "what the trial is to answer");
    json.requiredText("design", Limits.NAME, "a layout");
    List<JsonObject> arms = json.objects("arms");
    if (arms.size() < 2 || arms.size() > MOST_ARMS) {
      json.fault("arms", "there are %d; give 2 to %d.".formatted(arms.size(), MOST_ARMS));
    }
    arms.forEach(arm -> arm.requiredText("name", Limits.NAME, "a name"));
    long primary =
        json.objects("outcomes").stream()
            .filter(outcome -> Boolean.TRUE.equals(outcome.flag("primary")))
            .count();
    if (primary != 1) {
      json.fault(
          "outcomes", "%d of them are primary; mark exactly one.".formatted(primary));
    }
    if (json.list("dates").dates().isEmpty()) {
      json.requireItems("dates", "at least one day");
    }
    faults.throwIfAny();
  }
}
