package leafturn.records.sheet;

import java.time.LocalDate;
import java.util.List;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A forecast of daily weather for a station's place: days in a row, without a hole.
 *
 * @param station id of the station
 * @param issued the day it was made or taken over
 * @param origin whose forecast it is, 1 to 300 characters
 * @param first its first day
 * @param days from that day on, 1 to 16
 */
public record ForecastSheet(
    String station, LocalDate issued, String origin, LocalDate first, List<Day> days)
    implements Content {
  /** Days beyond which a forecast tells no more of a day than the season does. */
  public static final int MOST_DAYS = 16;

  public ForecastSheet {
    days = List.copyOf(days);
  }

  /**
   * A day of it; of rain an amount, a chance, or both are told.
   *
   * @param minimumC °C, -90 to 60
   * @param maximumC °C, not below the minimum
   * @param rainMm rain if it rains, mm, 0 to 2000, or null
   * @param rainChanceFraction chance of rain, 0 to 1, or null
   * @param windMPerS wind at the height of the station's own, m/s, 0 to 115, or null
   */
  public record Day(
      double minimumC,
      double maximumC,
      @Nullable Double rainMm,
      @Nullable Double rainChanceFraction,
      @Nullable Double windMPerS) {

    static Day read(JsonObject json) {
      Day day =
          new Day(
              json.requiredNumber("minimumC", -90, 60, "°C"),
              json.requiredNumber("maximumC", -90, 60, "°C"),
              json.number("rainMm", 0, 2000, "mm"),
              json.number("rainChanceFraction", 0, 1, "1 for certain"),
              json.number("windMPerS", 0, 115, "m/s"));
      if (day.minimumC > day.maximumC) {
        json.fault("maximumC", "it lies below the minimum; check both.");
      }
      if (!json.has("rainMm") && !json.has("rainChanceFraction")) {
        json.missing("rainMm", "an amount in mm, 0 for a dry day, or rainChanceFraction");
      }
      if (day.rainMm != null
          && day.rainMm > 0
          && Double.valueOf(0).equals(day.rainChanceFraction)) {
        json.fault("rainChanceFraction", "it is 0 beside rain; give a chance above 0, or no rain.");
      }
      json.refuseOthers();
      return day;
    }
  }

  @Override
  public LocalDate day() {
    return first;
  }

  /** Its last day. */
  public LocalDate last() {
    return first.plusDays(days.size() - 1L);
  }

  static ForecastSheet read(JsonObject json) {
    String station = json.requiredId("station", "the weather station");
    LocalDate issued = json.requiredDate("issued");
    String origin = json.requiredText("origin", Limits.SENTENCE, "whose forecast it is");
    LocalDate first = json.requiredDate("first");
    List<Day> days = json.objects("days").stream().map(Day::read).toList();
    if (days.isEmpty()) {
      json.requireItems("days", "at least one day");
    }
    if (days.size() > MOST_DAYS) {
      json.fault("days", "there are %d; give %d at most.".formatted(days.size(), MOST_DAYS));
    }
    json.end();
    return new ForecastSheet(station, issued, origin, first, days);
  }
}
