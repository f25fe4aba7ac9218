package leafturn.web;

import java.util.HashMap;
import java.util.Map;

/** The form of a new property. */
final class NewProperty {
  private NewProperty() {}

  /** Sallow House with a lawn and a programme, but for what is given; changeable. */
  static Map<String, String> fields(Map<String, String> given) {
    Map<String, String> fields = new HashMap<>();
    fields.put("property.name", "Sallow House");
    fields.put("property.latitudeDeg", "40.8");
    fields.put("property.timeZone", "America/New_York");
    fields.put("lawn.name", "Lawn");
    fields.put("lawn.grass", "tall fescue");
    fields.put("lawn.soil.texture", "loam");
    fields.put("programme.mowing.heightMm", "76");
    fields.put("programme.mowing.clippings.returnedShare", "1");
    fields.putAll(given);
    return fields;
  }
}
