package leafturn.records.book;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Range;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.Numbers;
import leafturn.records.SourceText;
import leafturn.records.WeatherLimits;
import org.jspecify.annotations.Nullable;

/**
 * The weather of one day as a station measured it.
 *
 * @param day the day
 * @param values the quantities that were measured, in the units of {@link Quantity}
 */
public record StationDay(LocalDate day, Map<Quantity, Double> values) {
  public StationDay {
    EnumMap<Quantity, Double> copy = new EnumMap<>(Quantity.class);
    copy.putAll(values);
    values = Map.copyOf(copy);
  }

  /** Names of the quantities in the document of a day, in their units. */
  private static final Map<Quantity, String> FIELDS = fields();

  private static Map<Quantity, String> fields() {
    Map<Quantity, String> fields = new EnumMap<>(Quantity.class);
    fields.put(Quantity.MINIMUM_C, "minimumC");
    fields.put(Quantity.MAXIMUM_C, "maximumC");
    fields.put(Quantity.RAIN_MM, "rainMm");
    fields.put(Quantity.WIND_M_PER_S, "windMPerS");
    fields.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, "humidityMaximumPercent");
    fields.put(Quantity.HUMIDITY_MINIMUM_PERCENT, "humidityMinimumPercent");
    fields.put(Quantity.DEW_POINT_C, "dewPointC");
    fields.put(Quantity.RADIATION_MJ_PER_M2, "radiationMjPerM2");
    return fields;
  }

  /** Name of a quantity in the document of a day. */
  public static String field(Quantity quantity) {
    return FIELDS.getOrDefault(quantity, "");
  }

  /**
   * Reads the JSON document of a day: {@code day} and at least one quantity.
   *
   * @throws leafturn.records.InputException with every fault, each naming its field
   */
  public static StationDay read(SourceText document) {
    JsonObject json = JsonObject.root(document, new Faults(document.name()));
    LocalDate day = json.requiredDate("day");
    Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
    FIELDS.forEach(
        (quantity, field) -> {
          Double value = number(json, quantity, field);
          if (value != null) {
            values.put(quantity, value);
          }
        });
    if (FIELDS.values().stream().noneMatch(json::has)) {
      json.missing("minimumC", "at least one thing that was measured");
    }
    refuseCrossed(json, values, Quantity.MINIMUM_C, Quantity.MAXIMUM_C);
    refuseCrossed(
        json, values, Quantity.HUMIDITY_MINIMUM_PERCENT, Quantity.HUMIDITY_MAXIMUM_PERCENT);
    json.end();
    return new StationDay(day, values);
  }

  /** The JSON document of the day, always written in the same way. */
  public String document() {
    ObjectNode json = JsonNodeFactory.instance.objectNode().put("day", day.toString());
    FIELDS.forEach(
        (quantity, field) -> {
          Double value = values.get(quantity);
          if (value != null) {
            json.put(field, value);
          }
        });
    return json.toString();
  }

  private static @Nullable Double number(JsonObject json, Quantity quantity, String field) {
    Range limits = WeatherLimits.of(quantity);
    return json.number(field, limits.low(), limits.high(), limits.unit());
  }

  private static void refuseCrossed(
      JsonObject json, Map<Quantity, Double> values, Quantity low, Quantity high) {
    Double lower = values.get(low);
    Double upper = values.get(high);
    if (lower != null && upper != null && lower > upper) {
      json.fault(
          field(high),
          "%s lies below the lowest value of the day, %s; correct one of them."
              .formatted(Numbers.plain(upper), Numbers.plain(lower)));
    }
  }
}
