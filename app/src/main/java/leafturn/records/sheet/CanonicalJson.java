package leafturn.records.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import org.jspecify.annotations.Nullable;

/**
 * A JSON document in the one form in which equal documents are equal texts: members by name, whole
 * numbers without a fraction, nothing for null.
 */
public final class CanonicalJson {
  private static final double LARGEST_WHOLE = 1e15;

  private CanonicalJson() {}

  /** The object in a field; an empty one where it is missing or a fault was reported. */
  static ObjectNode read(JsonObject json, String name) {
    JsonValue value = json.take(name);
    Map<String, JsonValue> members = value == null ? null : value.members();
    if (members != null) {
      return object(json, members);
    }
    if (value != null) {
      json.fault(name, value.shown() + " is not usable; give an object in braces.");
    }
    return JsonNodeFactory.instance.objectNode();
  }

  private static ObjectNode object(JsonObject json, Map<String, JsonValue> members) {
    Map<String, JsonNode> sorted = new TreeMap<>();
    members.forEach((name, member) -> put(sorted, name, node(json, member)));
    return of(sorted);
  }

  private static JsonNode node(JsonObject json, JsonValue value) {
    Map<String, JsonValue> members = value.members();
    if (members != null) {
      return object(json, members);
    }
    List<JsonValue> items = value.items();
    if (items != null) {
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      items.forEach(item -> list.add(node(json, item)));
      return list;
    }
    return scalar(json, value);
  }

  private static JsonNode scalar(JsonObject json, JsonValue value) {
    if (value.content() instanceof Double number) {
      if (!Double.isFinite(number)) {
        json.fault(value, "it is not a number that can be kept; give a finite one.");
        return LongNode.valueOf(0);
      }
      return number(number);
    }
    if (value.content() instanceof Boolean flag) {
      return BooleanNode.valueOf(flag);
    }
    if (value.content() instanceof String text) {
      return TextNode.valueOf(text);
    }
    json.fault(value, "null is not a value; leave the field out instead.");
    return TextNode.valueOf("");
  }

  private static void put(Map<String, JsonNode> members, String name, @Nullable JsonNode value) {
    if (value != null && !value.isNull()) {
      members.put(name, value);
    }
  }

  private static ObjectNode of(Map<String, JsonNode> sorted) {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    sorted.forEach(object::set);
    return object;
  }

  private static JsonNode number(double number) {
    return number == Math.rint(number) && Math.abs(number) < LARGEST_WHOLE
        ? LongNode.valueOf((long) number)
        : DoubleNode.valueOf(number);
  }

  /** A document in this form. */
  public static JsonNode of(JsonNode node) {
    if (node.isObject()) {
      Map<String, JsonNode> sorted = new TreeMap<>();
      node.properties().forEach(member -> put(sorted, member.getKey(), of(member.getValue())));
      return of(sorted);
    }
    if (node.isArray()) {
      ArrayNode list = JsonNodeFactory.instance.arrayNode();
      node.forEach(item -> list.add(of(item)));
      return list;
    }
    return node.isNumber() ? number(node.doubleValue()) : node;
  }
}
