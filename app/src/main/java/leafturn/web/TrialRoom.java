package leafturn.web;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookPlan;
import leafturn.records.trial.TrialClock;
import leafturn.records.trial.TrialProgress;
import leafturn.records.trial.TrialShelf;
import leafturn.records.trial.TrialState;
import leafturn.reports.DayWords;
import leafturn.web.sheet.Line;
import leafturn.web.trial.PlanWords;
import leafturn.web.trial.PlannedChance;
import org.jspecify.annotations.Nullable;

/** The trials of the book, and each with its state and the doors to its parts. */
final class TrialRoom implements Room {
  private final Desk desk;

  TrialRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials", Right.READ, this::list);
    routes.read("/trials/{id}", Right.READ, this::show);
    routes.write("/trials/{id}/freeze", Right.CHANGE, Intake.FORM, this::freeze);
    routes.write("/trials/{id}/end", Right.CHANGE, Intake.FORM, this::end);
  }

  private void list(Context context) {
    Visitor visitor = Guest.visitor(context);
    TrialList page = desk.book().read(reading -> list(reading, visitor));
    desk.show(context, "trials.jte", "Trials", Map.of("page", page));
  }

  private TrialList list(BookReading reading, Visitor visitor) {
    TrialShelf shelf = new TrialShelf(reading, visitor);
    TrialClock clock = new TrialClock(reading, desk.clock());
    List<TrialList.Entry> entries = new ArrayList<>();
    for (Sheet<TrialSheet> trial : shelf.all()) {
      TrialSheet content = trial.content();
      entries.add(
          new TrialList.Entry(
              trial.id(),
              content.name(),
              content.plan().path("question").asText(),
              new PlanWords(content.plan(), visitor.person().units()).layout(),
              state(shelf, trial, clock)));
    }
    return new TrialList(entries, shelf.mayChange());
  }

  /** How far a trial has come; of one whose days are past, what is still to be done. */
  private String state(TrialShelf shelf, Sheet<TrialSheet> trial, TrialClock clock) {
    TrialState state = shelf.state(trial);
    TrialSheet content = trial.content();
    try {
      if (!state.takesReadings()
          || !TrialProgress.isPast(BookPlan.of(content), clock.today(content))) {
        return state.words();
      }
      return TrialProgress.of(desk.grounds().of(content), shelf.readings(trial.id())).words();
    } catch (InputException faulty) {
      return state.words();
    }
  }

  private void show(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    TrialPage page = desk.book().read(reading -> page(reading, visitor, id));
    desk.show(context, "trial.jte", page.name(), Map.of("page", page));
  }

  private TrialPage page(BookReading reading, Visitor visitor, String id) {
    TrialShelf shelf = new TrialShelf(reading, visitor);
    Sheet<TrialSheet> trial = shelf.find(id).orElseThrow(Refusal::notFound);
    TrialSheet content = trial.content();
    TrialState state = shelf.state(trial);
    Units units = visitor.person().units();
    TrialClock clock = new TrialClock(reading, desk.clock());
    ZoneId zone = clock.zone(content);
    boolean mayKnowArms = shelf.mayKnowArms(content);
    List<Line> plan =
        new PlanWords(content.plan(), units)
            .lines().stream()
                .filter(line -> mayKnowArms || !line.label().equals(PlanWords.SEED))
                .toList();
    return new TrialPage(
        id,
        trial.version(),
        content.name(),
        content.plan().path("question").asText(),
        state,
        TrialPage.standing(content, state, zone, state(shelf, trial, clock))
            + (shelf.cameFrozen(id) ? TrialPage.BROUGHT : ""),
        state == TrialState.PLANNED ? TrialPage.late(content, clock.today(content)) : "",
        mayKnowArms ? doubts(content) : List.of(),
        state == TrialState.PLANNED ? PlannedChance.of(content, units) : null,
        plan,
        mayKnowArms ? hash(content) : "",
        TrialPage.changes(shelf.history(id), units, zone).stream()
            .map(later -> mayKnowArms ? later : later.without(PlanWords.SEED))
            .toList(),
        readings(shelf.readingSheets(id)),
        shelf.events(id).stream()
            .map(event -> new TrialPage.Event(event.id(), words(event.content(), mayKnowArms)))
            .toList(),
        shelf.mayChange(),
        shelf.mayLog(content));
  }

  /** What the page of the layout says of it too, where there is one. */
  private List<String> doubts(TrialSheet trial) {
    try {
      return desk.grounds().doubts(trial);
    } catch (InputException noRoom) {
      return List.of();
    }
  }

  /**
   * The digest of the frozen plan; beside the plan it would tell whether a guessed seed is right.
   */
  private static String hash(TrialSheet trial) {
    TrialSheet.Frozen frozen = trial.frozen();
    return frozen == null ? "" : frozen.hash();
  }

  private static String readings(List<Sheet<TrialReadingsSheet>> sheets) {
    int count = sheets.stream().mapToInt(sheet -> sheet.content().readings().size()).sum();
    return count == 0
        ? "Nothing has been read yet."
        : "%,d %s so far.".formatted(count, count == 1 ? "reading" : "readings");
  }

  private static String words(TrialEventSheet event, boolean mayKnowArms) {
    return "%s: %s"
        .formatted(
            DayWords.dayAndYear(event.day()), mayKnowArms ? event.words() : event.blindWords());
  }

  private void freeze(Context context) {
    change(
        context,
        (writing, trial) -> {
          TrialSheet now = trial.content();
          if (now.frozen() != null) {
            return now; // frozen once is frozen: the first moment counts
          }
          if (!new TrialShelf(writing, Guest.visitor(context)).readings(trial.id()).isEmpty()) {
            throw new Refusal(
                409,
                "This trial has readings already.",
                "A plan is frozen before the first reading; later it could be fitted to them.");
          }
          Instant moment = new TrialClock(writing, desk.clock()).moment(now);
          String at = moment.truncatedTo(ChronoUnit.MICROS).toString();
          return now.frozenAs(
              new TrialSheet.Frozen(at, writing.by(), BookPlan.hash(now), layout(now)));
        });
  }

  /** The layout that is frozen with the plan; null where it does not fit on its lawns. */
  private @Nullable String layout(TrialSheet trial) {
    try {
      return desk.grounds().of(trial).layoutHash();
    } catch (InputException noRoom) {
      return null;
    }
  }

  private void end(Context context) {
    String typed = context.formParam("why");
    String why = typed == null || typed.isBlank() ? null : typed.strip();
    change(
        context,
        (writing, trial) -> {
          TrialSheet now = trial.content();
          if (now.frozen() == null || now.ended() != null) {
            return now;
          }
          LocalDate today = new TrialClock(writing, desk.clock()).today(now);
          checkEnd(BookPlan.of(now).observing().dates(), today, why);
          return now.endedOn(today, why);
        });
  }

  /** A trial that has not begun cannot end, and one that stops early has a reason. */
  private static void checkEnd(List<LocalDate> planned, LocalDate today, @Nullable String why) {
    if (planned.isEmpty()) {
      return;
    }
    LocalDate first = Collections.min(planned);
    LocalDate last = Collections.max(planned);
    if (today.isBefore(first)) {
      throw new Refusal(
          422,
          "This trial has not begun: its first planned day is %s."
              .formatted(DayWords.dayAndYear(first)),
          "Change its plan, or leave it. Nothing was saved.");
    }
    if (today.isBefore(last) && why == null) {
      throw new Refusal(
          422,
          "This trial would end before its last planned day, %s; say why."
              .formatted(DayWords.dayAndYear(last)),
          "Go back and give the reason; the findings tell it. Nothing was saved.");
    }
  }

  private void change(
      Context context, BiFunction<BookWriting, Sheet<TrialSheet>, TrialSheet> change) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              Sheet<TrialSheet> trial =
                  new TrialShelf(writing, visitor).find(id).orElseThrow(Refusal::notFound);
              TrialSheet changed = Kind.TRIAL.checked(change.apply(writing, trial));
              return writing.revise(Kind.TRIAL, id, trial.version(), changed);
            });
    Answers.goTo(context, "/trials/" + id);
  }
}
