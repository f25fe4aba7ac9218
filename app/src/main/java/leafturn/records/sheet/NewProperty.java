package leafturn.records.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Predicate;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.LawnFile;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * A property as it is begun: the place, its first lawn, and how that is kept. Its document holds
 * the three sheets under {@code property}, {@code lawn} and {@code programme}, without what can be
 * worked out: ids, addresses, and the day from which the programme holds.
 *
 * @param propertyId id of the new property's sheet
 * @param lawnId id of the new lawn's sheet
 * @param programmeId id of the new programme's sheet
 */
public record NewProperty(
    String propertyId,
    Property property,
    String lawnId,
    LawnSheet lawn,
    String programmeId,
    ProgrammeSheet programme) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /**
   * Reads a document.
   *
   * @param station id of the weather station that stands for the property, or null
   * @param from the day from which the programme holds
   * @param taken tells whether an address is taken in the book
   * @throws InputException with every fault of the three parts, each naming its field with the part
   *     before it, for instance {@code lawn.areaM2}
   */
  public static NewProperty read(
      SourceText document, @Nullable String station, LocalDate from, Predicate<String> taken) {
    JsonNode root = parsed(document);
    String propertyId = UUID.randomUUID().toString();
    String lawnId = UUID.randomUUID().toString();
    ObjectNode property = part(root, "property");
    property.put("address", Address.free(taken, property.path("name").asText()));
    if (station != null) {
      property.put("station", station);
    }
    ObjectNode lawn = part(root, "lawn");
    lawn.put("property", propertyId);
    String lawnAddress =
        Address.free(taken, property.path("name").asText(), lawn.path("name").asText());
    lawn.put("address", lawnAddress);
    ObjectNode programme = part(root, "programme");
    programme.put("lawn", lawnId).put("from", from.toString());
    usualHeight(programme.withObject("/mowing"), lawn.path("grass").asText());

    List<Fault> faults = new ArrayList<>();
    Property readProperty = read(Kind.PROPERTY, property, faults);
    LawnSheet readLawn = read(Kind.LAWN, lawn, faults);
    ProgrammeSheet readProgramme = read(Kind.PROGRAMME, programme, faults);
    if (readProperty == null || readLawn == null || readProgramme == null) {
      throw InputException.of(faults);
    }
    checkTogether(readProperty, readLawn, readProgramme);
    String programmeId = UUID.randomUUID().toString();
    return new NewProperty(propertyId, readProperty, lawnId, readLawn, programmeId, readProgramme);
  }

  /** The cut height follows the grass where none was chosen. */
  static void usualHeight(ObjectNode mowing, String grass) {
    for (Species species : Species.values()) {
      if (!mowing.has("heightMm") && species.commonName().equals(grass)) {
        mowing.put("heightMm", Parameters.of(species).get("Href"));
      }
    }
  }

  /** What is right one by one may yet not go together, for instance the soil's water contents. */
  private static void checkTogether(Property property, LawnSheet lawn, ProgrammeSheet programme) {
    try {
      LawnFile.read(LawnDocument.compose(property, null, lawn, programme));
    } catch (InputException wrong) {
      throw InputException.of(
          wrong.faultsByField().stream().map(fault -> under("lawn", fault)).toList());
    }
  }

  /** Reads a part; its faults are added, and it is null then. */
  static <C extends Content> @Nullable C read(Kind<C> kind, ObjectNode part, List<Fault> faults) {
    try {
      return kind.read(new SourceText(kind.name(), part.toString()));
    } catch (InputException wrong) {
      wrong.faultsByField().forEach(fault -> faults.add(under(kind.name(), fault)));
      return null;
    }
  }

  private static Fault under(String part, Fault fault) {
    String field = fault.field().isEmpty() ? part : part + "." + fault.field();
    return new Fault(field, fault.sentence(), fault.placed());
  }

  static ObjectNode part(JsonNode root, String name) {
    return root.path(name).isObject() ? ((ObjectNode) root.path(name)).deepCopy() : emptyObject();
  }

  static ObjectNode emptyObject() {
    return JsonNodeFactory.instance.objectNode();
  }

  static JsonNode parsed(SourceText document) {
    try {
      return JSON.readTree(document.text());
    } catch (JsonProcessingException e) {
      throw new InputException(document.name() + ": this is not valid JSON.");
    }
  }
}
