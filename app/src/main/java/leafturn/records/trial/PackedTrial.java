package leafturn.records.trial;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.exchange.ReadingImport;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/**
 * A trial as a data package carries it from book to book: everything but the lawns of the book.
 *
 * @param trial the trial, without lawns of a book
 * @param events what befell it
 * @param readings as they were given
 */
public record PackedTrial(TrialSheet trial, List<TrialEventSheet> events, List<Reading> readings) {
  /** Id of the trial in the documents of its events while they are in no book. */
  private static final String NOWHERE = "00000000-0000-0000-0000-000000000000";

  private static final ObjectMapper JSON = new ObjectMapper();

  public PackedTrial {
    trial = trial.with(trial.plan(), List.of());
    events = events.stream().map(event -> event.of(NOWHERE)).toList();
    readings = List.copyOf(readings);
  }

  /**
   * A trial of files: its plan and a table of its readings, CSV or XLSX.
   *
   * @param record what {@link #record} wrote, or null where the trial was never frozen
   * @throws InputException with every fault of the files
   */
  public static PackedTrial read(Path planFile, Path readingsFile, @Nullable Path record) {
    List<String> faults = new ArrayList<>();
    TrialPlan plan = readOr(faults, () -> TrialPlanFile.read(planFile));
    Table table =
        readOr(
            faults,
            () ->
                TableFile.read(
                    readingsFile.toString(),
                    SourceText.bytes(readingsFile, TableFile.LIMIT_BYTES),
                    null));
    SourceText told =
        record == null
            ? new SourceText("record", "{}")
            : readOr(faults, () -> SourceText.read(record, TrialPlanFile.LIMIT_BYTES));
    if (plan == null || table == null || told == null) {
      throw new InputException(faults);
    }
    TrialGround ground = TrialGrounds.of(planFile.toString(), plan);
    return of(document(planFile, plan), told, ReadingImport.read(table, ground));
  }

  private static <T> @Nullable T readOr(List<String> faults, Supplier<T> reading) {
    try {
      return reading.get();
    } catch (InputException wrong) {
      faults.addAll(wrong.faults());
      return null;
    }
  }

  /** The plan as it was written, or in its canonical form where outlines lie in other files. */
  private static SourceText document(Path file, TrialPlan plan) {
    SourceText own = SourceText.read(file, TrialPlanFile.LIMIT_BYTES);
    boolean whole = true;
    for (JsonNode lawn : object(own).path("lawns")) {
      whole = whole && !lawn.has("outlineFile");
    }
    return whole ? own : new SourceText(own.name(), TrialPlanText.canonical(plan));
  }

  /**
   * When the trial was frozen and ended, what befell it, and what was changed and taken back, as a
   * JSON document.
   */
  public ObjectNode record() {
    ObjectNode record = document(Kind.TRIAL, trial);
    record.remove(List.of("plan", "lawns"));
    ArrayNode list = record.putArray("events");
    for (TrialEventSheet event : events) {
      ObjectNode document = document(Kind.TRIAL_EVENT, event);
      document.remove("trial");
      list.add(document);
    }
    return record;
  }

  /** What it holds, in a line. */
  public String summary() {
    TrialSheet.Frozen frozen = trial.frozen();
    return "%s: %,d %s, %s; %s."
        .formatted(
            trial.name(),
            readings.size(),
            readings.size() == 1 ? "reading" : "readings",
            events.isEmpty()
                ? "no events"
                : events.size() == 1 ? "1 event" : "%,d events".formatted(events.size()),
            frozen == null
                ? "its plan was never frozen"
                : "its plan was frozen by %s at %s".formatted(frozen.by(), frozen.at()));
  }

  private static <C extends Content> ObjectNode document(Kind<C> kind, C content) {
    try {
      return (ObjectNode) JSON.readTree(kind.write(content));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the document of a sheet is not JSON", e);
    }
  }

  /**
   * A trial of its parts.
   *
   * @param plan document of the plan
   * @param record what {@link #record} wrote
   * @throws InputException with every fault of the two
   */
  public static PackedTrial of(SourceText plan, SourceText record, List<Reading> readings) {
    ObjectNode told = object(record);
    JsonNode events = told.remove("events");
    told.set("plan", object(plan));
    List<String> faults = new ArrayList<>();
    SourceText sheet = new SourceText(record.name(), told.toString());
    TrialSheet trial = readOr(faults, () -> Kind.TRIAL.read(sheet));
    List<TrialEventSheet> read = new ArrayList<>();
    if (events != null && !events.isArray()) {
      faults.add(record.name() + ": events is not usable; give a list of what befell the trial.");
    } else if (events != null) {
      for (int i = 0; i < events.size(); i++) {
        String name = "%s, events[%d]".formatted(record.name(), i);
        JsonNode document = events.get(i);
        TrialEventSheet event = readOr(faults, () -> event(name, document));
        if (event != null) {
          read.add(event);
        }
      }
    }
    checkPast(record.name(), trial, faults);
    if (trial == null || !faults.isEmpty()) {
      throw new InputException(faults);
    }
    return new PackedTrial(trial, read, readings);
  }

  /** A past that does not lead from the frozen plan to this one is that of another trial. */
  private static void checkPast(String name, @Nullable TrialSheet trial, List<String> faults) {
    TrialPast past = trial == null ? null : trial.past();
    if (trial == null || past == null || past.plans().isEmpty()) {
      return;
    }
    List<TrialPast.PlanVersion> plans = past.plans();
    if (!plans.get(plans.size() - 1).plan().equals(trial.plan())) {
      faults.add(name + ": past: its last plan is not the plan of the package; take it anew.");
    }
    TrialSheet.Frozen frozen = trial.frozen();
    boolean isFrozen =
        Boolean.TRUE.equals(
            readOr(
                faults,
                () ->
                    frozen != null
                        && frozen
                            .hash()
                            .equals(TrialPlanText.sha256(FrozenPlan.read(plans.get(0))))));
    if (!isFrozen) {
      faults.add(name + ": past: its first plan is not the one that was frozen; take it anew.");
    }
  }

  /** A trial that is only planned, of the document of its plan. */
  static TrialSheet planned(SourceText plan) {
    return TrialSheet.planned(object(plan), List.of());
  }

  private static TrialEventSheet event(String name, JsonNode event) {
    if (!(event instanceof ObjectNode object)) {
      throw new InputException(name + ": it is not usable; give an object in braces.");
    }
    ObjectNode document = object.deepCopy().put("trial", NOWHERE);
    return Kind.TRIAL_EVENT.read(new SourceText(name, document.toString()));
  }

  private static ObjectNode object(SourceText source) {
    try {
      if (JSON.readTree(source.text()) instanceof ObjectNode object) {
        return object;
      }
    } catch (JsonProcessingException e) {
      throw new InputException(source.name() + ": it is not JSON; take the package anew.");
    }
    throw new InputException(source.name() + ": it is no JSON object; take the package anew.");
  }
}
