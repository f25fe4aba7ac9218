package leafturn.web;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.people.Visitor;
import leafturn.records.round.PlacedLawn;
import leafturn.records.round.Register;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.web.sheet.Setting;

/** The lawns: all of them, and the call of each. */
final class LawnRoom implements Room {
  private static final int UNUSABLE = 422;

  private final Desk desk;
  private final SheetDesk sheets;

  LawnRoom(Desk desk, SheetDesk sheets) {
    this.desk = desk;
    this.sheets = sheets;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/lawns", Right.READ, this::register);
    routes.read("/lawns/{address}", Right.READ, this::lawn);
  }

  private void register(Context context) {
    RoundOfLawns round = desk.round(context);
    Register register = desk.rounds().register().only(Guest.visitor(context)::mayRead);
    desk.show(
        context, "lawns.jte", "Lawns", round, Map.of("register", LawnRegister.of(register, round)));
  }

  private void lawn(Context context) {
    String address = context.pathParam("address");
    RoundOfLawns round = desk.roundOf(context, address);
    String day = context.queryParam("day");
    LawnOnRound today = round.lawn(address).orElse(null);
    if (day != null && today != null && !day.equals(today.call().on().toString())) {
      onDay(context, ChosenDay.typed("/lawns/" + address, today.call().on(), day), round, today);
      return;
    }
    round
        .lawn(address)
        .ifPresentOrElse(
            lawn -> called(context, round, lawn), () -> withoutCall(context, round, address));
  }

  private void called(Context context, RoundOfLawns round, LawnOnRound lawn) {
    desk.given(context, Way.PAGE, List.of(lawn));
    String title = lawn.lawnName() + ", " + lawn.propertyName();
    boolean wholeLog = context.queryParam("log") != null;
    PlacedLawn placed = desk.rounds().register().lawn(lawn.slug()).orElseThrow(Refusal::notFound);
    String id = placed.lawn().id();
    LawnLog log =
        desk.book().read(reading -> LawnLog.of(reading, id, Guest.visitor(context), wholeLog));
    Map<String, Object> content =
        Map.of(
            "warnings",
            desk.book().read(reading -> LawnWarnings.of(reading, placed, lawn)),
            "page",
            new LawnPage(lawn),
            "day",
            ChosenDay.none("/lawns/" + lawn.slug(), lawn.call().on()),
            "log",
            log,
            "property",
            placed.property().content().address());
    desk.show(context, "lawn.jte", title, round, content);
  }

  private void onDay(Context context, ChosenDay chosen, RoundOfLawns round, LawnOnRound today) {
    ChosenDay told = chosen;
    LawnPage page = null;
    if (!chosen.faulty()) {
      RoundOfLawns then = desk.roundOn(context, today.slug(), chosen.day());
      page = then.lawn(today.slug()).map(LawnPage::new).orElse(null);
      told =
          page == null && !then.withoutCall().isEmpty()
              ? chosen.faulted(then.withoutCall().get(0).why())
              : chosen;
    }
    if (page == null) {
      context.status(UNUSABLE);
    }
    Map<String, Object> content = new HashMap<>();
    content.put("page", page);
    content.put("day", told);
    content.put("name", today.lawnName() + ", " + today.propertyName());
    desk.show(context, "lawnday.jte", told.heading(), round, content);
  }

  private void withoutCall(Context context, RoundOfLawns round, String address) {
    LawnWithoutCall lawn =
        round.withoutCall().stream()
            .filter(each -> each.slug().equals(address))
            .findFirst()
            .orElseThrow(Refusal::notFound);
    uncalled(context, round, lawn);
  }

  private void uncalled(Context context, RoundOfLawns round, LawnWithoutCall lawn) {
    String title = lawn.lawnName() + ", " + lawn.propertyName();
    if (lawn.underWay()) {
      context.header("Retry-After", Desk.SOON_SECONDS);
      desk.show(context, "soon.jte", title, round, Map.of("lawn", lawn));
      return;
    }
    PlacedLawn placed = desk.rounds().register().lawn(lawn.slug()).orElseThrow(Refusal::notFound);
    Visitor visitor = Guest.visitor(context);
    boolean wholeLog = context.queryParam("log") != null;
    Map<String, Object> content =
        desk.book()
            .read(
                reading -> {
                  SheetPlace place = new SheetPlace(placed.property(), placed.lawn());
                  Setting setting = sheets.setting(reading, visitor, place);
                  return Map.of(
                      "page", LawnFacts.of(reading, placed, lawn, setting),
                      "log", LawnLog.of(reading, placed.lawn().id(), visitor, wholeLog));
                });
    desk.show(context, "uncalled.jte", title, round, content);
  }
}
