package leafturn.web;

import io.javalin.http.Context;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.SizeDocument;
import leafturn.records.trial.SizeFile;
import leafturn.records.trial.TrialShelf;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.power.Spread;
import leafturn.trials.power.TrialSize;
import leafturn.web.form.Form;
import leafturn.web.trial.SizeForm;

/**
 * How many yards a trial of the book needs: nothing is kept, the question stands in the address.
 */
final class TrialSizeRoom implements Room {
  private static final int UNUSABLE = 422;
  private static final String OUTCOME = "outcome";

  private final Desk desk;

  TrialSizeRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/{id}/size", Right.READ, this::show);
  }

  private void show(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    TrialSheet trial =
        desk.book()
            .read(
                reading -> {
                  TrialShelf shelf = new TrialShelf(reading, visitor);
                  return shelf.find(id).map(sheet -> withPast(shelf, sheet));
                })
            .orElseThrow(Refusal::notFound);
    TrialSizePage page = page(context, id, trial, visitor.person().units());
    if (page.answer() == null && page.planFaults().isEmpty()) {
      context.status(UNUSABLE);
    }
    desk.show(context, "trialsize.jte", trial.name(), Map.of("page", page));
  }

  /** Its plans are what counts here, not the days of their changes: any zone does. */
  private static TrialSheet withPast(TrialShelf shelf, Sheet<TrialSheet> sheet) {
    return sheet.content().with(shelf.past(sheet, ZoneOffset.UTC));
  }

  /** The form with what an address alone asks otherwise. */
  private static Form asked(Form filled, Map<String, List<String>> parameters) {
    Form form = filled;
    for (Map.Entry<String, List<String>> each : parameters.entrySet()) {
      if (!each.getKey().equals(OUTCOME) && !each.getValue().isEmpty()) {
        form = form.with(each.getKey(), each.getValue().get(0));
      }
    }
    return form;
  }

  private static String noOutcome(String asked) {
    return "%s has no starting values; there are some for %s."
        .formatted(Faults.quoted(asked), String.join(", ", Spread.outcomes()));
  }

  private static TrialSizePage page(Context context, String id, TrialSheet trial, Units units) {
    TrialPlan plan;
    try {
      plan = BookPlan.judged(trial);
    } catch (InputException unfinished) {
      List<String> faults =
          unfinished.faultsByField().stream().map(fault -> fault.sentence()).toList();
      return new TrialSizePage(id, trial.name(), "", null, faults, null);
    }
    String asked = context.queryParam(OUTCOME);
    String outcome =
        asked != null && Spread.outcomes().contains(asked) ? asked : SizeForm.outcomeOf(plan);
    SizeForm question = new SizeForm(plan, outcome);
    String of = context.queryParam("of");
    Form form =
        outcome.equals(of)
            ? Form.sent(question.shape(), units, context.queryParamMap())
            : question.filled(units);
    if (of == null) {
      form = asked(form, context.queryParamMap());
    }
    if (asked != null && !asked.equals(outcome)) {
      form = form.faulted(OUTCOME, noOutcome(asked));
      return new TrialSizePage(id, trial.name(), outcome, form, List.of(), null);
    }
    try {
      SizeDocument document =
          SizeFile.read(question.changed(form).document("size", question.base()));
      TrialSizePage.Answer answer =
          TrialSizePage.Answer.of(document, TrialSize.of(document.size()), question);
      return new TrialSizePage(id, trial.name(), outcome, form, List.of(), answer);
    } catch (InputException faults) {
      return new TrialSizePage(id, trial.name(), outcome, form.faulted(faults), List.of(), null);
    }
  }
}
