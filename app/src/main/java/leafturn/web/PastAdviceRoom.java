package leafturn.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.Map;
import leafturn.records.people.Visitor;
import leafturn.records.round.PastAdvice;
import leafturn.records.round.PlacedLawn;
import leafturn.reports.UnitWords;

/** The advice that was given for a lawn, and what became of it. */
final class PastAdviceRoom implements Room {
  private static final int YEARS_SHOWN = 2;

  private final Desk desk;

  PastAdviceRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/lawns/{address}/advice", Right.READ, this::show);
  }

  private void show(Context context) {
    Visitor visitor = Guest.visitor(context);
    PlacedLawn lawn =
        desk.rounds()
            .register()
            .only(visitor::mayRead)
            .lawn(context.pathParam("address"))
            .orElseThrow(Refusal::notFound);
    LocalDate today = desk.rounds().dayOf(lawn);
    LocalDate since = today.minusYears(YEARS_SHOWN);
    PastAdvice past =
        desk.book().read(reading -> PastAdvice.of(reading, lawn.lawn().id(), since, today));
    String name = lawn.lawn().content().name() + ", " + lawn.property().content().name();
    UnitWords units = new UnitWords(visitor.person().units());
    desk.show(
        context,
        "pastadvice.jte",
        "Past advice: " + name,
        Map.of("page", new PastAdvicePage(name, lawn.address(), since, past, units)));
  }
}
