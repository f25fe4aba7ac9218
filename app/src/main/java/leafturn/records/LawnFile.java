package leafturn.records;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.weather.Site;
import org.jspecify.annotations.Nullable;

/**
 * Reads a lawn description, a JSON document of the schema {@code docs/schemas/lawn.schema.json}.
 */
public final class LawnFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 1_000_000;

  private static final int DEFAULT_SPIN_UP_YEARS = 4;
  private static final int MOST_SPIN_UP_YEARS = 200;

  private final Faults faults;
  private final JsonObject root;
  private final List<String> notes = new ArrayList<>();

  private LawnFile(SourceText source) {
    this.faults = new Faults(source.name());
    this.root = JsonObject.root(source, faults);
  }

  /**
   * Reads a lawn description from a file.
   *
   * @throws InputException with one sentence for each fault of the file
   */
  public static LawnReading read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a lawn description from text.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static LawnReading read(SourceText source) {
    return new LawnFile(source).reading();
  }

  private LawnReading reading() {
    Site site = site();
    Species grass = grass();
    Parameters usual = Parameters.of(grass == null ? Species.TALL_FESCUE : grass);
    var soil = new SoilSection(root.object("soil"), usual, notes).read();
    var programme = new ProgrammeSection(root, usual.get("Href"), notes).read();
    Lawn.Mower mower = root.has("mower") ? mower(root.object("mower")) : null;
    Double areaM2 = root.number("areaM2", 1, 1e6, "m2");
    Double shadeFraction = root.number("shadeFraction", 0, 0.9, "share of the light taken");
    Defaults defaults = new Defaults("the lawn");
    int spinUpYears =
        defaults.value(
            root.wholeNumber("spinUpYears", 0, MOST_SPIN_UP_YEARS, "years"),
            DEFAULT_SPIN_UP_YEARS,
            "spinUpYears " + DEFAULT_SPIN_UP_YEARS);
    double shade = defaults.number(shadeFraction, 0, "shadeFraction", "");
    notes.addAll(defaults.notes());
    Map<String, Double> parameters = parameters(grass);
    root.refuseOthers();
    faults.throwIfAny();
    if (site == null || grass == null || soil == null || programme == null) {
      throw new IllegalStateException("a part of the lawn is missing without a fault");
    }
    Lawn.Ground ground = new Lawn.Ground(grass, soil, shade, areaM2, mower);
    Lawn lawn = new Lawn(site, ground, programme, spinUpYears, parameters);
    checkTogether(lawn);
    return new LawnReading(lawn, notes);
  }

  /** Parameters may be right one by one and yet not go together. */
  private void checkTogether(Lawn lawn) {
    try {
      new LawnEquations(LawnParameters.of(lawn));
    } catch (IllegalArgumentException e) {
      root.fault("parameters", e.getMessage() + ".");
      faults.throwIfAny();
    }
  }

  private @Nullable Site site() {
    if (!root.has("site")) {
      root.missing("site", "an object with at least latitudeDeg");
      return null;
    }
    JsonObject site = root.object("site");
    Double latitude = site.number("latitudeDeg", -90, 90, "degrees north");
    if (root.holdsObject("site") && !site.has("latitudeDeg")) {
      site.missing("latitudeDeg", "degrees north from -90 to 90");
    }
    Defaults defaults = new Defaults("site");
    double elevation =
        defaults.number(site.number("elevationM", -430, 5500, "m"), 0, "elevationM", "m");
    double windHeight =
        defaults.number(site.number("windHeightM", 0.5, 100, "m"), 2, "windHeightM", "m");
    Double longitude = site.number("longitudeDeg", -180, 180, "degrees east");
    ZoneId zone = timeZone(site);
    site.refuseOthers();
    notes.addAll(defaults.notes());
    return latitude == null ? null : new Site(latitude, elevation, windHeight, longitude, zone);
  }

  private static @Nullable ZoneId timeZone(JsonObject site) {
    String name = site.text("timeZone");
    if (name == null) {
      return null;
    }
    try {
      return ZoneId.of(name);
    } catch (DateTimeException e) {
      site.fault(
          "timeZone",
          "%s is not a time zone; %s"
              .formatted(
                  Faults.quoted(name),
                  NearestName.of(name, ZoneId.getAvailableZoneIds())
                      .map(near -> "did you mean " + near + "?")
                      .orElse("give an IANA name such as Europe/Paris.")));
      return null;
    }
  }

  private @Nullable Species grass() {
    String name = root.text("grass");
    if (name == null) {
      if (!root.has("grass")) {
        root.missing("grass", "one of " + Species.names());
      }
      return null;
    }
    Optional<Species> species = Species.named(name);
    if (species.isEmpty()) {
      List<String> names = Arrays.stream(Species.values()).map(Species::commonName).toList();
      root.fault(
          "grass",
          "%s is not a grass known here; %s"
              .formatted(Faults.quoted(name), NearestName.advice(name, names)));
      return null;
    }
    if (!species.get().runAgainstStudies()) {
      notes.add(
          "The parameters of %s are assumed: no field study of it was run against the model."
              .formatted(species.get().commonName()));
    }
    return species.get();
  }

  private static Lawn.Mower mower(JsonObject mower) {
    Double deckWidth = mower.number("deckWidthMm", 200, 4000, "mm");
    Double bag = mower.number("bagLitres", 5, 5000, "litres");
    Double speed = mower.number("speedKmPerH", 0.5, 20, "km/h");
    Boolean doubleCut = mower.flag("doubleCut");
    mower.refuseOthers();
    return new Lawn.Mower(deckWidth, bag, speed, doubleCut != null && doubleCut);
  }

  private Map<String, Double> parameters(@Nullable Species grass) {
    JsonObject section = root.object("parameters");
    Map<String, Double> given = section.numbers();
    if (grass != null) {
      given.forEach((name, value) -> checkParameter(section, grass, name, value));
    }
    return given;
  }

  private void checkParameter(JsonObject section, Species grass, String name, double value) {
    Optional<Parameter> known = ParameterTable.find(name, grass);
    if (known.isEmpty()) {
      section.fault(
          name,
          "there is no such parameter; "
              + NearestName.of(name, ParameterTable.names())
                  .map(near -> "did you mean " + near + "?")
                  .orElse("'leafturn sources' lists them."));
      return;
    }
    Parameter parameter = known.get();
    String usual =
        "usual values run %s %s"
            .formatted(Numbers.range(parameter.low(), parameter.high()), parameter.unit());
    if (!parameter.possible(value)) {
      section.fault(
          name, "%s is out of range for the model; %s.".formatted(Numbers.plain(value), usual));
    } else if (!parameter.plausible(value)) {
      notes.add("The parameter %s is set to %s; %s.".formatted(name, Numbers.plain(value), usual));
    }
  }
}
