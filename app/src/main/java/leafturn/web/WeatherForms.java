package leafturn.web;

import java.util.stream.Stream;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Measure;
import leafturn.records.book.StationDay;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** The forms of the weather pages. */
final class WeatherForms {
  /** A station. */
  static final FormShape STATION =
      FormShape.of(
          Field.text("name", "Name").hint("What you call it, for instance the place.").needed(),
          Field.text("origin", "Where its record comes from")
              .hint(
                  "Your own gauge, or who measured: it is named under every page that rests on it.")
              .needed(),
          Field.number(
                  "windHeightM",
                  "Height of the wind measurement above the ground",
                  Measure.DISTANCE)
              .hint("Two metres (6.6 ft) for most weather stations on a lawn, ten on airfields.")
              .needed(),
          Field.number("latitudeDeg", "Latitude", "degrees, south negative"),
          Field.number("longitudeDeg", "Longitude", "degrees, west negative"),
          Field.number("elevationM", "Elevation", Measure.DISTANCE),
          Field.flag("standIn", "It stands in for a place whose weather was not measured")
              .hint("Then each page that rests on it says so."));

  /** What was measured on a day. */
  static final FormShape MEASURED =
      FormShape.of(
          number(Quantity.MINIMUM_C, "Lowest temperature", Measure.TEMPERATURE),
          number(Quantity.MAXIMUM_C, "Highest temperature", Measure.TEMPERATURE),
          number(Quantity.RAIN_MM, "Rain and melted snow", Measure.WATER)
              .hint("0 for a dry day; empty when nobody read the gauge."),
          number(Quantity.WIND_M_PER_S, "Mean wind", Measure.WIND_SPEED),
          percent(Quantity.HUMIDITY_MINIMUM_PERCENT, "Lowest humidity"),
          percent(Quantity.HUMIDITY_MAXIMUM_PERCENT, "Highest humidity"),
          number(Quantity.DEW_POINT_C, "Mean dew point", Measure.TEMPERATURE),
          Field.number(
              StationDay.field(Quantity.RADIATION_MJ_PER_M2), "Global radiation", "MJ/m²"));

  /** A day that is typed in. */
  static final FormShape DAY =
      FormShape.of(
          Stream.concat(Stream.of(Field.date("day", "Day").needed()), MEASURED.fields().stream())
              .toArray(Field[]::new));

  private WeatherForms() {}

  private static Field number(Quantity quantity, String label, Measure measure) {
    return Field.number(StationDay.field(quantity), label, measure);
  }

  private static Field percent(Quantity quantity, String label) {
    return Field.number(StationDay.field(quantity), label, "%");
  }
}
