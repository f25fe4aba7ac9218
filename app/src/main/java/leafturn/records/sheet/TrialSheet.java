package leafturn.records.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A trial: its plan, the lawns of the book that take part, and whether it is frozen.
 *
 * @param plan the document of the plan, as a trial file has it
 * @param lawns ids of the lawns of the book that take part
 * @param frozen when it was frozen and as what, or null while it is being planned
 * @param ended the day it was ended, or null
 * @param whyEnded why it was ended before the plan said so, or null
 * @param note anything to remember; of a changed plan, why it was changed; may be null
 * @param past what was changed and taken back in the book that it came from; null where it came
 *     from none, or nothing was
 */
public record TrialSheet(
    JsonNode plan,
    List<String> lawns,
    @Nullable Frozen frozen,
    @Nullable LocalDate ended,
    @Nullable String whyEnded,
    @Nullable String note,
    @Nullable TrialPast past)
    implements Content {
  private static final int HASH_CHARACTERS = 64;

  public TrialSheet {
    plan = CanonicalJson.of(plan);
    lawns = List.copyOf(lawns);
    past = TrialPast.UNKNOWN.equals(past) ? null : past;
  }

  /** A trial that is only planned. */
  public static TrialSheet planned(JsonNode plan, List<String> lawns) {
    return new TrialSheet(plan, lawns, null, null, null, null, null);
  }

  /** The same with another plan and other lawns. */
  public TrialSheet with(JsonNode other, List<String> otherLawns) {
    return new TrialSheet(other, otherLawns, frozen, ended, whyEnded, note, past);
  }

  /** The same, frozen. */
  public TrialSheet frozenAs(Frozen seal) {
    return new TrialSheet(plan, lawns, seal, ended, whyEnded, note, past);
  }

  /** The same, ended on a day. */
  public TrialSheet endedOn(LocalDate day, @Nullable String why) {
    return new TrialSheet(plan, lawns, frozen, day, why, note, past);
  }

  /** The same with another note. */
  public TrialSheet noted(@Nullable String other) {
    return new TrialSheet(plan, lawns, frozen, ended, whyEnded, other, past);
  }

  /** The same with another past. */
  public TrialSheet with(TrialPast other) {
    return new TrialSheet(plan, lawns, frozen, ended, whyEnded, note, other);
  }

  /**
   * The plan as it was fixed before the first observation.
   *
   * @param at when, to the microsecond, in universal time
   * @param by who
   * @param hash SHA-256 of the plan then, 64 hexadecimal figures
   * @param layout SHA-256 of the layout then, or null where none was kept
   */
  public record Frozen(String at, String by, String hash, @Nullable String layout) {
    private static Frozen read(JsonObject json) {
      String at = json.requiredText("at", Limits.NAME, "when it was frozen");
      if (!at.isEmpty() && !isInstant(at)) {
        json.fault("at", Faults.quoted(at) + " is no moment; write it as 2026-04-01T08:00:00Z.");
      }
      String hash = json.requiredText("hash", HASH_CHARACTERS, "the SHA-256 of the plan");
      if (!hash.isEmpty() && !hash.matches("[0-9a-f]{64}")) {
        json.fault("hash", Faults.quoted(hash) + " is no SHA-256; give 64 hexadecimal figures.");
      }
      String layout = json.text("layout", HASH_CHARACTERS);
      if (layout != null && !layout.matches("[0-9a-f]{64}")) {
        json.fault(
            "layout", Faults.quoted(layout) + " is no SHA-256; give 64 hexadecimal figures.");
      }
      Frozen frozen =
          new Frozen(at, json.requiredText("by", Limits.NAME, "who froze it"), hash, layout);
      json.refuseOthers();
      return frozen;
    }

    private static boolean isInstant(String text) {
      try {
        return Instant.parse(text) != null;
      } catch (DateTimeParseException e) {
        return false;
      }
    }

    /** When it was frozen. */
    public Instant moment() {
      return Instant.parse(at);
    }
  }

  static TrialSheet read(JsonObject json) {
    ObjectNode plan = CanonicalJson.read(json, "plan");
    if (!json.has("plan")) {
      json.missing("plan", "the plan of the trial");
    } else if (plan.isEmpty()) {
      json.fault("plan", "it is empty; give at least a name.");
    } else if (!plan.path("name").isTextual() || plan.path("name").asText().isBlank()) {
      json.fault("plan", "it has no name; give it one.");
    } else if (plan.path("name").asText().length() > Limits.NAME) {
      json.fault(
          "plan", "its name is too long; shorten it to %d characters.".formatted(Limits.NAME));
    }
    List<String> lawns = json.list("lawns").ids("a lawn");
    Frozen frozen = Part.read(json, "frozen", Frozen::read);
    LocalDate ended = json.date("ended");
    String why = json.text("whyEnded", Limits.SENTENCE);
    String note = json.text("note", Limits.NOTE);
    TrialPast past = Part.read(json, "past", TrialPast::read);
    json.end();
    return new TrialSheet(plan, lawns, frozen, ended, why, note, past);
  }

  /** What its people call it. */
  public String name() {
    return plan.path("name").asText();
  }
}
