package leafturn.web.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.records.shape.Outline;
import leafturn.records.shape.OutlineText;
import org.jspecify.annotations.Nullable;

/**
 * Turns a form into a JSON document and back. What cannot be a number stays the text that was
 * typed, so that the reader of the document says what would be right.
 */
final class FormDocument {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)(?:\\[(\\d{1,3})])?");
  private static final List<String> YES_OR_NO = List.of("true", "false");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d{1,15}([.,]\\d{1,12})?|[.,]\\d{1,12})");

  /** One thousand and more to some, one and a fraction to others: asked for rather than guessed. */
  private static final Pattern PERHAPS_THOUSANDS = Pattern.compile("[-+]?[1-9]\\d{0,2},\\d{3}");

  private FormDocument() {}

  static String write(Form form, String before) {
    JsonNode old = parsed(before);
    ObjectNode root = old.isObject() ? old.deepCopy() : NODES.objectNode();
    for (Field field : form.shape().fields()) {
      if (field.type() == Field.Type.FILE) {
        continue;
      }
      put(root, field.path(), node(field, form, at(old, field.path())));
    }
    prune(root);
    return root.toString();
  }

  static Map<String, List<String>> values(FormShape shape, Units units, String document) {
    JsonNode root = parsed(document);
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (Field field : shape.fields()) {
      JsonNode node = at(root, field.path());
      List<String> typed = new ArrayList<>();
      if (field.type() == Field.Type.OUTLINE) {
        typed.add(node.isObject() ? outline(node, units) : node.asText());
      } else if (field.type() == Field.Type.NUMBERS) {
        List<String> numbers = new ArrayList<>();
        node.forEach(item -> numbers.add(typed(item, field.measure(), units)));
        typed.add(String.join(" ", numbers));
      } else if (node.isArray()) {
        node.forEach(item -> typed.add(item.asText()));
      } else if (!node.isMissingNode()) {
        typed.add(typed(node, field.measure(), units));
      }
      typed.removeIf(String::isEmpty);
      if (!typed.isEmpty()) {
        values.put(field.path(), typed);
      }
    }
    return values;
  }

  private static String outline(JsonNode node, Units units) {
    Faults faults = new Faults("outline");
    Outline outline =
        Outline.read(JsonObject.root(new SourceText("outline", node.toString()), faults));
    return outline == null ? "" : OutlineText.write(outline, units);
  }

  private static @Nullable JsonNode node(Field field, Form form, JsonNode before) {
    List<String> typed = form.values().getOrDefault(field.path(), List.of());
    if (typed.isEmpty()) {
      return null;
    }
    String first = typed.get(0);
    if (before.isValueNode() && field.measure() == null && before.asText().equals(first)) {
      return before;
    }
    return switch (field.type()) {
      case NUMBER -> number(field.measure(), form.units(), unsigned(field, form, first), before);
      case NUMBERS -> numbers(field.measure(), form.units(), first, before);
      case ONE_OF -> chosen(field, first, before);
      case FLAG -> NODES.booleanNode(first.equals("true") || first.equals("on"));
      case SOME_OF -> {
        ArrayNode list = NODES.arrayNode();
        typed.forEach(list::add);
        yield list;
      }
      case OUTLINE -> NODES.textNode(OutlineText.told(first, form.units()));
      default -> NODES.textNode(first);
    };
  }

  private static JsonNode chosen(Field field, String value, JsonNode before) {
    if (numeric(field)) {
      return number(null, Units.METRIC, value, before);
    }
    return yesOrNo(field) && YES_OR_NO.contains(value)
        ? NODES.booleanNode(Boolean.parseBoolean(value))
        : NODES.textNode(value);
  }

  private static boolean numeric(Field field) {
    return field.choices().stream().allMatch(choice -> NUMBER.matcher(choice.value()).matches());
  }

  private static boolean yesOrNo(Field field) {
    return field.choices().stream().allMatch(choice -> YES_OR_NO.contains(choice.value()));
  }

  private static JsonNode numbers(
      @Nullable Measure measure, Units units, String typed, JsonNode before) {
    ArrayNode list = NODES.arrayNode();
    for (String item : typed.split("[;\\s]+")) {
      list.add(number(measure, units, item.replaceAll(",$", ""), before.path(list.size())));
    }
    return list;
  }

  private static JsonNode number(
      @Nullable Measure measure, Units units, String typed, JsonNode before) {
    if (before.isNumber() && typed(before, measure, units).equals(typed)) {
      return before;
    }
    if (!NUMBER.matcher(typed).matches() || PERHAPS_THOUSANDS.matcher(typed).matches()) {
      return NODES.textNode(typed);
    }
    BigDecimal number = new BigDecimal(typed.replace(',', '.'));
    return DecimalNode.valueOf(measure == null ? number : measure.kept(number, units));
  }

  /** A number without the sign of per cent, which a field in per cent, or of a share, may have. */
  private static String unsigned(Field field, Form form, String typed) {
    String number = typed.endsWith("%") ? typed.substring(0, typed.length() - 1).strip() : "";
    String unit = field.unit(form.units());
    if (unit.equals("%") && NUMBER.matcher(number).matches()) {
      return number;
    }
    boolean share = unit.isEmpty() && NUMBER.matcher(number).matches();
    return share && !PERHAPS_THOUSANDS.matcher(number).matches()
        ? new BigDecimal(number.replace(',', '.'))
            .movePointLeft(2)
            .stripTrailingZeros()
            .toPlainString()
        : typed;
  }

  private static String typed(JsonNode node, @Nullable Measure measure, Units units) {
    if (!node.isNumber()) {
      return node.asText();
    }
    return measure == null
        ? node.decimalValue().stripTrailingZeros().toPlainString()
        : measure.typed(node.doubleValue(), units);
  }

  private static JsonNode at(JsonNode root, String path) {
    JsonNode node = root;
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      node = node.path(step.group(1));
      if (step.group(2) != null) {
        node = node.path(Integer.parseInt(step.group(2)));
      }
    }
    return node.isNull() ? MissingNode.getInstance() : node;
  }

  /** Puts a value at a path; null takes it away. */
  private static void put(ObjectNode root, String path, @Nullable JsonNode value) {
    ObjectNode place = root;
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      String name = step.group(1);
      boolean last = step.end() == path.length();
      String index = step.group(2);
      if (last && index == null) {
        set(place, name, value);
      } else if (index == null) {
        place = place.path(name).isObject() ? (ObjectNode) place.path(name) : place.putObject(name);
      } else {
        place = item(place, name, Integer.parseInt(index));
      }
    }
  }

  private static void set(ObjectNode place, String name, @Nullable JsonNode value) {
    if (value == null) {
      place.remove(name);
    } else {
      place.set(name, value);
    }
  }

  private static ObjectNode item(ObjectNode place, String name, int index) {
    ArrayNode list =
        place.path(name).isArray() ? (ArrayNode) place.path(name) : place.putArray(name);
    while (list.size() <= index) {
      list.addObject();
    }
    return list.get(index).isObject() ? (ObjectNode) list.get(index) : list.addObject();
  }

  /** A part of the form that was left empty is no part of the document. */
  private static void prune(JsonNode node) {
    if (node instanceof ObjectNode object) {
      object.properties().forEach(member -> prune(member.getValue()));
      object.properties().removeIf(member -> empty(member.getValue()));
    } else if (node instanceof ArrayNode list) {
      list.forEach(FormDocument::prune);
      for (int i = list.size() - 1; i >= 0; i--) {
        if (empty(list.get(i))) {
          list.remove(i);
        }
      }
    }
  }

  private static boolean empty(JsonNode node) {
    return node.isContainerNode() && node.isEmpty();
  }

  private static JsonNode parsed(String document) {
    try {
      return JSON.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("the document of a sheet is not JSON", e);
    }
  }
}
