package leafturn.records.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import leafturn.records.JsonObject;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * What of a trial was changed and taken back, as it goes with the trial from book to book. Who did
 * it stays in the book where it was done.
 *
 * @param plans since it was frozen, the frozen one first; none where it was not changed since, or
 *     where they are not known
 * @param withdrawn readings that were taken back, the earliest first
 * @param events what was noted of an event before it was changed
 * @param entered when readings came into the book; none where that is not known
 * @param draws how many layouts were drawn, each from another seed, up to when the plan was frozen;
 *     null where that is not known
 */
public record TrialPast(
    List<PlanVersion> plans,
    List<Withdrawn> withdrawn,
    List<EarlierEvent> events,
    List<Entered> entered,
    @Nullable Integer draws) {
  private static final int MOST_DRAWS = 1_000_000;

  /** Nothing was kept. */
  public static final TrialPast UNKNOWN = new TrialPast(List.of(), List.of(), List.of());

  public TrialPast {
    plans = List.copyOf(plans);
    withdrawn = List.copyOf(withdrawn);
    events = List.copyOf(events);
    entered = List.copyOf(entered);
  }

  /** A past of which is not known when readings were entered, nor how often a layout was drawn. */
  public TrialPast(List<PlanVersion> plans, List<Withdrawn> withdrawn, List<EarlierEvent> events) {
    this(plans, withdrawn, events, List.of(), null);
  }

  /**
   * A plan as it stood from a day on.
   *
   * @param plan the document of the plan
   * @param on the day it was saved, where the book is kept
   * @param why it was changed; null where nobody said
   */
  public record PlanVersion(JsonNode plan, LocalDate on, @Nullable String why) {
    public PlanVersion {
      plan = CanonicalJson.of(plan);
    }

    private static PlanVersion read(JsonObject json) {
      JsonNode plan = CanonicalJson.read(json, "plan");
      PlanVersion version =
          new PlanVersion(plan, json.requiredDate("on"), json.text("why", Limits.NOTE));
      json.refuseOthers();
      return version;
    }
  }

  /**
   * Readings that were taken back.
   *
   * @param on the day it was done, where the book is kept
   * @param readings as they were
   * @param why it was done; null where nobody said
   */
  public record Withdrawn(LocalDate on, List<Reading> readings, @Nullable String why) {
    public Withdrawn {
      readings = List.copyOf(readings);
    }

    private static Withdrawn read(JsonObject json) {
      LocalDate on = json.requiredDate("on");
      List<Reading> readings =
          json.objects("readings").stream().map(TrialReadingsSheet::reading).toList();
      String why = json.text("why", Limits.SENTENCE);
      json.refuseOthers();
      return new Withdrawn(on, readings, why);
    }
  }

  /**
   * What was noted of an event before it was changed.
   *
   * @param on the day it was changed, where the book is kept
   * @param day of the event, as it was noted then
   * @param words what was noted, and what was decided
   */
  public record EarlierEvent(LocalDate on, LocalDate day, String words) {
    private static EarlierEvent read(JsonObject json) {
      EarlierEvent event =
          new EarlierEvent(
              json.requiredDate("on"),
              json.requiredDate("day"),
              json.requiredText("words", Limits.NOTE, "what was noted"));
      json.refuseOthers();
      return event;
    }
  }

  /**
   * When readings of an outcome and day came into the book.
   *
   * @param on the day they were entered, where the book is kept
   * @param outcome name of the outcome
   * @param day on which they were read
   * @param plots codes of their plots
   */
  public record Entered(LocalDate on, String outcome, LocalDate day, List<String> plots) {
    public Entered {
      plots = List.copyOf(plots);
    }

    private static Entered read(JsonObject json) {
      Entered entered =
          new Entered(
              json.requiredDate("on"),
              json.requiredText("outcome", Limits.NAME, "the outcome"),
              json.requiredDate("day"),
              json.list("plots").texts(Limits.NAME, "the code of a plot"));
      json.refuseOthers();
      return entered;
    }
  }

  static TrialPast read(JsonObject json) {
    TrialPast past =
        new TrialPast(
            json.objects("plans").stream().map(PlanVersion::read).toList(),
            json.objects("withdrawn").stream().map(Withdrawn::read).toList(),
            json.objects("events").stream().map(EarlierEvent::read).toList(),
            json.objects("entered").stream().map(Entered::read).toList(),
            json.wholeNumber("draws", 1, MOST_DRAWS, ""));
    json.refuseOthers();
    return past;
  }
}
