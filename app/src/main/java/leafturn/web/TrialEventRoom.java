package leafturn.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.Ids;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialShelf;
import leafturn.reports.DayWords;
import leafturn.trials.observation.ObservedPlot;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.trial.EventForm;
import org.jspecify.annotations.Nullable;

/** Where mowings and mishaps of a trial are noted, and decided on. */
final class TrialEventRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int CONFLICT = 409;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Desk desk;

  TrialEventRoom(Desk desk) {
    this.desk = desk;
  }

  /** A trial and, where one is changed, an event of it. */
  private record Asked(
      Sheet<TrialSheet> trial, TrialPast past, @Nullable Sheet<TrialEventSheet> event) {
    String address() {
      String events = "/trials/" + trial.id() + "/events";
      return event == null ? events : events + "/" + event.id();
    }
  }

  private FormShape shape(Asked asked) {
    try {
      return EventForm.shape(
          desk.grounds().of(asked.trial().content()).plots().stream()
              .map(ObservedPlot::code)
              .toList(),
          BookPlan.rules(asked.trial().content().with(asked.past())));
    } catch (InputException none) {
      return EventForm.shape(List.of(), List.of());
    }
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/{id}/events", Right.LOG, this::blank);
    routes.write("/trials/{id}/events", Right.LOG, Intake.FORM, this::save);
    routes.read("/trials/{id}/events/{event}", Right.CHANGE, this::one);
    routes.write("/trials/{id}/events/{event}", Right.CHANGE, Intake.FORM, this::save);
  }

  private void blank(Context context) {
    Asked asked = asked(context);
    Form form =
        Form.blank(shape(asked), Guest.visitor(context).person().units())
            .with("day", desk.today(asked.trial().content()).toString());
    show(context, asked, form);
  }

  private void one(Context context) {
    Asked asked = asked(context);
    Sheet<TrialEventSheet> event = asked.event();
    if (event == null) {
      throw Refusal.notFound();
    }
    show(
        context,
        asked,
        Form.of(
            shape(asked),
            Guest.visitor(context).person().units(),
            Kind.TRIAL_EVENT.write(event.content())));
  }

  private void save(Context context) {
    Asked asked = asked(context);
    Visitor visitor = Guest.visitor(context);
    Form form = sent(context, asked);
    String closed = TrialShelf.closed(asked.trial().content());
    try {
      if (!closed.isEmpty()) {
        throw new InputException(closed);
      }
      TrialEventSheet event = event(asked, form, visitor.person().name());
      if (form.faulty()) { // told only now, with whatever else is wrong
        refuse(context, asked, form);
        return;
      }
      write(context, asked, event, visitor.person().name());
      Answers.goTo(context, "/trials/" + asked.trial().id());
    } catch (StaleSheetException stale) {
      context.status(CONFLICT);
      show(context, asked, form.faulted("", "Somebody else has saved this meanwhile."));
    } catch (InputException faults) {
      refuse(context, asked, form.faulted(faults));
    }
  }

  private void refuse(Context context, Asked asked, Form form) {
    context.status(UNUSABLE);
    show(context, asked, form);
  }

  /** What was sent, with the faults that its document alone does not show. */
  private Form sent(Context context, Asked asked) {
    Form form =
        Form.sent(shape(asked), Guest.visitor(context).person().units(), context.formParamMap());
    LocalDate today = desk.today(asked.trial().content());
    return EventForm.told(DayCheck.told(form, Kind.TRIAL_EVENT, today, "trial"));
  }

  private void write(Context context, Asked asked, TrialEventSheet event, String by) {
    Sheet<TrialEventSheet> before = asked.event();
    String sent = context.formParam("entry");
    String id = sent != null && Ids.isId(sent) ? sent : UUID.randomUUID().toString();
    String version = context.formParam("version");
    int basedOn = version != null && version.matches("\\d{1,9}") ? Integer.parseInt(version) : 0;
    desk.book()
        .write(
            by,
            writing ->
                before == null
                    ? writing.add(Kind.TRIAL_EVENT, id, event)
                    : writing.revise(Kind.TRIAL_EVENT, before.id(), basedOn, event));
  }

  /** Who decides, and when, is known; the rest of the decision is asked for. */
  private TrialEventSheet event(Asked asked, Form form, String by) {
    try {
      ObjectNode document = (ObjectNode) JSON.readTree(form.document("event").text());
      document.put("trial", asked.trial().id());
      if (document.path("exclusion").isObject()) {
        ObjectNode exclusion = (ObjectNode) document.path("exclusion");
        exclusion.put("by", by).put("on", desk.today(asked.trial().content()).toString());
      }
      TrialEventSheet event = Kind.TRIAL_EVENT.read(new SourceText("event", document.toString()));
      Sheet<TrialEventSheet> before = asked.event();
      return before == null ? event : event.decidedAs(before.content());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a form made no JSON", e);
    }
  }

  private Asked asked(Context context) {
    Visitor visitor = Guest.visitor(context);
    String wanted = context.pathParamMap().get("event");
    return desk.book()
        .read(
            reading -> {
              TrialShelf shelf = new TrialShelf(reading, visitor);
              Sheet<TrialSheet> trial =
                  shelf.find(context.pathParam("id")).orElseThrow(Refusal::notFound);
              if (!shelf.mayLog(trial.content())) {
                throw Refusal.notAllowed();
              }
              Sheet<TrialEventSheet> event =
                  wanted == null
                      ? null
                      : reading
                          .find(Kind.TRIAL_EVENT, wanted)
                          .filter(found -> found.content().trial().equals(trial.id()))
                          .orElseThrow(Refusal::notFound);
              return new Asked(trial, shelf.past(trial, ZoneOffset.UTC), event);
            });
  }

  private void show(Context context, Asked asked, Form form) {
    Sheet<TrialEventSheet> event = asked.event();
    String title =
        event == null
            ? "A mowing or a mishap"
            : event.content().what().words() + ", " + DayWords.dayAndYear(event.content().day());
    desk.show(
        context,
        "trialevent.jte",
        title,
        Map.of(
            "id", asked.trial().id(),
            "name", asked.trial().content().name(),
            "title", Character.toUpperCase(title.charAt(0)) + title.substring(1),
            "form", form,
            "action", asked.address(),
            "version", event == null ? "" : Integer.toString(event.version()),
            "entry", UUID.randomUUID().toString()));
  }
}
