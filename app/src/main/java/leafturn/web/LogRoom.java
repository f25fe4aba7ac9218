package leafturn.web;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.web.LogIntake.Outcome;
import leafturn.web.LogIntake.Sent;
import leafturn.web.form.Form;
import org.jspecify.annotations.Nullable;

/** The log as it is written at the lawn: which lawn, what was done, save. */
final class LogRoom implements Room {
  private static final int CONFLICT = 409;
  private static final int FAULTY = 422;

  private final Desk desk;
  private final LoggedLawns lawns;
  private final LogIntake intake;

  LogRoom(Desk desk) {
    this.desk = desk;
    this.lawns = new LoggedLawns(desk);
    this.intake = new LogIntake(desk.book());
  }

  /** A request about the log of one lawn. */
  private record Asked(Context context, LogWriter who, LoggedLawn lawn) {
    LogPage blankPage() {
      return LogPage.blank(lawn, who.units());
    }
  }

  @Override
  public void open(Routes routes) {
    routes.read("/log", Right.LOG, this::lawns);
    routes.read("/lawns/{address}/log", Right.LOG, context -> blank(asked(context)));
    routes.write(
        "/lawns/{address}/log", Right.LOG, Intake.PHOTOGRAPH, context -> save(asked(context)));
    routes.read("/phone/log/{units}", Right.OPEN, this::kept);
  }

  private void lawns(Context context) {
    LogWriter who = LogWriter.of(context);
    Map<String, Object> content = new HashMap<>();
    content.put("person", who.person());
    content.put("lawns", lawns.mostUrgentFirst(who));
    content.put("saved", saved(context, who));
    content.put("units", who.units());
    desk.show(context, "log.jte", "Log", content);
  }

  /** What was saved just now, in words; null where nothing was. */
  private @Nullable SavedEntry saved(Context context, LogWriter who) {
    String id = context.queryParam("saved");
    if (id == null) {
      return null;
    }
    return desk.book()
        .read(reading -> reading.find(Kind.LOG, id))
        .flatMap(
            sheet -> lawns.withId(who, sheet.content().lawn()).map(lawn -> saved(who, sheet, lawn)))
        .orElse(null);
  }

  private SavedEntry saved(LogWriter who, Sheet<LogSheet> sheet, LoggedLawn lawn) {
    return desk.book().read(reading -> SavedEntry.of(reading, sheet, lawn, who.units()));
  }

  private Asked asked(Context context) {
    LogWriter who = LogWriter.of(context);
    LoggedLawn lawn = lawns.at(who, context.pathParam("address")).orElseThrow(Refusal::notFound);
    return new Asked(context, who, lawn);
  }

  private void blank(Asked asked) {
    show(asked, asked.blankPage());
  }

  private void save(Asked asked) {
    Context context = asked.context();
    Optional<LogChoice> choice =
        LogChoice.named(String.valueOf(context.formParam("as")), asked.who().units());
    String id = String.valueOf(context.formParam("id"));
    if (choice.isEmpty() || !Sent.isId(id)) {
      context.status(FAULTY);
      blank(asked);
      return;
    }
    Units units = asked.who().units();
    Sent sent = new Sent(id, choice.get(), units, context.formParamMap(), null);
    try {
      sent = sent.with(SentPhotograph.of(context, id));
      answer(asked, sent, intake.take(asked.who(), asked.lawn(), sent));
    } catch (InputException noPicture) {
      again(asked, sent, sent.form().faulted(noPicture), FAULTY);
    }
  }

  private void answer(Asked asked, Sent sent, Outcome outcome) {
    if (outcome instanceof Outcome.Kept kept) {
      Answers.goTo(asked.context(), "/log?saved=" + kept.sheet().id());
    } else if (outcome instanceof Outcome.Faulty faulty) {
      again(asked, sent, faulty.form(), FAULTY);
    } else {
      again(asked, sent, sent.form().faulted("", QueueRoom.TAKEN), CONFLICT);
    }
  }

  private void again(Asked asked, Sent sent, Form form, int status) {
    asked.context().status(status);
    show(asked, asked.blankPage().with(sent.choice(), form, sent.id()));
  }

  private void show(Asked asked, LogPage page) {
    Map<String, Object> content = Map.of("page", page, "person", asked.who().person());
    desk.show(asked.context(), "log-lawn.jte", "Log: " + asked.lawn().title(), content);
  }

  /** The page that a phone keeps, to use without a connection for any lawn. */
  private void kept(Context context) {
    Units units = context.pathParam("units").equals("us") ? Units.US : Units.METRIC;
    desk.showKept(context, "log-lawn.jte", "Log", Map.of("page", LogPage.blank(null, units)));
  }
}
