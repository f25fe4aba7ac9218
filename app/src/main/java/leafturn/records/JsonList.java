package leafturn.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A list of a JSON document, read item by item. An item that is wrong is reported and left out. */
public final class JsonList {
  private final List<JsonValue> items;
  private final Faults faults;

  JsonList(List<JsonValue> items, Faults faults) {
    this.items = items;
    this.faults = faults;
  }

  /** The items as numbers within limits. */
  public List<Double> numbers(double low, double high, String unit) {
    return read(item -> item.number(low, high, unit, sentence -> fault(item, sentence)));
  }

  /** The items as texts that are not blank and not longer than a limit. */
  public List<String> texts(int mostCharacters) {
    return read(
        item -> {
          if (item.content() instanceof String text && !text.isBlank()) {
            if (text.strip().length() <= mostCharacters) {
              return text.strip();
            }
            fault(
                item,
                "it has %d characters; shorten it to %d.".formatted(text.length(), mostCharacters));
          } else {
            fault(item, item.shown() + " is not usable; give a text in quotation marks.");
          }
          return null;
        });
  }

  /** The items as lists of their own. */
  public List<JsonList> lists() {
    return read(
        item -> {
          List<JsonValue> inner = item.items();
          if (inner == null) {
            fault(item, item.shown() + " is not a list; give its items in square brackets.");
          }
          return inner == null ? null : new JsonList(inner, faults);
        });
  }

  /** The items as constants of an enumeration by their words; one given twice is a fault. */
  public <E extends Enum<E>> List<E> choices(Class<E> type) {
    return different(
        item -> {
          E constant = item.content() instanceof String text ? Choice.of(text, type) : null;
          if (constant == null) {
            fault(item, Choice.fault(item, type));
          }
          return constant;
        });
  }

  /** The items as days in ISO form; one given twice is a fault. */
  public List<LocalDate> dates() {
    return different(
        item -> {
          LocalDate day = item.content() instanceof String text ? Dates.parse(text) : null;
          if (day == null) {
            fault(item, "%s is no day; write it as 2015-05-28.".formatted(item.shown()));
          }
          return day;
        });
  }

  /** The items as texts that are not blank nor too long; one given twice is a fault. */
  public List<String> texts(int mostCharacters, String right) {
    return different(
        item -> {
          if (item.content() instanceof String text
              && !text.isBlank()
              && text.length() <= mostCharacters) {
            return text.strip();
          }
          fault(
              item,
              "%s is not usable; give %s of up to %d characters."
                  .formatted(item.shown(), right, mostCharacters));
          return null;
        });
  }

  /** The items as ids of other sheets; one given twice is a fault. */
  public List<String> ids(String whose) {
    return different(
        item -> {
          if (item.content() instanceof String text && Ids.isId(text)) {
            return text;
          }
          fault(item, "%s is no id; give the id of %s.".formatted(item.shown(), whose));
          return null;
        });
  }

  private <T> List<T> different(Function<JsonValue, @Nullable T> reader) {
    List<T> found = new ArrayList<>();
    for (JsonValue item : items) {
      T value = reader.apply(item);
      if (value != null && found.contains(value)) {
        fault(item, item.shown() + " stands in the list already; keep one of them.");
      } else if (value != null) {
        found.add(value);
      }
    }
    return found;
  }

  private <T> List<T> read(Function<JsonValue, @Nullable T> reader) {
    List<T> found = new ArrayList<>();
    for (JsonValue item : items) {
      T value = reader.apply(item);
      if (value != null) {
        found.add(value);
      }
    }
    return found;
  }

  private void fault(JsonValue item, String sentence) {
    faults.add(item.line(), item.path(), sentence);
  }
}
