package leafturn.records.sheet;

import java.util.Locale;
import java.util.Optional;
import leafturn.records.shape.Anchor;
import org.jspecify.annotations.Nullable;

/**
 * Whether a record was measured so near to a property that it may stand for its weather. The limits
 * are our judgement, no source: fronts and heat waves reach farther than 100 km, and 500 m of
 * height make the air some 3 °C colder.
 */
public final class Nearness {
  /** The limits in words. */
  public static final String LIMITS = "100 km (62 miles) or 500 m (1,640 ft) of height";

  private static final double FAR_KM = 100;
  private static final double FAR_M = 500;
  private static final double MILES_PER_KM = 0.621371;
  private static final double FEET_PER_M = 3.28084;

  private Nearness() {}

  /** True where a record is known to come from near a property; false where nobody said. */
  public static boolean isNear(Property property, WeatherStation record) {
    return record.longitudeDeg() != null
        && property.longitudeDeg() != null
        && km(property, record) <= FAR_KM
        && !(Math.abs(risesM(property, record)) > FAR_M)
        && property.oppositeSeasons(record).isEmpty();
  }

  /**
   * That a record is known to come from far away, in a sentence; empty where it does not, nobody
   * said, or it stands in for a place that was not measured, which is told by itself.
   */
  public static Optional<String> far(Property property, WeatherStation record) {
    double km = km(property, record);
    double risesM = risesM(property, record);
    boolean higher = Math.abs(risesM) > FAR_M;
    if (record.standIn()
        || !(km > FAR_KM || higher)
        || property.oppositeSeasons(record).isPresent()) {
      return Optional.empty();
    }
    String height =
        String.format(
            Locale.ROOT,
            "%,.0f m (%,.0f ft) %s",
            Math.abs(risesM),
            Math.abs(risesM) * FEET_PER_M,
            risesM > 0 ? "lower" : "higher");
    String away = km > FAR_KM ? distance(km) + " away" + (higher ? " and " + height : "") : height;
    return Optional.of(
        "the record “%s” was measured %s: beyond %s (our judgement) it need not be the weather of this property."
            .formatted(record.name(), away, LIMITS));
  }

  /**
   * That two properties lie so far apart that one record cannot be the weather of both, in a
   * sentence; empty where it may.
   *
   * @param record a record of which nobody said where it was measured
   * @param other another property that follows it
   */
  public static Optional<String> apart(Property property, WeatherStation record, Property other) {
    double km =
        km(
            property.latitudeDeg(),
            property.longitudeDeg(),
            other.latitudeDeg(),
            other.longitudeDeg());
    return record.standIn() || record.latitudeDeg() != null || km <= 2 * FAR_KM
        ? Optional.empty()
        : Optional.of(
            "nobody said where the record “%s” was measured, and %s, which follows it too, lies %s away: it cannot be the weather of both."
                .formatted(record.name(), other.name(), distance(km)));
  }

  private static String distance(double km) {
    return String.format(Locale.ROOT, "%,.0f km (%,.0f miles)", km, km * MILES_PER_KM);
  }

  /** How far a property lies above where its record was measured, m; NaN where nobody said. */
  private static double risesM(Property property, WeatherStation record) {
    Double here = property.elevationM();
    Double there = record.elevationM();
    return here == null || there == null ? Double.NaN : here - there;
  }

  private static double km(Property property, WeatherStation record) {
    Double there = record.latitudeDeg();
    return there == null
        ? Double.NaN
        : km(property.latitudeDeg(), property.longitudeDeg(), there, record.longitudeDeg());
  }

  /** Without both longitudes only latitudes are compared: it is at least so far. */
  private static double km(
      double latitudeDeg,
      @Nullable Double longitudeDeg,
      double otherLatitudeDeg,
      @Nullable Double otherLongitudeDeg) {
    return longitudeDeg == null || otherLongitudeDeg == null
        ? Anchor.distanceKm(0, latitudeDeg, 0, otherLatitudeDeg)
        : Anchor.distanceKm(longitudeDeg, latitudeDeg, otherLongitudeDeg, otherLatitudeDeg);
  }
}
