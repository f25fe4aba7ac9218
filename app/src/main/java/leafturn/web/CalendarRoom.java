package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.book.Sheet;
import leafturn.records.people.Calendars;
import leafturn.records.people.Secret;
import leafturn.records.people.Visitor;
import leafturn.records.round.PlacedLawn;
import leafturn.records.round.Register;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.reports.calendar.MowByCalendar;
import org.jspecify.annotations.Nullable;

/**
 * The mow-by days of a person's lawns as a calendar. Calendar programs cannot sign in, so its
 * address is a secret: whoever has it reads this calendar and nothing else. The book keeps only the
 * secret's hash, so the address is shown once, when it is made.
 */
final class CalendarRoom implements Room {
  private static final String ENDING = ".ics";
  private static final String NOT_KEPT = "private, no-store";

  /** A calendar program waits; a lawn that were left out would vanish from the calendar. */
  private static final Duration FOR_ALL_CALLS = Duration.ofSeconds(60);

  private final Desk desk;
  private final Door door;

  CalendarRoom(Desk desk, Door door) {
    this.desk = desk;
    this.door = door;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/calendar/{file}", Right.OPEN, this::calendar);
    routes.read("/me/calendar", Right.READ, context -> show(context, null));
    routes.write("/me/calendar", Right.READ, Intake.FORM, this::renew);
    routes.write("/me/calendar/withdraw", Right.READ, Intake.FORM, this::withdraw);
  }

  private void calendar(Context context) {
    String file = context.pathParam("file");
    String secret = file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : "";
    Optional<Visitor> whose =
        Secret.looksLikeOne(secret)
            ? desk.book().read(reading -> Calendars.visitor(reading, secret))
            : Optional.empty();
    if (whose.isEmpty()) {
      throw Refusal.notFound();
    }
    context
        .header(Header.CACHE_CONTROL, NOT_KEPT)
        .header("Content-Disposition", "inline; filename=\"mow-by" + ENDING + "\"")
        .contentType("text/calendar; charset=utf-8")
        .result(text(whose.get()));
  }

  private String text(Visitor visitor) {
    Map<String, Long> revisions = desk.book().read(reading -> reading.revisions());
    Register register = desk.rounds().register().only(visitor::mayRead);
    RoundOfLawns round =
        desk.rounds().today(all -> register, visitor.person().units(), FOR_ALL_CALLS);
    desk.keeper().given(round.lawns(), Way.CALENDAR, visitor.person().name());
    MowByCalendar calendar = new MowByCalendar(desk.clock().instant());
    for (LawnOnRound lawn : round.lawns()) {
      register
          .lawn(lawn.slug())
          .ifPresent(placed -> calendar.add(placed.lawn().id(), revision(placed, revisions), lawn));
    }
    return calendar.text();
  }

  /** Rises with every change of what the call rests on; none of its parts ever falls. */
  private static long revision(PlacedLawn placed, Map<String, Long> revisions) {
    Sheet<?> station = placed.station();
    return Stream.of(
            placed.lawn().id(),
            placed.property().id(),
            station == null ? null : station.id(),
            "rules")
        .filter(Objects::nonNull)
        .mapToLong(place -> revisions.getOrDefault(place, 0L))
        .sum();
  }

  private void renew(Context context) {
    Visitor visitor = Guest.visitor(context);
    String secret =
        desk.book()
            .write(
                visitor.person().name(),
                writing -> Calendars.renew(writing, visitor.person().id()));
    show(context, door.origin(context) + "/calendar/" + secret + ENDING);
  }

  private void withdraw(Context context) {
    Visitor visitor = Guest.visitor(context);
    desk.book()
        .write(
            visitor.person().name(),
            writing -> {
              Calendars.withdraw(writing, visitor.person().id());
              return true;
            });
    Answers.goTo(context, "/me/calendar");
  }

  private void show(Context context, @Nullable String fresh) {
    String person = Guest.visitor(context).person().id();
    Map<String, Object> content = new HashMap<>();
    content.put("fresh", fresh);
    content.put("there", desk.book().read(reading -> Calendars.has(reading, person)));
    desk.show(context, "calendar.jte", "Calendar", content);
    context.header(Header.CACHE_CONTROL, NOT_KEPT);
  }
}
