package leafturn.web;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Numbers;
import leafturn.records.SoilTextures;
import leafturn.records.book.Sheet;
import leafturn.records.round.ExampleStation;
import leafturn.records.sheet.WeatherStation;
import leafturn.reports.UnitWords;
import leafturn.web.form.Field;
import leafturn.web.form.Field.Choice;
import leafturn.web.form.Form;
import leafturn.web.form.FormShape;
import leafturn.web.form.FormShape.Group;
import leafturn.web.sheet.LawnForm;
import leafturn.web.sheet.ProgrammeForm;

/** The form that begins a property: only what must be known, with what stands in for the rest. */
final class NewPropertyForm {
  /** The choice of the example record in the field {@link #STATION}. */
  static final String EXAMPLE = "example";

  /** The choice to begin without a record. */
  static final String NONE = "none";

  static final String STATION = "station";

  static final String NAME = "property.name";

  /** A daily record that comes along; it wins over the choice. */
  static final String FILE = "weatherFile";

  private static final double USUAL_DECK_MM = 530;
  private static final double USUAL_BAG_LITRES = 60;
  private static final double WALKING_KM_PER_H = 4;

  /** The same three as US readers know them, in in, gal and mi/h. */
  private static final String US_DECK = "21";

  private static final String US_BAG = "16";
  private static final String US_WALKING = "2.5";

  private NewPropertyForm() {}

  /**
   * The time zone that is filled in.
   *
   * @param of whose it is, in words
   */
  record Zone(ZoneId id, String of) {}

  /** Whether a record of the book can be chosen; then none is chosen before somebody does. */
  static boolean hasOwn(List<Sheet<WeatherStation>> stations) {
    return stations.stream().anyMatch(station -> !station.content().standIn());
  }

  /**
   * The form with its defaults filled in.
   *
   * @param third largest share of the height that one cut should take, in words
   */
  static Form begun(List<Sheet<WeatherStation>> stations, Zone zone, Units units, String third) {
    return Form.blank(shape(stations, zone, units, third), units)
        .with("property.timeZone", zone.id().getId())
        .with(STATION, hasOwn(stations) ? "" : EXAMPLE)
        .with("lawn.name", "Lawn")
        .with("lawn.grass", Species.TALL_FESCUE.commonName())
        .with("lawn.soil.texture", "loam")
        .with("lawn.mower.deckWidthMm", usual(units, USUAL_DECK_MM, US_DECK))
        .with("lawn.mower.bagLitres", usual(units, USUAL_BAG_LITRES, US_BAG))
        .with("lawn.mower.speedKmPerH", usual(units, WALKING_KM_PER_H, US_WALKING))
        .with("programme.mowing.clippings.returnedShare", "1");
  }

  /** What stands in for a figure, round in the reader's unit. */
  private static String usual(Units units, double metric, String us) {
    return units == Units.US ? us : Numbers.plain(metric);
  }

  /**
   * @param third largest share of the height that one cut should take, in words
   */
  static FormShape shape(
      List<Sheet<WeatherStation>> stations, Zone zone, Units units, String third) {
    return new FormShape(List.of(place(zone), weather(stations), lawn(), keeping(units, third)));
  }

  private static Group place(Zone zone) {
    return new Group(
        "The property",
        "",
        List.of(
            Field.text(NAME, "Name").hint("What its people call it.").needed(),
            Field.number("property.latitudeDeg", "Latitude", "°, south negative")
                .hint("For the length of the days and the sun. Half a degree is near enough.")
                .needed(),
            Field.number("property.longitudeDeg", "Longitude", "°, west negative")
                .hint("Left empty: hours are told by the sun, not by the clock."),
            Field.number("property.elevationM", "Height above sea level", Measure.DISTANCE)
                .hint("Left empty: sea level. It changes evaporation by a few per cent."),
            Field.text("property.timeZone", "Time zone")
                .hint(
                    "Filled in: that of %s. It says when a day begins there.".formatted(zone.of()))
                .needed()));
  }

  private static Group weather(List<Sheet<WeatherStation>> stations) {
    List<Choice> choices = new ArrayList<>();
    if (hasOwn(stations)) {
      choices.add(new Choice("", "Choose one"));
    }
    for (Sheet<WeatherStation> station : stations) {
      if (!station.content().standIn()) {
        choices.add(new Choice(station.id(), station.content().name() + whence(station.content())));
      }
    }
    choices.add(new Choice(EXAMPLE, "Example record: " + ExampleStation.ORIGIN));
    choices.add(new Choice(NONE, "None yet: there is no advice until there is a record"));
    return new Group(
        "Its weather",
        "",
        List.of(
            Field.oneOf(STATION, "Daily record", choices)
                .hint(
                    "The example lets you start at once, with weather that is not yours: pages say"
                        + " so. The advice follows a record of your own as soon as there is one.")
                .needed(),
            Field.file(FILE, "Or a daily file of its own")
                .hint(
                    "CSV or XLSX with date, tmin_c, tmax_c and rain_mm (tmin_f, tmax_f, rain_in"
                        + " too), or GHCN-Daily. It wins over the choice above.")));
  }

  private static String whence(WeatherStation record) {
    Double latitude = record.latitudeDeg();
    Double longitude = record.longitudeDeg();
    return latitude == null
        ? " (nobody said where it lies)"
        : " (latitude %s%s)"
            .formatted(
                Numbers.plain(latitude),
                longitude == null ? "" : ", longitude " + Numbers.plain(longitude));
  }

  private static Group lawn() {
    return new Group(
        "Its first lawn",
        "",
        List.of(
            Field.text("lawn.name", "Name").needed(),
            Field.oneOf("lawn.grass", "Grass", LawnForm.grasses())
                .hint("Of a mixture, the grass there is most of.")
                .needed(),
            Field.number("lawn.areaM2", "Area", Measure.AREA)
                .hint("Length times width will do. Without it there are no bags and minutes."),
            Field.oneOf(
                    "lawn.soil.texture",
                    "Soil",
                    SoilTextures.names().stream().map(Choice::of).toList())
                .hint(
                    "Loam is the middle between sand and clay, and the model's own default. Sand"
                        + " falls apart in the hand, clay rolls into a ribbon.")
                .needed(),
            Field.number("lawn.mower.deckWidthMm", "Cutting width of the mower", Measure.HEIGHT)
                .hint("Filled in: a usual push mower (common practice, no source)."),
            Field.number("lawn.mower.bagLitres", "Bag", Measure.VOLUME)
                .hint("Filled in: usual for that width (common practice, no source)."),
            Field.number("lawn.mower.speedKmPerH", "Mowing speed", Measure.GROUND_SPEED)
                .hint("Filled in: a walking pace (common practice, no source).")));
  }

  private static Group keeping(Units units, String third) {
    return new Group(
        "How it is kept",
        "",
        List.of(
            Field.number("programme.mowing.heightMm", "Cut height", Measure.HEIGHT)
                .hint(usualHeights(units)),
            Field.number("programme.mowing.trigger.everyDays", "Mown every so many days", "")
                .hint(ProgrammeForm.usualTrigger(third)),
            Field.oneOf(
                    "programme.mowing.clippings.returnedShare",
                    "Clippings so far",
                    List.of(
                        new Choice("1", units == Units.US ? "left" : "returned"),
                        new Choice("0", units == Units.US ? "bagged" : "collected"),
                        new Choice("0.5", "half and half")))
                .hint("What was done so far sets the soil and thatch the model starts from.")
                .needed()));
  }

  private static String usualHeights(Units units) {
    List<String> heights = new ArrayList<>();
    for (Species grass : Species.values()) {
      if (grass.runAgainstStudies()) {
        heights.add(
            new UnitWords(units).heightNumber(usualHeightMm(grass)) + " for " + grass.commonName());
      }
    }
    return "Left empty: the usual one of the grass, "
        + String.join(", ", heights)
        + " (the model's own heights, see Sources).";
  }

  private static double usualHeightMm(Species grass) {
    return Parameters.of(grass).get("Href");
  }
}
