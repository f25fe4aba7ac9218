package leafturn.records.archive;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * What an archive says of itself in {@code archive.json}.
 *
 * @param madeAt when it was made
 * @param madeBy the program that made it, with its version
 * @param counts how much it holds, by word: sheets, versions, weatherDays, photographs, people
 * @param members all other files in it
 */
public record Manifest(
    Instant madeAt, String madeBy, Map<String, Long> counts, List<ArchiveMember> members) {
  /** The name of the format. */
  static final String FORMAT = "leafturn-book";

  /** The version of the format that this program writes; it reads this one and all before. */
  static final int VERSION = 1;

  /** What is counted. */
  static final List<String> COUNTED =
      List.of("sheets", "versions", "weatherDays", "photographs", "people");

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final double MOST = 1e15;
  private static final int LONGEST_TEXT = 200;

  public Manifest {
    counts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    members = List.copyOf(members);
  }

  /** How many of something it holds. */
  public long count(String word) {
    return counts.getOrDefault(word, 0L);
  }

  /** The sheets of a damaged book that were set aside, by their kinds and ids. */
  public List<String> setAside() {
    return members.stream()
        .flatMap(member -> Members.sheetSetAside(member.name()).stream())
        .toList();
  }

  /** The member of a name, or null. */
  @Nullable ArchiveMember member(String name) {
    return members.stream().filter(member -> member.name().equals(name)).findFirst().orElse(null);
  }

  /** True when another archive holds the same book, whenever it was made. */
  boolean sameBookAs(Manifest other) {
    return members.equals(other.members);
  }

  /** The document, indented for people. */
  String write() {
    ObjectNode root = JSON.createObjectNode();
    root.put("format", FORMAT).put("version", VERSION);
    root.put("madeAt", madeAt.toString()).put("madeBy", madeBy);
    ObjectNode counted = root.putObject("counts");
    counts.forEach(counted::put);
    ArrayNode list = root.putArray("members");
    for (ArchiveMember member : members) {
      ObjectNode one = list.addObject();
      one.put("name", member.name());
      if (member.derived()) {
        one.put("derived", true);
      }
      one.put("count", member.count()).put("bytes", member.bytes()).put("sha256", member.sha256());
    }
    return pretty(root);
  }

  static String pretty(JsonNode root) {
    return root.toPrettyString().replace("\r\n", "\n") + "\n";
  }

  /**
   * Reads the document.
   *
   * @throws InputException when it is none, or of a format this program does not know
   */
  static Manifest read(SourceText document) {
    Faults faults = new Faults(document.name());
    JsonObject root = JsonObject.root(document, faults);
    checkFormat(document.name(), root, faults);
    Instant madeAt = Times.read(root, "madeAt");
    String madeBy = root.requiredText("madeBy", LONGEST_TEXT, "the program that made it");
    JsonObject counted = root.object("counts");
    Map<String, Long> counts = new LinkedHashMap<>();
    COUNTED.forEach(word -> counts.put(word, whole(counted, word)));
    counted.refuseOthers();
    List<ArchiveMember> members = new ArrayList<>();
    root.objects("members").forEach(member -> members.add(member(member)));
    root.end();
    return new Manifest(madeAt, madeBy, counts, members);
  }

  private static void checkFormat(String name, JsonObject root, Faults faults) {
    String format = root.text("format");
    Integer version = root.wholeNumber("version", 1, Integer.MAX_VALUE, "");
    if (!FORMAT.equals(format) || version == null) {
      faults.throwIfAny();
      throw new InputException(
          name + ": this is no archive of a book; its format is not \"" + FORMAT + "\".");
    }
    if (version > VERSION) {
      throw new InputException(
          ("%s: the archive has version %d of its format, but this program reads up to %d;"
                  + " import it with the Leafturn that made it (%s) or a newer one.")
              .formatted(
                  name, version, VERSION, Faults.quoted(String.valueOf(root.text("madeBy")))));
    }
  }

  private static ArchiveMember member(JsonObject json) {
    Boolean derived = json.flag("derived");
    ArchiveMember member =
        new ArchiveMember(
            json.requiredText("name", LONGEST_TEXT, "the name of a file"),
            derived != null && derived,
            whole(json, "count"),
            whole(json, "bytes"),
            json.requiredText("sha256", 64, "a SHA-256 in hexadecimal"));
    json.refuseOthers();
    return member;
  }

  private static long whole(JsonObject json, String name) {
    return (long) json.requiredNumber(name, 0, MOST, "");
  }
}
