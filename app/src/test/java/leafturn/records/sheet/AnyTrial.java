package leafturn.records.sheet;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import leafturn.trials.observation.Reading;

/** Random trials and what belongs to them. */
final class AnyTrial {
  private static final long FIRST_SECOND = 1_600_000_000L;

  private final AnyValue any;

  AnyTrial(AnyValue any) {
    this.any = any;
  }

  Content of(Kind<?> kind) {
    if (kind == Kind.TRIAL) {
      return trial();
    }
    if (kind == Kind.TRIAL_READINGS) {
      return readings();
    }
    if (kind == Kind.TRIAL_EVENT) {
      return event();
    }
    if (kind == Kind.LABORATORY) {
      return laboratory();
    }
    throw new IllegalArgumentException("no random content of kind " + kind);
  }

  private TrialSheet trial() {
    ObjectNode plan = JsonNodeFactory.instance.objectNode();
    plan.put("name", any.text()).put("question", any.note()).put("seed", any.whole(1, 1_000_000));
    plan.putArray("outcomes").addObject().put("name", any.text()).put("margin", any.number(0, 2));
    return new TrialSheet(
        plan,
        any.list(3, any::id),
        any.maybe(
            () ->
                new TrialSheet.Frozen(
                    Instant.ofEpochSecond(FIRST_SECOND + any.whole(0, 1_000_000)).toString(),
                    any.text(),
                    "0123456789abcdef".repeat(4),
                    any.maybe(() -> "fedcba9876543210".repeat(4)))),
        any.maybe(any::day),
        any.maybe(any::text),
        any.maybe(any::note),
        any.maybe(() -> past(plan)));
  }

  private TrialPast past(ObjectNode plan) {
    return new TrialPast(
        any.list(3, () -> new TrialPast.PlanVersion(plan, any.day(), any.maybe(any::note))),
        any.list(
            3,
            () ->
                new TrialPast.Withdrawn(
                    any.day(), any.list(1, 3, this::reading), any.maybe(any::text))),
        any.list(3, () -> new TrialPast.EarlierEvent(any.day(), any.day(), any.text())),
        any.list(
            3,
            () ->
                new TrialPast.Entered(any.day(), any.text(), any.day(), any.list(1, 3, any::text))),
        any.maybe(() -> any.whole(1, 40)));
  }

  private TrialReadingsSheet readings() {
    return new TrialReadingsSheet(
        any.id(),
        any.maybe(any::id),
        any.maybe(any::text),
        any.maybe(() -> "0123456789abcdef".repeat(4)),
        any.list(1, 6, this::reading),
        any.maybe(any::note),
        any.maybe(any::text));
  }

  private Reading reading() {
    return new Reading(
        any.text(),
        any.day(),
        any.text(),
        any.text(),
        any.maybe(any::text),
        any.maybe(any::text),
        any.maybe(any::text),
        any.maybe(() -> any.number(0, 100)),
        any.maybe(any::text),
        any.maybe(any::text),
        any.maybe(any::text),
        any.maybe(() -> any.whole(1, 20)),
        any.maybe(any::text));
  }

  private TrialEventSheet event() {
    return new TrialEventSheet(
        any.id(),
        any.day(),
        any.one(TrialEventSheet.Happening.class),
        any.list(4, any::id),
        any.maybe(() -> any.number(0.01, 1e6)),
        any.maybe(
            () ->
                new TrialEventSheet.Mown(
                    any.maybe(any::yes),
                    any.maybe(any::yes),
                    any.maybe(any::yes),
                    any.maybe(() -> any.number(3, 200)),
                    any.maybe(() -> any.number(3, 200)))),
        any.maybe(
            () ->
                new TrialEventSheet.Exclusion(
                    any.yes(), any.yes(), any.text(), any.day(), any.text())),
        any.maybe(any::note));
  }

  private LaboratorySheet laboratory() {
    return new LaboratorySheet(
        any.text(),
        any.list(1, 4, this::column),
        any.one(LaboratorySheet.DateOrder.class),
        any.one(LaboratorySheet.Duplicates.class),
        any.maybe(any::note));
  }

  private LaboratorySheet.Column column() {
    boolean value = any.yes();
    return new LaboratorySheet.Column(
        any.id(),
        value ? LaboratorySheet.Holds.VALUE : any.one(LaboratorySheet.Holds.class),
        any.text(),
        any.text(),
        any.maybe(any::text),
        any.maybe(() -> any.number(0, 100)));
  }
}
