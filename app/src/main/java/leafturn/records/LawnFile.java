package leafturn.records;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.Circumstances;
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
    boolean southern = site != null && site.latitudeDeg() < 0;
    var programme = new ProgrammeSection(root, usual.get("Href"), southern, notes).read();
    Circumstances known =
        root.has("known") ? new KnownSection(root.object("known")).read() : Circumstances.NONE;
    Lawn.Mower mower = root.has("mower") ? mower(root.object("mower")) : null;
    Double areaM2 = LawnParts.areaM2(root);
    Double shadeFraction = LawnParts.shadeFraction(root);
    Defaults defaults = new Defaults("the lawn");
    int spinUpYears =
        defaults.value(
            LawnParts.spinUpYears(root),
            DEFAULT_SPIN_UP_YEARS,
            "spinUpYears " + DEFAULT_SPIN_UP_YEARS);
    double shade = defaults.number(shadeFraction, 0, "shadeFraction", "");
    notes.addAll(defaults.notes());
    Map<String, Double> parameters = LawnParts.parameters(root.object("parameters"), grass, notes);
    root.refuseOthers();
    faults.throwIfAny();
    if (site == null || grass == null || soil == null || programme == null) {
      throw new IllegalStateException("a part of the lawn is missing without a fault");
    }
    Lawn.Ground ground = new Lawn.Ground(grass, soil, shade, areaM2, mower);
    Lawn lawn = new Lawn(site, ground, programme, spinUpYears, parameters);
    checkTogether(lawn);
    return new LawnReading(lawn, notes, known);
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
    Double latitude = site.number("latitudeDeg", -90, 90, "° north");
    if (root.holdsObject("site") && !site.has("latitudeDeg")) {
      site.missing("latitudeDeg", "° north from -90 to 90");
    }
    Defaults defaults = new Defaults("site");
    double elevation =
        defaults.number(site.number("elevationM", -430, 5500, "m"), 0, "elevationM", "m");
    double windHeight =
        defaults.number(site.number("windHeightM", 0.5, 100, "m"), 2, "windHeightM", "m");
    Double longitude = site.number("longitudeDeg", -180, 180, "° east");
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
    Species grass = LawnParts.grass(root);
    if (grass != null && !grass.runAgainstStudies()) {
      notes.add(
          "The parameters of %s are assumed: no field study of it was run against the model."
              .formatted(grass.commonName()));
    }
    return grass;
  }

  private static Lawn.Mower mower(JsonObject section) {
    Lawn.Mower mower = LawnParts.mower(section);
    section.refuseOthers();
    return mower;
  }
}
