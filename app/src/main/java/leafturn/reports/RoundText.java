package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.Reason;
import leafturn.advice.call.RoundOfLawns;

/** A round for a terminal: the lawns with their calls, most urgent first. */
public final class RoundText {
  private RoundText() {}

  /** The lines of a round. */
  public static List<String> of(RoundOfLawns round) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s on %s"
            .formatted(
                round.adviserName().isEmpty() ? "The round" : round.adviserName() + "'s round",
                DayWords.dayAndYear(round.today())));
    if (!round.standing().isEmpty()) {
      lines.add(round.standing());
    }
    for (LawnOnRound lawn : round.mostUrgentFirst()) {
      lines.add("");
      lines.add(lawn.propertyName() + ", " + lawn.lawnName());
      lines.addAll(Paragraph.of("  ", lawn.call().sentence()));
      lawn.call().reasons().stream()
          .limit(1)
          .flatMap(reason -> Paragraph.of("  ", inWords(reason)).stream())
          .forEach(lines::add);
      lines.addAll(Paragraph.of("  ", state(lawn)));
    }
    round.withoutCall().forEach(lawn -> lines.addAll(withoutCall(lawn)));
    lines.add("");
    lines.add("Weather: " + round.weatherOrigin() + ". " + ranges(round));
    return lines.stream().map(Paragraph::plain).toList();
  }

  private static String ranges(RoundOfLawns round) {
    boolean forecast =
        round.lawns().stream()
            .anyMatch(lawn -> lawn.call().possibleSeasons().forecastUntil() != null);
    return forecast
        ? "Ranges follow a forecast, less by the day, and then other years."
        : "Ranges come from other years, no forecast.";
  }

  private static List<String> withoutCall(LawnWithoutCall lawn) {
    List<String> lines = new ArrayList<>(List.of("", lawn.propertyName() + ", " + lawn.lawnName()));
    lines.addAll(Paragraph.of("  ", lawn.why()));
    return lines;
  }

  private static String inWords(Reason reason) {
    return reason.headline() + ": " + reason.meaning();
  }

  private static String state(LawnOnRound lawn) {
    String entry = lawn.lastEntry().isEmpty() ? "" : " " + lawn.lastEntry() + ".";
    return "Stands at %s, cut to %s. %s.%s"
        .formatted(
            QuantityWords.whole(lawn.call().today().heightMm(), "mm"),
            QuantityWords.whole(lawn.call().today().cutHeightMm(), "mm"),
            MowBy.words(lawn.call()),
            entry);
  }
}
