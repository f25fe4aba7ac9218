package leafturn.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An object of a JSON document, read field by field. A field that is wrong is reported and read as
 * missing, so that the rest can still be checked. The names asked for are the valid ones: {@link
 * #refuseOthers()} reports all others.
 */
public final class JsonObject {
  private final String path;
  private final int line;
  private final Map<String, JsonValue> members;
  private final Faults faults;
  private final Set<String> asked = new LinkedHashSet<>();

  private JsonObject(
      String path, int line, @Nullable Map<String, JsonValue> members, Faults faults) {
    this.path = path;
    this.line = line;
    this.members = members == null ? Map.of() : members;
    this.faults = faults;
  }

  /** The root object of a document. */
  public static JsonObject root(SourceText source, Faults faults) {
    JsonValue root = JsonTree.read(source, faults);
    if (root.members() == null) {
      faults.add(root.line(), "it holds %s; a JSON object is expected.".formatted(root.shown()));
      faults.throwIfAny();
    }
    return new JsonObject("", root.line(), root.members(), faults);
  }

  /** True when the field is there, right or wrong. */
  public boolean has(String name) {
    asked.add(name);
    return members.containsKey(name);
  }

  /** Reports a fault of a field, or of the place where it should be. */
  public void fault(String name, String sentence) {
    JsonValue value = members.get(name);
    faults.add(value == null ? line : value.line(), JsonPath.memberWords(path, name), sentence);
  }

  /** Reports a fault of a value inside one of the fields. */
  public void fault(JsonValue value, String sentence) {
    faults.add(value.line(), value.path(), sentence);
  }

  /** Number of faults found so far in the whole document. */
  public long faultsSoFar() {
    return faults.count();
  }

  /** Reports a missing field. */
  public void missing(String name, String right) {
    fault(name, "it is missing; give " + right + ".");
  }

  /** A number within limits, or null when it is missing or wrong. */
  public @Nullable Double number(String name, double low, double high, String unit) {
    JsonValue value = take(name);
    if (value == null) {
      return null;
    }
    return value.number(low, high, unit, sentence -> fault(name, sentence));
  }

  /** A whole number within limits, or null when it is missing or wrong. */
  public @Nullable Integer wholeNumber(String name, int low, int high, String unit) {
    Double number = number(name, low, high, unit);
    if (number == null) {
      return null;
    }
    if (number != Math.rint(number)) {
      fault(
          name,
          "%s is not a whole number; give one %s%s."
              .formatted(Numbers.plain(number), Numbers.range(low, high), Numbers.comma(unit)));
      return null;
    }
    return number.intValue();
  }

  /** Text that is not blank, or null when it is missing or wrong. */
  public @Nullable String text(String name) {
    JsonValue value = take(name);
    if (value == null) {
      return null;
    }
    if (!(value.content() instanceof String text) || text.isBlank()) {
      fault(name, value.shown() + " is not usable; give a text in quotation marks.");
      return null;
    }
    return text.strip();
  }

  /** True or false, or null when it is missing or wrong. */
  public @Nullable Boolean flag(String name) {
    JsonValue value = take(name);
    if (value == null) {
      return null;
    }
    if (!(value.content() instanceof Boolean flag)) {
      fault(name, value.shown() + " is not usable; give true or false.");
      return null;
    }
    return flag;
  }

  /** The value of a field whatever it is, or null when it is missing or JSON's null. */
  public @Nullable JsonValue take(String name) {
    if (!has(name)) {
      return null;
    }
    JsonValue value = members.get(name);
    if (value != null && value.content() == null) {
      fault(name, "null is not a value; leave the field out instead.");
      return null;
    }
    return value;
  }

  /** True when the field holds JSON's null, where that is a way to say "none". */
  public boolean holdsNull(String name) {
    return has(name) && Objects.requireNonNull(members.get(name)).content() == null;
  }

  /** True when the field holds an object. */
  public boolean holdsObject(String name) {
    return has(name) && Objects.requireNonNull(members.get(name)).members() != null;
  }

  /** The object in a field; an empty one when it is missing or wrong. */
  public JsonObject object(String name) {
    JsonValue value = take(name);
    if (value != null && value.members() == null) {
      fault(name, value.shown() + " is not usable; give an object in braces.");
    }
    return new JsonObject(
        JsonPath.memberWords(path, name),
        value == null ? line : value.line(),
        value == null ? null : value.members(),
        faults);
  }

  /** The objects of a list in a field; none when it is missing or wrong. */
  public List<JsonObject> objects(String name) {
    JsonValue value = take(name);
    List<JsonValue> items = value == null ? List.of() : value.items();
    if (items == null) {
      fault(name, "it is not a list; give objects in square brackets.");
      return List.of();
    }
    List<JsonObject> objects = new ArrayList<>();
    for (JsonValue item : items) {
      if (item.members() == null) {
        faults.add(item.line(), item.path(), item.shown() + " is not usable; give an object.");
      } else {
        objects.add(new JsonObject(item.path(), item.line(), item.members(), faults));
      }
    }
    return objects;
  }

  /** The list in a field; an empty one when it is missing or wrong. */
  public JsonList list(String name) {
    JsonValue value = take(name);
    List<JsonValue> items = value == null ? List.of() : value.items();
    if (items == null) {
      fault(name, "it is not a list; give its items in square brackets.");
    }
    return new JsonList(items == null ? List.of() : items, faults);
  }

  /** Reports a list that is missing or empty. */
  public void requireItems(String name, String right) {
    if (!has(name)) {
      missing(name, right);
    } else if (!holdsSomething(name)) {
      fault(name, "it is empty; give " + right + ".");
    }
  }

  /** True when the field is there, right or wrong, and no empty list. */
  public boolean holdsSomething(String name) {
    JsonValue value = members.get(name);
    return has(name) && (value == null || value.items() == null || !value.items().isEmpty());
  }

  /** All fields as numbers by name; those that are no numbers are reported. */
  public Map<String, Double> numbers() {
    Map<String, Double> numbers = new LinkedHashMap<>();
    for (String name : members.keySet()) {
      Double number = number(name, -Double.MAX_VALUE, Double.MAX_VALUE, "");
      if (number != null) {
        numbers.put(name, number);
      }
    }
    return numbers;
  }

  /** Reports every field that nobody asked for, with the name that was probably meant. */
  public void refuseOthers() {
    for (String name : members.keySet()) {
      if (!asked.contains(name)) {
        fault(name, "there is no such field; " + NearestName.advice(name, asked));
      }
    }
  }

  /**
   * Ends the reading of a document: reports fields that nobody asked for and then throws when
   * anything was found, so that what follows may rely on every required value.
   *
   * @throws InputException with every fault
   */
  public void end() {
    refuseOthers();
    faults.throwIfAny();
  }

  /** Text that must be there and not be longer than a limit; empty where a fault was reported. */
  public String requiredText(String name, int mostCharacters, String right) {
    String text = text(name, mostCharacters);
    if (text == null && !has(name)) {
      missing(name, right);
    }
    return text == null ? "" : text;
  }

  /** Text not longer than a limit, or null when it is missing or wrong. */
  public @Nullable String text(String name, int mostCharacters) {
    String text = text(name);
    if (text != null && text.length() > mostCharacters) {
      fault(
          name, "it has %d characters; shorten it to %d.".formatted(text.length(), mostCharacters));
      return null;
    }
    return text;
  }

  /** A number within limits that must be there; NaN where a fault was reported. */
  public double requiredNumber(String name, double low, double high, String unit) {
    Double number = number(name, low, high, unit);
    if (number == null && !has(name)) {
      missing(name, "a number %s%s".formatted(Numbers.range(low, high), Numbers.comma(unit)));
    }
    return number == null ? Double.NaN : number;
  }

  /** A date within {@link Dates}' limits, or null when it is missing or wrong. */
  public @Nullable LocalDate date(String name) {
    String text = text(name);
    LocalDate day = text == null ? null : Dates.parse(text);
    if (text != null && day == null) {
      fault(name, Dates.fault(text));
    }
    return day;
  }

  /** A date that must be there; 1 January 1970 where a fault was reported. */
  public LocalDate requiredDate(String name) {
    LocalDate day = date(name);
    if (day == null && !has(name)) {
      missing(name, "a date such as 2015-05-28");
    }
    return day == null ? LocalDate.EPOCH : day;
  }

  /** The id of another sheet that must be there; empty where a fault was reported. */
  public String requiredId(String name, String whose) {
    String id = text(name);
    if (id == null && !has(name)) {
      missing(name, "the id of " + whose);
    } else if (id != null && !Ids.isId(id)) {
      fault(name, Faults.quoted(id) + " is no id; give the id of " + whose + ".");
    }
    return id == null ? "" : id;
  }

  /** The id of another sheet, or null when it is missing or wrong. */
  public @Nullable String id(String name, String whose) {
    return has(name) ? requiredId(name, whose) : null;
  }
}
