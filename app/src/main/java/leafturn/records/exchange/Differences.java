package leafturn.records.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;

/** Where a document says something else than another one, among what it says at all. */
final class Differences {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Differences() {}

  /**
   * A field in which they differ.
   *
   * @param path of the field
   * @param other what the other document says there, in words
   */
  record Difference(String path, String other) {}

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
        differences.add(new Difference(place, there.isMissingNode() ? "nothing" : words(there)));
      }
    }
  }

  private static boolean same(JsonNode said, JsonNode there) {
    return said.isNumber() && there.isNumber()
        ? said.doubleValue() == there.doubleValue()
        : said.asText().equalsIgnoreCase(there.asText()) && there.isValueNode();
  }

  private static String words(JsonNode value) {
    return value.isNumber()
        ? value.decimalValue().stripTrailingZeros().toPlainString()
        : '"' + value.asText() + '"';
  }
}
