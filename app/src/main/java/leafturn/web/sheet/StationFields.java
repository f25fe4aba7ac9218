package leafturn.web.sheet;

import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.web.form.Field;
import leafturn.web.form.FormShape;

/** Fields of a weather station, on its own page as among the sheets of the book. */
public final class StationFields {
  private StationFields() {}

  /**
   * All of them in order.
   *
   * @param units of the reader
   */
  public static FormShape shape(Units units) {
    String usual = units == Units.US ? "6.6 ft" : "2 m";
    return FormShape.of(
        Field.text("name", "Name").hint("What you call it, for instance the place.").needed(),
        Field.text("origin", "Where its record comes from")
            .hint("Your own gauge, or who measured: it is named wherever its weather is shown.")
            .needed(),
        Field.number("windHeightM", "Height of the wind measurement", Measure.DISTANCE)
            .hint(
                "Above ground. %s, for which the evaporation equation is made, at most stations on a lawn; five times that on airfields."
                    .formatted(usual))
            .needed(),
        Field.number("latitudeDeg", "Latitude", "°, south negative"),
        Field.number("longitudeDeg", "Longitude", "°, west negative"),
        Field.number("elevationM", "Height above sea level", Measure.DISTANCE),
        Field.flag("standIn", "It stands in for a place whose weather was not measured")
            .hint("Then each page that rests on it says so."));
  }
}
