package leafturn.records.sheet;

import java.time.DateTimeException;
import java.time.ZoneId;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Somewhere with lawns and beds, and the people who use them.
 *
 * @param name what its people call it, 1 to 80 characters
 * @param address its name in addresses, see {@link Address}
 * @param latitudeDeg degrees north, -90 to 90
 * @param longitudeDeg degrees east, -180 to 180, or null
 * @param elevationM m above sea level, -430 to 5500, or null
 * @param timeZone IANA time zone in which its days begin
 * @param station id of the weather station whose record stands for it, or null
 * @param note anything to remember; may be null
 */
public record Property(
    String name,
    String address,
    double latitudeDeg,
    @Nullable Double longitudeDeg,
    @Nullable Double elevationM,
    String timeZone,
    @Nullable String station,
    @Nullable String note)
    implements Content {

  static Property read(JsonObject json) {
    String name = json.requiredText("name", Limits.NAME, "what its people call it");
    String address = Address.read(json);
    double latitude = json.requiredNumber("latitudeDeg", -90, 90, "° north");
    Double longitude = json.number("longitudeDeg", -180, 180, "° east");
    Double elevation = json.number("elevationM", -430, 5500, "m");
    String zone = json.requiredText("timeZone", Limits.NAME, "an IANA name such as Europe/Paris");
    if (!zone.isEmpty() && !isZone(zone)) {
      json.fault(
          "timeZone",
          Faults.quoted(zone) + " is not a time zone; give an IANA name such as Europe/Paris.");
    }
    String station = json.has("station") ? json.requiredId("station", "a weather station") : null;
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new Property(name, address, latitude, longitude, elevation, zone, station, note);
  }

  private static boolean isZone(String name) {
    try {
      return !ZoneId.of(name).getId().isEmpty();
    } catch (DateTimeException e) {
      return false;
    }
  }
}
