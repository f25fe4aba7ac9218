package leafturn.records.exchange;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.records.exchange.Column.Type;

/** The columns of a table of properties and their lawns, one lawn a row. */
public final class PropertyColumns {
  static final String PROPERTY = "property";
  static final String LAWN = "lawn";
  static final String PROGRAMME = "programme";
  static final String STATION = "station";

  /** All of them. */
  public static final List<Column> ALL =
      List.of(
          property("property", "name", Type.TEXT, "name of the property"),
          property("latitude", "latitudeDeg", Type.NUMBER, "degrees north"),
          property("longitude", "longitudeDeg", Type.NUMBER, "degrees east"),
          property("elevation_m", "elevationM", Type.NUMBER, "elevation above the sea")
              .measuring(Measure.DISTANCE, "elevation_ft"),
          property("time_zone", "timeZone", Type.TEXT, "time zone"),
          Column.place(STATION, "weather station of the book, by its name"),
          property("property_note", "note", Type.TEXT, "note on the property"),
          lawn("lawn", "name", Type.TEXT, "name of the lawn"),
          lawn("grass", "grass", Type.TEXT, "grass, of a mixture the one there is most of"),
          lawn("mixture", "mixture", Type.MIXTURE, "further grasses of a mixture, per cent"),
          lawn("area_m2", "areaM2", Type.NUMBER, "area").measuring(Measure.AREA, "area_ft2"),
          lawn("habit", "habit", Type.TEXT, "how it is kept, in a sentence"),
          lawn("slope_percent", "slopePercent", Type.NUMBER, "slope, per cent"),
          lawn("shade_fraction", "shadeFraction", Type.FRACTION, "fraction in shade")
              .orCalled("shade"),
          lawn("texture", "soil.texture", Type.TEXT, "texture of the soil"),
          lawn(
              "organic_matter_percent",
              "soil.organicMatterPercent",
              Type.NUMBER,
              "organic matter, per cent"),
          lawn("phosphorus_ppm", "soil.phosphorusPpm", Type.NUMBER, "soil test P, mg/kg"),
          lawn("potassium_ppm", "soil.potassiumPpm", Type.NUMBER, "soil test K, mg/kg"),
          lawn("extractant", "soil.extractant", Type.TEXT, "extractant of the soil test"),
          lawn("deck_width_mm", "mower.deckWidthMm", Type.NUMBER, "cutting width of the mower")
              .measuring(Measure.HEIGHT, "deck_width_in"),
          lawn("bag_litres", "mower.bagLitres", Type.NUMBER, "volume of the mower's bag")
              .measuring(Measure.VOLUME, "bag_gal"),
          lawn("speed_km_h", "mower.speedKmPerH", Type.NUMBER, "mowing speed")
              .measuring(Measure.GROUND_SPEED, "speed_mph"),
          lawn("deck_type", "mower.deckType", Type.TEXT, "type of the deck"),
          lawn("lawn_note", "note", Type.TEXT, "note on the lawn"),
          programme("cut_height_mm", "mowing.heightMm", Type.NUMBER, "cut height")
              .measuring(Measure.HEIGHT, "cut_height_in"),
          programme("every_days", "mowing.trigger.everyDays", Type.NUMBER, "days between mowings"),
          programme("season_from", "mowing.from", Type.DAY_OF_YEAR, "first day of mowing"),
          programme("season_to", "mowing.to", Type.DAY_OF_YEAR, "last day of mowing"),
          programme(
              "clippings",
              "mowing.clippings.returnedShare",
              Type.CLIPPINGS,
              "clippings returned or collected"),
          programme(
              "irrigation_share",
              "irrigation.shareOfDemand",
              Type.FRACTION,
              "fraction of the water demand given back"),
          programme("mown_by", "mownBy", Type.TEXT, "who mows"),
          programme("programme_from", "from", Type.DATE, "first day of the programme"));

  private PropertyColumns() {}

  private static Column property(String name, String path, Type type, String meaning) {
    return Column.of(PROPERTY, name, path, type, meaning);
  }

  private static Column lawn(String name, String path, Type type, String meaning) {
    return Column.of(LAWN, name, path, type, meaning);
  }

  private static Column programme(String name, String path, Type type, String meaning) {
    return Column.of(PROGRAMME, name, path, type, meaning);
  }
}
