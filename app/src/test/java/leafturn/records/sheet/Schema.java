package leafturn.records.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A JSON Schema of the documentation, checked against documents: the part of draft 2020-12 that our
 * schemas use. A word of a schema that is not known here fails the test.
 */
public final class Schema {
  private static final Path FOLDER = Path.of("..", "docs", "schemas");
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Set<String> ANNOTATIONS =
      Set.of("$schema", "$defs", "title", "description", "format");

  private final Map<String, JsonNode> files = new LinkedHashMap<>();
  private final Set<String> fieldsMet = new LinkedHashSet<>();

  /** A schema and the file it stands in. */
  public record Place(String file, JsonNode schema) {}

  /** The root of a schema file. */
  public Place root(String file) {
    return new Place(
        file,
        files.computeIfAbsent(
            file,
            name -> {
              try {
                return JSON.readTree(FOLDER.resolve(name).toFile());
              } catch (IOException e) {
                throw new AssertionError("no schema " + name, e);
              }
            }));
  }

  /** The schema itself, or the one it refers to. */
  Place resolved(Place place) {
    JsonNode reference = place.schema().get("$ref");
    if (reference == null) {
      return place;
    }
    String[] parts = reference.textValue().split("#", 2);
    String file = parts[0].isEmpty() ? place.file() : parts[0];
    JsonNode target = root(file).schema().at(parts[1]);
    if (target.isMissingNode()) {
      throw new AssertionError(place.file() + " refers to nothing: " + reference);
    }
    return resolved(new Place(file, target));
  }

  /** Fields of documents checked so far, by path without list positions. */
  Set<String> fieldsMet() {
    return fieldsMet;
  }

  /** What in a document the schema does not allow. */
  public List<String> faults(String path, Place unresolved, JsonNode value) {
    Place place = resolved(unresolved);
    List<String> faults = new ArrayList<>();
    place
        .schema()
        .properties()
        .forEach(
            word -> {
              if (!holds(path, place, word.getKey(), value, faults)) {
                faults.add("%s: %s against %s".formatted(path, value, word));
              }
            });
    return faults;
  }

  private boolean holds(
      String path, Place place, String word, JsonNode value, List<String> faults) {
    JsonNode rule = place.schema().get(word);
    return switch (word) {
      case "type" -> isOfType(rule.textValue(), value);
      case "enum" -> isAmong(rule, value);
      case "const" -> rule.equals(value);
      case "minimum" -> !value.isNumber() || value.doubleValue() >= rule.doubleValue();
      case "maximum" -> !value.isNumber() || value.doubleValue() <= rule.doubleValue();
      case "minLength" -> !value.isTextual() || value.textValue().length() >= rule.intValue();
      case "maxLength" -> !value.isTextual() || value.textValue().length() <= rule.intValue();
      case "pattern" -> !value.isTextual() || value.textValue().matches(rule.textValue());
      case "minItems" -> !value.isArray() || value.size() >= rule.intValue();
      case "maxItems" -> !value.isArray() || value.size() <= rule.intValue();
      case "uniqueItems" -> !value.isArray() || Set.copyOf(items(value)).size() == value.size();
      case "required" -> items(rule).stream().allMatch(name -> value.has(name.textValue()));
      case "oneOf" -> fitting(path, place, rule, value) == 1;
      case "anyOf" -> fitting(path, place, rule, value) >= 1;
      case "allOf" -> fitting(path, place, rule, value) == rule.size();
      case "if" -> !fits(path, place, rule, value) || fits(path, place, "then", value);
      case "then" -> true;
      case "items" -> {
        value.forEach(item -> faults.addAll(faults(path + "[]", at(place, rule), item)));
        yield true;
      }
      case "properties", "additionalProperties" -> {
        if (word.equals("properties") || !place.schema().has("properties")) {
          value
              .properties()
              .forEach(field -> faults.addAll(member(path, place, field.getKey(), value)));
        }
        yield true;
      }
      default -> word.equals("$ref") || ANNOTATIONS.contains(word);
    };
  }

  private List<String> member(String path, Place place, String name, JsonNode value) {
    JsonNode known = place.schema().path("properties").path(name);
    if (!known.isMissingNode()) {
      String memberPath = path.isEmpty() ? name : path + "." + name;
      fieldsMet.add(memberPath);
      return faults(memberPath, at(place, known), value.get(name));
    }
    JsonNode others = place.schema().path("additionalProperties");
    if (others.isObject()) {
      return faults(path + "." + name, at(place, others), value.get(name));
    }
    return others.isBoolean() && !others.booleanValue()
        ? List.of(path + ": the schema has no field " + name)
        : List.of();
  }

  private int fitting(String path, Place place, JsonNode rules, JsonNode value) {
    return (int) items(rules).stream().filter(rule -> fits(path, place, rule, value)).count();
  }

  private boolean fits(String path, Place place, JsonNode rule, JsonNode value) {
    return faults(path, at(place, rule), value).isEmpty();
  }

  private boolean fits(String path, Place place, String word, JsonNode value) {
    return fits(path, place, place.schema().path(word), value);
  }

  private static Place at(Place place, JsonNode schema) {
    return new Place(place.file(), schema);
  }

  private static List<JsonNode> items(JsonNode list) {
    List<JsonNode> items = new ArrayList<>();
    list.forEach(items::add);
    return items;
  }

  private static boolean isAmong(JsonNode values, JsonNode value) {
    return items(values).contains(value);
  }

  private static boolean isOfType(String type, JsonNode value) {
    return switch (type) {
      case "null" -> value.isNull();
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "boolean" -> value.isBoolean();
      case "number" -> value.isNumber();
      case "integer" -> value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue());
      default -> throw new AssertionError("no type " + type);
    };
  }
}
