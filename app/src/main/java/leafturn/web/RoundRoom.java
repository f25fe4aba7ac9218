package leafturn.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.records.round.Register;
import leafturn.records.sheet.AdviceSheet.Way;

/** The round of the day. */
final class RoundRoom implements Room {
  private final Desk desk;

  RoundRoom(Desk desk) {
    this.desk = desk;
  }

  @Override
  public void open(Routes routes) {
    routes.read("/", Right.READ, this::round);
  }

  private void round(Context context) {
    RoundOfLawns round = desk.round(context);
    desk.given(context, Way.PAGE, round.lawns());
    if (round.withoutCall().stream().anyMatch(LawnWithoutCall::underWay)) {
      context.header("Retry-After", Desk.SOON_SECONDS);
    }
    Map<String, Object> content =
        Map.of(
            "page",
            new RoundPage(round),
            "warnings",
            round.isEmpty() ? List.of() : warnings(context, round));
    desk.show(context, round.isEmpty() ? "empty.jte" : "round.jte", "Round", round, content);
  }

  private List<String> warnings(Context context, RoundOfLawns round) {
    Register seen = desk.rounds().register().only(Guest.visitor(context)::mayRead);
    return desk.book().read(reading -> LawnWarnings.ofRound(reading, round.today(), seen.lawns()));
  }
}
