package leafturn.records.sheet;

import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A record of daily weather and where it was measured.
 *
 * @param name what its users call it, 1 to 80 characters
 * @param origin where the record comes from, 1 to 300 characters
 * @param windHeightM height of the wind measurement above ground, m, 0.5 to 100
 * @param latitudeDeg degrees north, -90 to 90, or null
 * @param longitudeDeg degrees east, -180 to 180, or null
 * @param elevationM m above sea level, -430 to 5500, or null
 * @param standIn true for the record of another place that stands in for one's own
 */
public record WeatherStation(
    String name,
    String origin,
    double windHeightM,
    @Nullable Double latitudeDeg,
    @Nullable Double longitudeDeg,
    @Nullable Double elevationM,
    boolean standIn)
    implements Content {

  static WeatherStation read(JsonObject json) {
    String name = json.requiredText("name", Limits.NAME, "what its users call it");
    String origin = json.requiredText("origin", Limits.SENTENCE, "where the record comes from");
    double windHeight = json.requiredNumber("windHeightM", 0.5, 100, "m");
    Double latitude = json.number("latitudeDeg", -90, 90, "° north");
    Double longitude = json.number("longitudeDeg", -180, 180, "° east");
    Double elevation = json.number("elevationM", -430, 5500, "m");
    Boolean standIn = json.flag("standIn");
    json.end();
    return new WeatherStation(
        name, origin, windHeight, latitude, longitude, elevation, standIn != null && standIn);
  }
}
