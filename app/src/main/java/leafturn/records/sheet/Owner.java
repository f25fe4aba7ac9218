package leafturn.records.sheet;

import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Where something belongs: to a lawn, or to a property as a whole. Exactly one of the two.
 *
 * @param property id of the property, or null
 * @param lawn id of the lawn, or null
 */
record Owner(@Nullable String property, @Nullable String lawn) {

  static Owner read(JsonObject json) {
    String property = json.id("property", "the property it belongs to");
    String lawn = json.id("lawn", "the lawn it belongs to");
    if (json.has("property") && json.has("lawn")) {
      json.fault("property", "it stands beside lawn; keep one of them.");
    } else if (!json.has("property") && !json.has("lawn")) {
      json.missing("lawn", "the id of the lawn it belongs to, or property with a property's");
    }
    return new Owner(property, lawn);
  }
}
