package leafturn.records.round;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.Circumstances;
import leafturn.advice.call.Place;
import leafturn.records.sheet.LogSheet;

/** What the files of a lawn know beside what its model takes, as a call asks for it. */
public final class KnownOfFiles {
  private KnownOfFiles() {}

  /**
   * What is known on a day.
   *
   * @param described what the lawn's description says
   * @param log what its log says, by day
   */
  public static Circumstances of(Circumstances described, List<LogSheet> log, LocalDate on) {
    LoggedSights logged = new LoggedSights(log, on);
    Place place = described.place();
    return new Circumstances(
        logged.sightings(),
        logged.treatments(),
        logged.dryFeed(),
        logged.fallenLeaves(),
        logged.sown().map(place::sownOn).orElse(place),
        described.visits(),
        described.wateringLimits(),
        described.wishes());
  }
}
