package leafturn.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.FixedLayout;
import leafturn.records.trial.KeptReadings;
import leafturn.records.trial.PlanLawns;
import leafturn.records.trial.TrialPlanFile;
import leafturn.records.trial.TrialShelf;
import leafturn.trials.observation.Reading;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.trial.PlanDocument;
import leafturn.web.trial.PlanFaults;
import leafturn.web.trial.TrialPlanForm;
import org.jspecify.annotations.Nullable;

/** Where a trial is planned, and its plan changed. */
final class TrialPlanRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int CONFLICT = 409;

  private final Desk desk;

  TrialPlanRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/new", Right.CHANGE, this::blank);
    routes.write("/trials/new", Right.CHANGE, Intake.FORM, this::begin);
    routes.read("/trials/{id}/plan", Right.CHANGE, this::plan);
    routes.write("/trials/{id}/plan", Right.CHANGE, Intake.FORM, this::save);
  }

  private void blank(Context context) {
    show(context, null, form(context).begun(Seeds.drawn()), "");
  }

  private void begin(Context context) {
    Form form = sent(context, MissingNode.getInstance());
    try {
      TrialSheet trial = desk.book().read(reading -> trial(reading, form, null));
      String id = UUID.randomUUID().toString();
      desk.book()
          .write(name(context), writing -> writing.add(Kind.TRIAL, id, Kind.TRIAL.checked(trial)));
      Answers.goTo(context, "/trials/" + id);
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, null, form.faulted(faults), "");
    }
  }

  private void plan(Context context) {
    Sheet<TrialSheet> trial = found(context);
    JsonNode plan = trial.content().plan();
    TrialPlanForm shape = form(context);
    String document = PlanDocument.text(plan, trial.content().lawns());
    show(context, trial, Form.of(shape.shape(plan), units(context), document), "");
  }

  private void save(Context context) {
    Sheet<TrialSheet> trial = found(context);
    Form form = sent(context, trial.content().plan());
    if (!Integer.toString(trial.version()).equals(context.formParam("version"))) {
      context.status(CONFLICT);
      show(context, trial, form, "Somebody else has saved this plan meanwhile; look at it first.");
      return;
    }
    try {
      TrialSheet changed = desk.book().read(reading -> trial(reading, form, trial.content()));
      checkReadings(trial, changed);
      TrialSheet noted = noted(trial.content(), changed, context.formParam("why"));
      desk.book()
          .write(
              name(context),
              writing ->
                  writing.revise(
                      Kind.TRIAL, trial.id(), trial.version(), Kind.TRIAL.checked(noted)));
      Answers.goTo(context, "/trials/" + trial.id());
    } catch (InputException faults) {
      context.status(UNUSABLE);
      show(context, trial, form.faulted(faults), "");
    }
  }

  /** The layout stays once it is frozen or read, and what readings stand for stays with them. */
  private void checkReadings(Sheet<TrialSheet> trial, TrialSheet changed) {
    List<Reading> readings =
        desk.book()
            .read(
                reading ->
                    reading.ofTrial(Kind.TRIAL_READINGS, trial.id()).stream()
                        .flatMap(sheet -> sheet.content().readings().stream())
                        .toList());
    FixedLayout.check(trial.content(), changed, !readings.isEmpty());
    if (!readings.isEmpty()) {
      KeptReadings.check(desk.grounds().of(trial.content()), desk.grounds().of(changed), readings);
    }
  }

  /** Why a frozen plan was changed is asked for. */
  private static TrialSheet noted(TrialSheet before, TrialSheet changed, @Nullable String why) {
    if (changed.frozen() == null || BookPlan.hash(before).equals(BookPlan.hash(changed))) {
      return changed;
    }
    if (why == null || why.isBlank()) {
      String sentence = "this plan is frozen; say why it is changed all the same.";
      throw InputException.of(List.of(new Fault("", sentence, sentence)));
    }
    return changed.noted(why.strip());
  }

  /** The trial that a form makes, with all faults of its plan at once. */
  private static TrialSheet trial(BookReading reading, Form form, @Nullable TrialSheet before) {
    List<Fault> faults = new ArrayList<>();
    List<String> ids = PlanDocument.lawns(form);
    JsonNode old = before == null ? MissingNode.getInstance() : before.plan();
    ObjectNode plan = PlanDocument.of(form, old);
    boolean sameLawns = before != null && before.lawns().equals(ids) && old.path("lawns").isArray();
    boolean kept =
        sameLawns
            && (Objects.requireNonNull(before).frozen() != null
                || !PlanLawns.withoutOutline(reading, ids).isEmpty());
    ArrayNode lawns = kept ? (ArrayNode) old.path("lawns") : PlanLawns.of(reading, ids);
    if (lawns.isEmpty()) {
      plan.remove("lawns");
    } else {
      plan.set("lawns", lawns);
    }
    List<String> bare = kept ? List.of() : PlanLawns.withoutOutline(reading, ids);
    if (!bare.isEmpty()) {
      fault(faults, "nobody has drawn the outline of %s yet.".formatted(String.join("; ", bare)));
    }
    try {
      TrialPlanFile.read(new SourceText("plan", plan.toString()));
    } catch (InputException more) {
      boolean told = !faults.isEmpty();
      PlanFaults.of(more).stream()
          .filter(fault -> !told || !fault.field().equals(TrialPlanForm.LAWNS))
          .forEach(faults::add);
    }
    if (!faults.isEmpty()) {
      throw InputException.of(faults);
    }
    return before == null ? TrialSheet.planned(plan, ids) : before.with(plan, ids);
  }

  private static void fault(List<Fault> faults, String sentence) {
    faults.add(new Fault(TrialPlanForm.LAWNS, sentence, sentence));
  }

  private Form sent(Context context, JsonNode plan) {
    return Form.sent(form(context).shape(plan), units(context), context.formParamMap()).closedUp();
  }

  private TrialPlanForm form(Context context) {
    return new TrialPlanForm(desk.book().read(TrialPlanRoom::lawns), units(context));
  }

  private static List<Choice> lawns(BookReading reading) {
    List<Choice> lawns = new ArrayList<>();
    for (Sheet<Property> property : reading.all(Kind.PROPERTY)) {
      reading
          .ofProperty(Kind.LAWN, property.id())
          .forEach(
              lawn ->
                  lawns.add(
                      new Choice(
                          lawn.id(),
                          PlanLawns.name(reading, lawn)
                              + (lawn.content().outline() == null ? " (no outline yet)" : ""))));
    }
    return lawns;
  }

  private Sheet<TrialSheet> found(Context context) {
    Visitor visitor = Guest.visitor(context);
    return desk.book()
        .read(
            reading ->
                new TrialShelf(reading, visitor)
                    .find(context.pathParam("id"))
                    .orElseThrow(Refusal::notFound));
  }

  private static Units units(Context context) {
    return Guest.visitor(context).person().units();
  }

  private static String name(Context context) {
    return Guest.visitor(context).person().name();
  }

  private void show(
      Context context, @Nullable Sheet<TrialSheet> trial, Form form, String conflict) {
    boolean frozen = trial != null && trial.content().frozen() != null;
    String typed = context.formParam("why");
    TrialPlanPage page =
        new TrialPlanPage(
            trial == null ? "A trial to plan" : "The plan of " + trial.content().name(),
            form,
            trial == null ? "/trials/new" : "/trials/" + trial.id() + "/plan",
            trial == null ? "" : Integer.toString(trial.version()),
            trial == null ? "/trials" : "/trials/" + trial.id(),
            frozen,
            typed == null ? "" : typed,
            conflict);
    desk.show(context, "trialplan.jte", page.headline(), Map.of("page", page));
  }
}
