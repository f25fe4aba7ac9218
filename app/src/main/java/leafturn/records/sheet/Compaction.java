package leafturn.records.sheet;

import leafturn.records.Choice;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * How hard the ground is, by one of three methods.
 *
 * @param method how it was found
 * @param resistanceKPa resistance to the cone of a penetrometer, kPa, 0 to 10,000; for that method
 * @param depthMm depth to which a screwdriver goes by hand, mm, 0 to 300; for that method
 * @param words what it feels like underfoot; for that method
 */
public record Compaction(
    Method method,
    @Nullable Double resistanceKPa,
    @Nullable Double depthMm,
    @Nullable String words) {

  /** How compaction is found. */
  public enum Method {
    PENETROMETER("resistanceKPa"),
    SCREWDRIVER("depthMm"),
    WORDS("words");

    private final String field;

    Method(String field) {
      this.field = field;
    }
  }

  static Compaction read(JsonObject section) {
    Method method = Choice.readRequired(section, "method", Method.class);
    Compaction compaction =
        new Compaction(
            method == null ? Method.WORDS : method,
            section.number("resistanceKPa", 0, 10_000, "kPa"),
            section.number("depthMm", 0, 300, "mm"),
            section.text("words", Limits.SENTENCE));
    if (method != null) {
      checkFields(section, method);
    }
    section.refuseOthers();
    return compaction;
  }

  private static void checkFields(JsonObject section, Method method) {
    for (Method other : Method.values()) {
      if (other != method && section.has(other.field)) {
        section.fault(
            other.field,
            "it belongs to the method %s, but this is %s; leave it out."
                .formatted(Choice.word(other), Choice.word(method)));
      }
    }
    if (!section.has(method.field)) {
      section.missing(method.field, "what the method " + Choice.word(method) + " found");
    }
  }
}
