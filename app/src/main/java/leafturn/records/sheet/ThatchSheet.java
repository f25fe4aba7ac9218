package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A measurement of a lawn's thatch.
 *
 * @param lawn id of the lawn
 * @param day the day the plugs were taken
 * @param plugsMm thatch of one to twenty plugs, mm, 0 to 150
 * @param method whether the thatch was pressed while it was measured; the two differ, so only
 *     measurements of one method compare
 * @param note anything to remember; may be null
 */
public record ThatchSheet(
    String lawn, LocalDate day, List<Double> plugsMm, Method method, @Nullable String note)
    implements Content {
  public ThatchSheet {
    plugsMm = List.copyOf(plugsMm);
  }

  /** How the thickness of thatch is measured. */
  public enum Method {
    PRESSED,
    UNPRESSED
  }

  static ThatchSheet read(JsonObject json) {
    String lawn = json.requiredId("lawn", "the lawn");
    LocalDate day = json.requiredDate("day");
    List<Double> plugs = Readings.thatchMm(json, "plugsMm");
    json.requireItems("plugsMm", "the thatch of at least one plug, mm");
    Method method = Choice.required(json, "method", Method.class);
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new ThatchSheet(lawn, day, plugs, method, note);
  }

  /** Mean thatch, mm. */
  public OptionalDouble meanMm() {
    return Readings.mean(plugsMm);
  }

  /** Standard deviation of the plugs, mm. */
  public OptionalDouble spreadMm() {
    return Readings.spread(plugsMm);
  }
}
