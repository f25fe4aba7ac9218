package leafturn.records;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where a value stands in a JSON document. A chain of steps that is put into words only when a
 * message needs it: a document may hold a great many values under a very long name.
 */
final class JsonPath {
  /** The place of a document's root. */
  static final JsonPath ROOT = new JsonPath(null, null, 0);

  private static final Pattern PLAIN_NAME = Pattern.compile("[A-Za-z_][A-Za-z0-9_-]{0,99}");

  private final @Nullable JsonPath parent;
  private final @Nullable String name;
  private final int index;

  private JsonPath(@Nullable JsonPath parent, @Nullable String name, int index) {
    this.parent = parent;
    this.name = name;
    this.index = index;
  }

  /** The place of a member of the object here. */
  JsonPath member(String memberName) {
    return new JsonPath(this, memberName, 0);
  }

  /** The place of an item of the list here. */
  JsonPath item(int itemIndex) {
    return new JsonPath(this, null, itemIndex);
  }

  /** The place in words, for instance {@code feeding[0].on}; empty for the root. */
  String words() {
    if (parent == null) {
      return "";
    }
    String before = parent.words();
    return name == null ? before + "[" + index + "]" : memberWords(before, name);
  }

  /** The words for a member of an object whose words are known. */
  static String memberWords(String object, String name) {
    String shown = PLAIN_NAME.matcher(name).matches() ? name : Faults.quoted(name);
    return object.isEmpty() ? shown : object + "." + shown;
  }
}
