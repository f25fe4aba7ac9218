package leafturn.records.archive;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;

/** The names of the files in an archive. */
final class Members {
  static final String MANIFEST = "archive.json";
  static final String READ_ME = "README.txt";
  static final String BOOK = "book.json";
  static final String PEOPLE = "people.jsonl";
  static final String LAWN_OUTLINES = "outlines/lawns.geojson";
  static final String BED_OUTLINES = "outlines/beds.geojson";

  private static final String ID = "[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}";
  private static final Pattern KNOWN =
      Pattern.compile(
          "archive\\.json|README\\.txt|book\\.json|people\\.jsonl"
              + "|sheets/[a-z][a-z_-]{0,19}\\.jsonl|weather/"
              + ID
              + "\\.csv|photographs/"
              + ID
              + "\\.(?:jpg|png|webp)|outlines/(?:lawns|beds)\\.geojson|logs/[a-z0-9-]{1,80}\\.csv"
              + "|damaged/[a-z][a-z_-]{0,19}-"
              + ID
              + "\\.(?:txt|csv|bin)");
  private static final Pattern DAMAGED = Pattern.compile("damaged/(.+)-(" + ID + ")\\.txt");

  private Members() {}

  /** True for a name that an archive may hold; no other is ever opened. */
  static boolean mayBe(String name) {
    return KNOWN.matcher(name).matches();
  }

  static String sheets(Kind<?> kind) {
    return "sheets/" + kind.name() + ".jsonl";
  }

  static String weather(String station) {
    return "weather/" + station + ".csv";
  }

  static String photograph(String id, PhotographSheet.MediaType type) {
    String ending =
        switch (type) {
          case JPEG -> "jpg";
          case PNG -> "png";
          case WEBP -> "webp";
        };
    return "photographs/" + id + "." + ending;
  }

  static String log(String lawnAddress) {
    return "logs/" + lawnAddress + ".csv";
  }

  /** The raw text of a sheet that was set aside. */
  static String damaged(Kind<?> kind, String id) {
    return "damaged/%s-%s.txt".formatted(kind.name(), id);
  }

  static String damagedPicture(String id) {
    return "damaged/picture-" + id + ".bin";
  }

  static String damagedWeather(String station) {
    return "damaged/weather-" + station + ".csv";
  }

  /** The kind and id of the sheet whose raw text a member is; empty for other members. */
  static Optional<String> sheetSetAside(String name) {
    Matcher matcher = DAMAGED.matcher(name);
    return matcher.matches()
        ? Optional.of(matcher.group(1) + " " + matcher.group(2))
        : Optional.empty();
  }

  /** The id in the name of a member of one of the folders above. */
  static String idIn(String name) {
    int from = name.indexOf('/') + 1;
    return name.substring(from, name.indexOf('.', from));
  }
}
