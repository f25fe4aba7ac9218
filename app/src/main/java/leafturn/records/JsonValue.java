package leafturn.records;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A value of a JSON document with its place, so that a message can name it.
 *
 * @param place its place in the document
 * @param line line it starts on, from 1
 * @param content {@code Map<String, JsonValue>}, {@code List<JsonValue>}, String, Double, Boolean,
 *     or null for JSON's null
 */
public record JsonValue(JsonPath place, int line, @Nullable Object content) {
  private static final Pattern BEGUN_AS_NUMBER = Pattern.compile("[-+]?[.,]?[\\d½¼¾]");
  private static final String AS_DECIMAL = "; write it as 3.5, a decimal without a unit";

  /** The path from the root, for instance {@code feeding[0].on}; empty for the root. */
  public String path() {
    return place.words();
  }

  /** The members by name when this is an object, else null. */
  @SuppressWarnings("unchecked") // JsonTree puts nothing else into a map
  public @Nullable Map<String, JsonValue> members() {
    return content instanceof Map<?, ?> ? (Map<String, JsonValue>) content : null;
  }

  /** The items when this is an array, else null. */
  @SuppressWarnings("unchecked") // JsonTree puts nothing else into a list
  public @Nullable List<JsonValue> items() {
    return content instanceof List<?> ? (List<JsonValue>) content : null;
  }

  /** The finite number within limits that stands here, or null after telling what is wrong. */
  @Nullable Double number(double low, double high, String unit, Consumer<String> fault) {
    if (!(content instanceof Double number) || !Double.isFinite(number)) {
      String comma = content instanceof String text ? Numbers.commaFault(text) : null;
      fault.accept(
          comma == null
              ? "%s is not a number; %s"
                  .formatted(shown(), right(low, high, unit, begunAsNumber() ? AS_DECIMAL : ""))
              : comma);
      return null;
    }
    if (number < low || number > high) {
      fault.accept(
          "%s is out of range; %s".formatted(Numbers.plain(number), right(low, high, unit, "")));
      return null;
    }
    return number;
  }

  private static String right(double low, double high, String unit, String how) {
    return "give a number %s%s%s.".formatted(Numbers.range(low, high), Numbers.comma(unit), how);
  }

  /** True for a text as "3 1/2", "3½" or "0.75 in". */
  private boolean begunAsNumber() {
    return content instanceof String text && BEGUN_AS_NUMBER.matcher(text).lookingAt();
  }

  /** What stands there, for a message. */
  public String shown() {
    if (content instanceof Map<?, ?>) {
      return "an object";
    }
    if (content instanceof List<?>) {
      return "a list";
    }
    if (content instanceof String text) {
      return Faults.quoted(text);
    }
    return content instanceof Double number ? Numbers.plain(number) : String.valueOf(content);
  }
}
