package leafturn.records.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;

/** Where a document says something else than another one, among what it says at all. */
final class Differences {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Differences() {}

  /**
   * A field in which they differ.
   *
   * @param path of the field
   * @param there what the other document says there; missing where it says nothing
   */
  record Difference(String path, JsonNode there) {
    /**
     * What the other document says, in words.
     *
     * @param column that holds such values
     * @param units in which its numbers are written
     */
    String words(Column column, Units units) {
      if (there.isMissingNode()) {
        return "nothing";
      }
      if (column.type() == Column.Type.MIXTURE) {
        return '"' + MixtureCell.text(there) + '"';
      }
      if (!there.isNumber()) {
        return '"' + there.asText() + '"';
      }
      return column.measure() == null
          ? there.decimalValue().stripTrailingZeros().toPlainString()
          : column.measure().told(there.doubleValue(), units);
    }
  }

  static List<Difference> between(JsonNode said, String other) {
    List<Difference> differences = new ArrayList<>();
    try {
      compare("", said, JSON.readTree(other), differences);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the document of a sheet is not JSON", e);
    }
    return differences;
  }

  private static void compare(
      String path, JsonNode said, JsonNode other, List<Difference> differences) {
    for (var field : said.properties()) {
      String place = path.isEmpty() ? field.getKey() : path + "." + field.getKey();
      JsonNode there = other.path(field.getKey());
      if (field.getValue().isObject()) {
        compare(place, field.getValue(), there, differences);
      } else if (!same(field.getValue(), there)) {
        differences.add(new Difference(place, there));
      }
    }
  }

  private static boolean same(JsonNode said, JsonNode there) {
    if (said.isArray()) {
      return alike(said, there);
    }
    return said.isNumber() && there.isNumber()
        ? said.doubleValue() == there.doubleValue()
        : said.asText().equalsIgnoreCase(there.asText()) && there.isValueNode();
  }

  /** True for lists of the same things, whatever their order. */
  private static boolean alike(JsonNode said, JsonNode there) {
    boolean alike = said.size() == there.size();
    for (JsonNode one : said) {
      boolean found = false;
      for (JsonNode other : there) {
        found |= one.isObject() ? sameFields(one, other) : same(one, other);
      }
      alike &= found;
    }
    return alike;
  }

  private static boolean sameFields(JsonNode said, JsonNode there) {
    return said.properties().stream()
        .allMatch(field -> same(field.getValue(), there.path(field.getKey())));
  }
}
