package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import leafturn.records.Dates;
import leafturn.records.Ids;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.exchange.TrialGround;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.TrialShelf;
import leafturn.reports.DayWords;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingKeys;
import leafturn.trials.observation.UsualRange;
import leafturn.web.form.Form;
import leafturn.web.trial.EntryForm;
import org.jspecify.annotations.Nullable;

/** Where the readings of a day and outcome are entered, plot by plot in the order of the walk. */
final class TrialEntryRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final int CONFLICT = 409;

  private final Desk desk;

  TrialEntryRoom(Desk desk) {
    this.desk = desk;
  }

  /** A day and outcome of a trial that readings are entered for. */
  private record Asked(
      Sheet<TrialSheet> trial, TrialGround ground, Outcome outcome, LocalDate date) {
    EntryForm form() {
      return new EntryForm(outcome, ground.walk(date), ground.plan().protocol().ratersBlind());
    }
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/{id}/readings/enter", Right.LOG, this::blank);
    routes.write("/trials/{id}/readings/enter", Right.LOG, Intake.FORM, this::save);
  }

  private void blank(Context context) {
    Visitor visitor = Guest.visitor(context);
    Asked asked = asked(context, context.queryParam("date"), context.queryParam("outcome"));
    Form form =
        Form.blank(asked.form().shape(), visitor.person().units())
            .with(EntryForm.RATER, visitor.person().name());
    show(context, asked, form, UUID.randomUUID().toString());
  }

  private void save(Context context) {
    Visitor visitor = Guest.visitor(context);
    Asked asked = asked(context, context.formParam("date"), context.formParam("outcome"));
    EntryForm entry = asked.form();
    Form form = Form.sent(entry.shape(), visitor.person().units(), context.formParamMap());
    String id = entryId(context);
    List<Reading> readings = entry.readings(form, asked.date);
    Form checked = checked(asked, form, readings, id);
    if (checked.faulty()) {
      context.status(UNUSABLE);
      show(context, asked, checked, id);
      return;
    }
    TrialReadingsSheet sheet =
        Kind.TRIAL_READINGS.checked(
            new TrialReadingsSheet(
                asked.trial.id(),
                null,
                null,
                null,
                readings,
                form.value("note").isEmpty() ? null : form.value("note")));
    try {
      desk.book()
          .write(
              visitor.person().name(),
              writing -> {
                refuseClosed(writing, visitor, asked.trial.id());
                return writing.add(Kind.TRIAL_READINGS, id, sheet);
              });
      Answers.goTo(context, "/trials/" + asked.trial.id() + "/readings");
    } catch (StaleSheetException sent) {
      context.status(CONFLICT);
      String sentence = "These readings were saved before with other values; open the form anew.";
      show(context, asked, form.faulted("", sentence), id);
    }
  }

  private static void refuseClosed(BookReading reading, Visitor visitor, String id) {
    TrialSheet trial =
        new TrialShelf(reading, visitor).find(id).orElseThrow(Refusal::notFound).content();
    String closed = TrialShelf.closed(trial);
    if (!closed.isEmpty()) {
      throw new Refusal(CONFLICT, closed, "Nothing was saved.");
    }
  }

  /** All faults at once: what is no value, cannot be, or was read already. */
  private Form checked(Asked asked, Form form, List<Reading> readings, String id) {
    Map<List<Object>, Reading> known = new HashMap<>();
    desk.book().read(reading -> reading.ofTrial(Kind.TRIAL_READINGS, asked.trial.id())).stream()
        .filter(sheet -> !sheet.id().equals(id))
        .flatMap(sheet -> sheet.content().readings().stream())
        .forEach(each -> known.put(ReadingKeys.of(each), each));
    Form checked = form;
    LocalDate today = desk.today(asked.trial.content());
    if (asked.date.isAfter(today)) {
      checked = checked.faulted("", Dates.notYet(asked.date, today));
    }
    if (readings.isEmpty()) {
      checked = checked.faulted("", "Nothing is filled in; enter what was read.");
    }
    if (asked.outcome.kind() == Outcome.Kind.RATING && form.value(EntryForm.RATER).isEmpty()) {
      checked = checked.faulted(EntryForm.RATER, "Say who rated: raters differ.");
    }
    for (Reading reading : readings) {
      String fault = fault(asked.outcome, reading);
      Reading before = known.get(ReadingKeys.of(reading));
      if (!fault.isEmpty()) {
        checked = checked.faulted(EntryForm.path(reading.plot()), fault);
      } else if (before != null) {
        checked =
            checked.faulted(
                EntryForm.path(reading.plot()),
                "the book has %s already; withdraw that entry first where it is wrong."
                    .formatted(before.value()));
      }
    }
    return checked;
  }

  private static String fault(Outcome outcome, Reading reading) {
    try {
      double value = OutcomeReadings.clean(outcome, reading, null).value();
      return UsualRange.isAllowed(outcome, value)
          ? ""
          : UsualRange.faults(outcome, value).get(0) + ".";
    } catch (IllegalArgumentException e) {
      return e.getMessage() + ".";
    }
  }

  private static String entryId(Context context) {
    String sent = context.formParam("entry");
    return sent != null && Ids.isId(sent) ? sent : UUID.randomUUID().toString();
  }

  private Asked asked(Context context, @Nullable String date, @Nullable String outcome) {
    Visitor visitor = Guest.visitor(context);
    return desk.book().read(reading -> asked(context, reading, visitor, date, outcome));
  }

  private Asked asked(
      Context context,
      BookReading reading,
      Visitor visitor,
      @Nullable String date,
      @Nullable String outcome) {
    TrialShelf shelf = new TrialShelf(reading, visitor);
    Sheet<TrialSheet> trial = shelf.find(context.pathParam("id")).orElseThrow(Refusal::notFound);
    if (!shelf.mayLog(trial.content())) {
      throw Refusal.notAllowed();
    }
    refuseClosed(reading, visitor, trial.id());
    TrialGround ground;
    try {
      ground = desk.grounds().of(trial.content());
    } catch (InputException none) {
      throw new Refusal(UNUSABLE, "This trial is not laid out.", String.join(" ", none.faults()));
    }
    LocalDate day = date == null ? null : Dates.parse(date);
    Outcome found = outcome == null ? null : ground.outcome(outcome).orElse(null);
    if (day == null || found == null) {
      throw Refusal.notFound();
    }
    return new Asked(trial, ground, found, day);
  }

  private void show(Context context, Asked asked, Form form, String id) {
    List<ObservedPlot> walk = new ArrayList<>(asked.ground.walk(asked.date));
    String title = "%s on %s".formatted(asked.outcome.name(), DayWords.dayAndYear(asked.date));
    desk.show(
        context,
        "trialentry.jte",
        title,
        Map.of(
            "id", asked.trial.id(),
            "name", asked.trial.content().name(),
            "title", Character.toUpperCase(title.charAt(0)) + title.substring(1),
            "form", form,
            "date", asked.date.toString(),
            "outcome", asked.outcome.name(),
            "entry", id,
            "blind", asked.ground.plan().protocol().ratersBlind(),
            "plots", walk.size()));
  }
}
