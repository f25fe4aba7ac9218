package leafturn.records.sheet;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.Numbers;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.Outline;
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
  /** Farther than a place given to half a degree may be off, km. */
  private static final double FAR_KM = 100;

  /** Nearer to each other than this there are no opposite seasons, degrees of latitude. */
  private static final double TROPICS_DEG = 10;

  public Property {
    name = Names.tidied(name);
  }

  /** This property with another station, whose id is given. */
  public Property following(String stationId) {
    return new Property(
        name, address, latitudeDeg, longitudeDeg, elevationM, timeZone, stationId, note);
  }

  /**
   * That an outline lies too far away to belong to this property, in a sentence; empty where it may
   * belong, or has no place on the earth. Without a longitude only latitudes are compared.
   */
  public Optional<String> farFrom(Outline outline) {
    Anchor there = outline.anchor();
    if (there == null) {
      return Optional.empty();
    }
    double longitude = longitudeDeg == null ? there.longitudeDeg() : longitudeDeg;
    double km = there.distanceKm(longitude, latitudeDeg);
    if (km <= FAR_KM) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "the outline lies at latitude %.2f, longitude %.2f, but the property at latitude %.2f%s,"
                + " %,.0f km away. %sMend the file, or the property’s place.",
            there.latitudeDeg(),
            there.longitudeDeg(),
            latitudeDeg,
            longitudeDeg == null
                ? ""
                : String.format(Locale.ROOT, ", longitude %.2f", longitudeDeg),
            km,
            liesNearSwapped(there)
                ? "The two numbers of its positions may be swapped: GeoJSON gives longitude first,"
                    + " then latitude. "
                : ""));
  }

  /** Whether a place whose longitude and latitude are swapped would lie near this property. */
  private boolean liesNearSwapped(Anchor there) {
    if (!Anchor.isFit(there.latitudeDeg(), there.longitudeDeg())) {
      return false;
    }
    Anchor swapped = new Anchor(there.latitudeDeg(), there.longitudeDeg());
    double longitude = longitudeDeg == null ? swapped.longitudeDeg() : longitudeDeg;
    return swapped.distanceKm(longitude, latitudeDeg) <= FAR_KM;
  }

  /**
   * That a record comes from the other side of the equator, where the seasons are the opposite, in
   * a sentence; empty where it does not, or nobody said where it comes from.
   */
  public Optional<String> oppositeSeasons(WeatherStation record) {
    Double there = record.latitudeDeg();
    return there == null || !hasOppositeSeasons(latitudeDeg, record)
        ? Optional.empty()
        : Optional.of(
            "the record “%s” comes from latitude %s, the property lies at latitude %s, in the other"
                    .formatted(record.name(), Numbers.plain(there), Numbers.plain(latitudeDeg))
                + " hemisphere: its summer is winter there, so no advice would hold.");
  }

  /** Whether a record comes from the other side of the equator than a latitude, °, well apart. */
  private static boolean hasOppositeSeasons(double latitudeDeg, WeatherStation record) {
    Double there = record.latitudeDeg();
    return there != null && there * latitudeDeg < 0 && Math.abs(there - latitudeDeg) > TROPICS_DEG;
  }

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
