package leafturn.web;

import java.util.List;
import java.util.Objects;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.book.BookReading;
import leafturn.records.book.Sheet;
import leafturn.records.shape.Outline;
import leafturn.records.sheet.BedSheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * Checks that what belongs together lies together on the earth. What the book held so already does
 * not hold up a correction of something else.
 */
final class PlaceCheck {
  private PlaceCheck() {}

  /**
   * Checks a lawn, a bed or a property that is about to be written.
   *
   * @param id id of its sheet
   * @throws InputException with the fault
   */
  static void check(BookReading reading, String id, Content content) {
    if (content instanceof LawnSheet lawn) {
      LawnSheet before = found(reading, Kind.LAWN, id);
      outline(reading, lawn.property(), lawn.outline(), before == null ? null : before.outline());
    } else if (content instanceof BedSheet bed) {
      BedSheet before = found(reading, Kind.BED, id);
      outline(reading, bed.property(), bed.outline(), before == null ? null : before.outline());
    } else if (content instanceof Property property) {
      station(reading, found(reading, Kind.PROPERTY, id), property);
    }
  }

  private static <C extends Content> @Nullable C found(
      BookReading reading, Kind<C> kind, @Nullable String id) {
    return id == null ? null : reading.find(kind, id).map(Sheet::content).orElse(null);
  }

  private static void outline(
      BookReading reading, String propertyId, @Nullable Outline outline, @Nullable Outline before) {
    Property property = found(reading, Kind.PROPERTY, propertyId);
    if (outline == null || property == null || outline.equals(before)) {
      return;
    }
    property.farFrom(outline).ifPresent(sentence -> fault("outline", sentence));
  }

  private static void station(BookReading reading, @Nullable Property before, Property property) {
    WeatherStation station = found(reading, Kind.STATION, property.station());
    boolean already =
        before != null
            && Objects.equals(before.station(), property.station())
            && before.latitudeDeg() == property.latitudeDeg();
    if (station != null && !already) {
      property
          .oppositeSeasons(station)
          .ifPresent(
              sentence ->
                  fault(
                      "station",
                      sentence
                          + " Choose a record from the property’s side of the equator, give a daily"
                          + " file of its own, or choose none for now; or correct the latitude here"
                          + " or on the record’s page, which is negative in the south."));
    }
  }

  private static void fault(String field, String sentence) {
    throw InputException.of(List.of(new Fault(field, sentence, field + ": " + sentence)));
  }
}
