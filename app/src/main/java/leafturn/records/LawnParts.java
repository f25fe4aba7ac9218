package leafturn.records;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Lawn;
import org.jspecify.annotations.Nullable;

/** Parts of a lawn's description that files and the book's sheets read alike. */
public final class LawnParts {
  private static final int MOST_SPIN_UP_YEARS = 200;

  private LawnParts() {}

  /** The grass by its common name in the required field {@code grass}, or null after a fault. */
  public static @Nullable Species grass(JsonObject json) {
    String name = json.text("grass");
    if (name == null) {
      if (!json.has("grass")) {
        json.missing("grass", "one of " + Species.names());
      }
      return null;
    }
    Optional<Species> species = Species.named(name);
    if (species.isEmpty()) {
      List<String> names = Arrays.stream(Species.values()).map(Species::commonName).toList();
      json.fault(
          "grass",
          "%s is not a grass known here; %s"
              .formatted(Faults.quoted(name), NearestName.advice(name, names)));
    }
    return species.orElse(null);
  }

  /** The area in {@code areaM2}, m2, 1 to 1,000,000, or null. */
  public static @Nullable Double areaM2(JsonObject json) {
    return json.number("areaM2", 1, 1e6, "m²");
  }

  /** The share of the light taken by shade in {@code shadeFraction}, 0 to 0.9, or null. */
  public static @Nullable Double shadeFraction(JsonObject json) {
    return json.number("shadeFraction", 0, 0.9, "share of the light taken");
  }

  /** The years run before the first reported day in {@code spinUpYears}, 0 to 200, or null. */
  public static @Nullable Integer spinUpYears(JsonObject json) {
    return json.wholeNumber("spinUpYears", 0, MOST_SPIN_UP_YEARS, "years");
  }

  /** The mower's figures in its section; other fields are left to the caller. */
  public static Lawn.Mower mower(JsonObject section) {
    Double deckWidth = section.number("deckWidthMm", 200, 4000, "mm");
    Double bag = section.number("bagLitres", 5, 5000, "litres");
    Double speed = section.number("speedKmPerH", 0.5, 20, "km/h");
    Boolean doubleCut = section.flag("doubleCut");
    return new Lawn.Mower(deckWidth, bag, speed, doubleCut != null && doubleCut);
  }

  /**
   * Model parameters of a lawn's own in their section.
   *
   * @param grass decides what is possible; null when it is not known
   * @param notes takes a sentence for each value outside the usual ones
   */
  public static Map<String, Double> parameters(
      JsonObject section, @Nullable Species grass, List<String> notes) {
    Map<String, Double> given = section.numbers();
    if (grass != null) {
      given.forEach((name, value) -> checkParameter(section, grass, Map.entry(name, value), notes));
    }
    return given;
  }

  private static void checkParameter(
      JsonObject section, Species grass, Map.Entry<String, Double> set, List<String> notes) {
    String name = set.getKey();
    double value = set.getValue();
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
