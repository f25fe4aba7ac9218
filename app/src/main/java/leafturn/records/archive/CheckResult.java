package leafturn.records.archive;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.SourceText;

/**
 * What a check of a book found.
 *
 * @param sheets number of sheets
 * @param versions number of their versions
 * @param weatherDays number of days of weather
 * @param photographs number of photographs
 * @param people number of people
 * @param damages one sentence for each damage; none when the book is sound
 */
public record CheckResult(
    long sheets,
    long versions,
    long weatherDays,
    long photographs,
    long people,
    List<String> damages) {
  public CheckResult {
    damages = List.copyOf(damages);
  }

  /** True when nothing was found. */
  public boolean sound() {
    return damages.isEmpty();
  }

  /** What was checked, in a sentence. */
  public String summary() {
    return "checked "
        + counts(sheets, versions, weatherDays, photographs, people)
        + ": "
        + (sound() ? "no damage" : plain(damages.size(), "damage"));
  }

  /** How much a book or an archive holds, in words. */
  public static String counts(
      long sheets, long versions, long weatherDays, long photographs, long people) {
    return String.join(
        ", ",
        plain(sheets, "sheet"),
        plain(versions, "version"),
        weatherDays == 1 ? "1 day of weather" : weatherDays + " days of weather",
        plain(photographs, "photograph"),
        people == 1 ? "1 person" : people + " people");
  }

  /** Without grouping, as scripts may read the numbers. */
  private static String plain(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** As a JSON document. */
  public String write() {
    ObjectNode root = new ObjectMapper().createObjectNode();
    root.put("sound", sound());
    root.put("sheets", sheets).put("versions", versions).put("weatherDays", weatherDays);
    root.put("photographs", photographs).put("people", people);
    ArrayNode list = root.putArray("damages");
    damages.forEach(list::add);
    return Manifest.pretty(root);
  }

  /** Reads what {@link #write} wrote. */
  static CheckResult read(SourceText document) {
    JsonObject json = JsonObject.root(document, new Faults(document.name()));
    List<String> damages = new ArrayList<>();
    JsonValue list = json.take("damages");
    List<JsonValue> items = list == null ? null : list.items();
    for (JsonValue item : items == null ? List.<JsonValue>of() : items) {
      damages.add(String.valueOf(item.content()));
    }
    CheckResult result =
        new CheckResult(
            count(json, "sheets"),
            count(json, "versions"),
            count(json, "weatherDays"),
            count(json, "photographs"),
            count(json, "people"),
            damages);
    json.flag("sound");
    json.end();
    return result;
  }

  private static long count(JsonObject json, String name) {
    return (long) json.requiredNumber(name, 0, 1e15, "");
  }
}
