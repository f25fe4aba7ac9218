package leafturn.web;

import java.util.stream.Stream;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Measure;
import leafturn.records.book.StationDay;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** The forms of the weather pages. */
final class WeatherForms {
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
