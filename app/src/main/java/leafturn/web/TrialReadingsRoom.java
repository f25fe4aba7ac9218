package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.TrialGround;
import leafturn.records.people.Visitor;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialReadingsSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.records.trial.BookFindings;
import leafturn.records.trial.TrialChecks;
import leafturn.records.trial.TrialClock;
import leafturn.records.trial.TrialShelf;
import leafturn.reports.DayWords;
import leafturn.reports.trial.EffectWords;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.Remark;
import org.jspecify.annotations.Nullable;

/** What was read in a trial and what is to be said of it. */
final class TrialReadingsRoom implements Room {
  private final Desk desk;

  TrialReadingsRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/trials/{id}/readings", Right.READ, this::show);
    routes.write(
        "/trials/{id}/readings/{sheet}/withdraw", Right.CHANGE, Intake.FORM, this::withdraw);
  }

  private void show(Context context) {
    Visitor visitor = Guest.visitor(context);
    TrialReadingsPage page =
        desk.book().read(reading -> page(reading, visitor, context.pathParam("id")));
    desk.show(context, "trialreadings.jte", "Readings: " + page.name(), Map.of("page", page));
  }

  private TrialReadingsPage page(BookReading reading, Visitor visitor, String id) {
    TrialShelf shelf = new TrialShelf(reading, visitor);
    Sheet<TrialSheet> trial = shelf.find(id).orElseThrow(Refusal::notFound);
    List<Sheet<TrialReadingsSheet>> sheets = shelf.readingSheets(id);
    List<Reading> readings = shelf.readings(id);
    List<TrialEventSheet> events = shelf.events(id).stream().map(Sheet::content).toList();
    TrialGround ground = null;
    String fault = "";
    try {
      ground = desk.grounds().of(trial.content());
    } catch (InputException none) {
      fault = String.join(" ", none.faults());
    }
    TrialClock clock = new TrialClock(reading, desk.clock());
    boolean mayKnowArms = shelf.mayKnowArms(trial.content());
    List<Remark> remarks =
        ground == null || readings.isEmpty() || !mayKnowArms
            ? List.of()
            : new TrialChecks(
                    trial.content().with(shelf.past(trial, clock.zone(trial.content()))),
                    ground,
                    readings,
                    events,
                    BookFindings.isOver(trial.content(), clock.today(trial.content())))
                .remarks();
    return new TrialReadingsPage(
        id,
        trial.content().name(),
        TrialShelf.closed(trial.content()),
        fault,
        ground == null
            ? List.of()
            : ground.plan().observing().outcomes().stream().map(EffectWords::name).toList(),
        ground == null ? List.of() : days(ground, readings, clock.today(trial.content())),
        remarks,
        entries(sheets),
        shelf.withdrawnSheets(id).stream().map(each -> withdrawn(each, mayKnowArms)).toList(),
        shelf.mayLog(trial.content()),
        shelf.mayChange() && trial.content().ended() == null);
  }

  private static List<TrialReadingsPage.Day> days(
      TrialGround ground, List<Reading> readings, LocalDate today) {
    return ground.plan().observing().dates().stream()
        .map(
            date ->
                new TrialReadingsPage.Day(
                    DayWords.dayAndYear(date),
                    date.isAfter(today) ? DayWords.date(date) : "",
                    ground.plan().observing().outcomes().stream()
                        .map(outcome -> progress(ground, date, outcome, readings))
                        .toList()))
        .toList();
  }

  private static TrialReadingsPage.Progress progress(
      TrialGround ground, LocalDate date, Outcome outcome, List<Reading> readings) {
    int read =
        (int)
            readings.stream()
                .filter(each -> each.date().equals(date))
                .filter(each -> each.outcome().equals(outcome.name()))
                .map(Reading::plot)
                .distinct()
                .count();
    boolean cores = ground.plan().observing().cores().dates().contains(date);
    return new TrialReadingsPage.Progress(
        date.toString(),
        outcome.name(),
        EffectWords.name(outcome),
        outcome.kind() != Outcome.Kind.SOIL || cores || read > 0,
        read,
        ground.plots().size());
  }

  private List<TrialReadingsPage.Entry> entries(List<Sheet<TrialReadingsSheet>> sheets) {
    List<TrialReadingsPage.Entry> entries = new ArrayList<>();
    sheets.forEach(sheet -> entries.add(entry(sheet)));
    Collections.reverse(entries);
    return entries;
  }

  private static String what(TrialReadingsSheet sheet) {
    List<Reading> readings = sheet.readings();
    String outcomes =
        String.join(", ", readings.stream().map(Reading::outcome).distinct().toList());
    return "%s: %d %s"
        .formatted(
            EffectWords.name(outcomes),
            readings.size(),
            readings.size() == 1 ? "reading" : "readings");
  }

  /** What was taken back; its reason may tell the arms and is kept from those who must not know. */
  private String withdrawn(Sheet<TrialReadingsSheet> sheet, boolean mayKnowArms) {
    TrialReadingsSheet content = sheet.content();
    return "%s, %s: withdrawn by %s, %s%s"
        .formatted(
            DayWords.dayAndYear(Objects.requireNonNull(content.day())),
            what(content),
            sheet.writtenBy(),
            Moments.words(sheet.writtenAt(), desk.clock().getZone()),
            content.whyWithdrawn() == null || !mayKnowArms ? "" : ": " + content.whyWithdrawn());
  }

  private TrialReadingsPage.Entry entry(Sheet<TrialReadingsSheet> sheet) {
    String from = sheet.content().file() == null ? "" : ", from " + sheet.content().file();
    return new TrialReadingsPage.Entry(
        sheet.id(),
        sheet.version(),
        DayWords.dayAndYear(Objects.requireNonNull(sheet.content().day())),
        what(sheet.content()),
        "%s, %s%s"
            .formatted(
                sheet.writtenBy(), Moments.words(sheet.writtenAt(), desk.clock().getZone()), from));
  }

  private void withdraw(Context context) {
    Visitor visitor = Guest.visitor(context);
    String id = context.pathParam("id");
    String sheet = context.pathParam("sheet");
    int version = version(context.formParam("version"));
    String why = why(context.formParam("why"));
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              Sheet<TrialSheet> trial =
                  new TrialShelf(writing, visitor).find(id).orElseThrow(Refusal::notFound);
              TrialReadingsSheet readings =
                  writing
                      .find(Kind.TRIAL_READINGS, sheet)
                      .map(Sheet::content)
                      .filter(found -> found.trial().equals(id))
                      .orElseThrow(Refusal::notFound);
              if (trial.content().ended() != null) {
                throw new Refusal(
                    409,
                    "This trial has ended; its readings stay as they are.",
                    "Readings taken back after the end could be chosen by what they show. Nothing was changed.");
              }
              TrialReadingsSheet back = Kind.TRIAL_READINGS.checked(readings.withdrawnFor(why));
              return writing.withdraw(Kind.TRIAL_READINGS, sheet, version, back);
            });
    Answers.goTo(context, "/trials/" + id + "/readings");
  }

  private static String why(@Nullable String sent) {
    if (sent == null || sent.isBlank()) {
      throw new Refusal(
          422,
          "Say why these readings are withdrawn.",
          "Go back and give the reason, for instance 'the wrong plot was read'; the findings tell it. Nothing was changed.");
    }
    return sent.strip();
  }

  private static int version(@Nullable String sent) {
    return sent != null && sent.matches("\\d{1,9}") ? Integer.parseInt(sent) : 0;
  }
}
