package leafturn.records;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Constants of an enumeration as documents write them: "side discharge" for SIDE_DISCHARGE. */
public final class Choice {
  private Choice() {}

  /** A constant whose word is not its name. */
  public interface Worded {
    /** The word in documents. */
    String word();
  }

  /** The word of a constant: its own, or its name in lower case with blanks. */
  public static String word(Enum<?> constant) {
    return constant instanceof Worded worded
        ? worded.word()
        : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** All words of an enumeration, in its order. */
  public static <E extends Enum<E>> List<String> words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Choice::word).toList();
  }

  /** The constant of a word, whatever its case, or null. */
  public static <E extends Enum<E>> @Nullable E of(String word, Class<E> type) {
    String wanted = word.strip();
    for (E constant : type.getEnumConstants()) {
      if (word(constant).equalsIgnoreCase(wanted)) {
        return constant;
      }
    }
    return null;
  }

  /** The constant in a field, or null when it is missing or wrong. */
  public static <E extends Enum<E>> @Nullable E read(JsonObject json, String name, Class<E> type) {
    JsonValue value = json.take(name);
    if (value == null) {
      return null;
    }
    E constant = value.content() instanceof String text ? of(text, type) : null;
    if (constant == null) {
      json.fault(name, fault(value, type));
    }
    return constant;
  }

  /** The constant in a field by a word of its own, or null when it is missing or wrong. */
  public static <E> @Nullable E read(
      JsonObject json, String name, E[] values, Function<E, String> word) {
    String text = json.text(name);
    if (text == null) {
      return null;
    }
    for (E value : values) {
      if (word.apply(value).equals(text)) {
        return value;
      }
    }
    List<String> words = Arrays.stream(values).map(word).toList();
    json.fault(
        name, "%s is unknown; %s".formatted(Faults.quoted(text), NearestName.advice(text, words)));
    return null;
  }

  /** All words of constants that name themselves, with commas. */
  public static <E> String words(E[] values, Function<E, String> word) {
    return String.join(", ", Arrays.stream(values).map(word).toList());
  }

  /** The constant in a field that must be there; the first one where a fault was reported. */
  public static <E extends Enum<E>> E required(JsonObject json, String name, Class<E> type) {
    E constant = readRequired(json, name, type);
    return constant == null ? type.getEnumConstants()[0] : constant;
  }

  /** The constant in a field that must be there, or null where a fault was reported. */
  public static <E extends Enum<E>> @Nullable E readRequired(
      JsonObject json, String name, Class<E> type) {
    E constant = read(json, name, type);
    if (constant == null && !json.has(name)) {
      json.missing(name, "one of " + String.join(", ", words(type)));
    }
    return constant;
  }

  /** What is wrong with a value that is no word of an enumeration. */
  static <E extends Enum<E>> String fault(JsonValue value, Class<E> type) {
    List<String> words = words(type);
    String all = "give one of %s.".formatted(String.join(", ", words));
    Optional<String> near =
        value.content() instanceof String text ? NearestName.of(text, words) : Optional.empty();
    return "%s is not usable here; %s"
        .formatted(
            value.shown(),
            near.map(word -> "did you mean %s? Otherwise %s".formatted(word, all)).orElse(all));
  }
}
