package leafturn.records;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads a round: which lawns an adviser looks after, in which files they are described and logged,
 * and the weather they share. A JSON document of the schema {@code docs/schemas/round.schema.json}.
 */
public final class RoundFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 1_000_000;

  private static final Pattern SLUG = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private final Faults faults;
  private final JsonObject root;

  /**
   * A round.
   *
   * @param adviser whose round it is
   * @param standing what a reader must know about it, for instance that it is invented; may be
   *     empty
   * @param day the day it is for
   * @param weather file of daily weather, beside the round's own file
   * @param weatherOrigin where that weather comes from
   * @param site the location or station in it, or null when it has only one
   * @param lawns in the order of the file
   */
  public record Round(
      String adviser,
      String standing,
      LocalDate day,
      String weather,
      String weatherOrigin,
      @Nullable String site,
      List<Entry> lawns) {
    public Round {
      lawns = List.copyOf(lawns);
    }
  }

  /**
   * One lawn of a round.
   *
   * @param slug its name in addresses
   * @param property the property it lies on
   * @param lawn its own name there
   * @param habit how it is kept, in a sentence
   * @param description file of the lawn description, beside the round's own file
   * @param log file of its log, beside the round's own file
   */
  public record Entry(
      String slug, String property, String lawn, String habit, String description, String log) {}

  private RoundFile(SourceText source) {
    this.faults = new Faults(source.name());
    this.root = JsonObject.root(source, faults);
  }

  /**
   * Reads a round from a file.
   *
   * @throws InputException with one sentence for each fault of the file
   */
  public static Round read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a round from text.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static Round read(SourceText source) {
    return new RoundFile(source).round();
  }

  private Round round() {
    String adviser = required(root, "adviser", "the adviser's name");
    String standing = root.text("standing");
    LocalDate day = day();
    String weather = fileBeside(root, "weather", "a file of daily weather");
    String origin = required(root, "weatherOrigin", "where the weather comes from");
    String site = root.text("site");
    List<Entry> lawns = new ArrayList<>();
    Set<String> slugs = new HashSet<>();
    for (JsonObject lawn : root.objects("lawns")) {
      lawns.add(entry(lawn, slugs));
    }
    if (lawns.isEmpty()) {
      root.missing("lawns", "a list with at least one lawn");
    }
    root.refuseOthers();
    faults.throwIfAny();
    return new Round(adviser, standing == null ? "" : standing, day, weather, origin, site, lawns);
  }

  private LocalDate day() {
    String text = root.text("day");
    LocalDate day = text == null ? null : Dates.parse(text);
    if (text != null && day == null) {
      root.fault("day", Dates.fault(text));
    } else if (!root.has("day")) {
      root.missing("day", "a date such as 2015-05-28");
    }
    return day == null ? LocalDate.EPOCH : day;
  }

  private static Entry entry(JsonObject lawn, Set<String> slugs) {
    String slug = required(lawn, "slug", "a short name for addresses");
    if (!slug.isEmpty() && !SLUG.matcher(slug).matches()) {
      lawn.fault(
          "slug",
          Faults.quoted(slug) + " is not usable; take lower-case letters, digits and hyphens.");
    } else if (!slug.isEmpty() && !slugs.add(slug)) {
      lawn.fault("slug", Faults.quoted(slug) + " is taken by a lawn above; take another.");
    }
    Entry entry =
        new Entry(
            slug,
            required(lawn, "property", "the property's name"),
            required(lawn, "lawn", "the lawn's name"),
            required(lawn, "habit", "a sentence on how it is kept"),
            fileBeside(lawn, "description", "a lawn description"),
            fileBeside(lawn, "log", "a log"));
    lawn.refuseOthers();
    return entry;
  }

  private static String required(JsonObject object, String name, String what) {
    String text = object.text(name);
    if (text == null && !object.has(name)) {
      object.missing(name, what);
    }
    return text == null ? "" : text;
  }

  /** The name of a file in the folder of the round; a path that leads elsewhere is a fault. */
  private static String fileBeside(JsonObject object, String name, String what) {
    String file = required(object, name, "the name of " + what);
    if (file.contains("..") || file.startsWith("/") || file.contains("\\") || file.contains(":")) {
      object.fault(
          name, Faults.quoted(file) + " leads elsewhere; name a file in the folder of the round.");
    }
    return file;
  }
}
