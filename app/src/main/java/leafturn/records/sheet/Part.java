package leafturn.records.sheet;

import java.util.function.Function;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/** A part of a document that may be left out. */
final class Part {
  private Part() {}

  /** What the object in a field says, or null when it is missing or, after a fault, no object. */
  static <T> @Nullable T read(
      JsonObject json, String name, Function<JsonObject, @Nullable T> reader) {
    JsonObject section = json.object(name);
    return json.holdsObject(name) ? reader.apply(section) : null;
  }
}
