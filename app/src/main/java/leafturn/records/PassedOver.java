package leafturn.records;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What the log of a book has beyond what the model uses: read past, counted and noted. */
final class PassedOver {
  /** Names an entry of a book, so that two that say the same can be told apart. */
  static final String ID = "id";

  private static final List<String> COLUMNS =
      List.of(
          "time",
          "bags",
          "weight_kg",
          "went_to",
          "minutes",
          "two_passes",
          "product",
          "watered_in",
          "feed_form",
          "water_in_mm",
          "product_kind",
          "ingredient_group",
          "clippings_interval_days",
          "mowings_before_use",
          "never_use",
          "label_says_none",
          "wait_before_mowing_days",
          "seed",
          "amount_g_m2",
          "depth_mm",
          "seen",
          "not_there",
          "leaf_cover_fraction",
          "height_mm",
          ID);

  private static final Set<String> KINDS =
      Set.of("treated", "seeded", "aerated", "scarified", "topdressed", "limed", "observed");

  private final Set<String> kinds = new TreeSet<>();
  private int lines;

  /** What a book's log tells of beyond what the model uses. */
  static List<String> kinds() {
    return KINDS.stream().sorted().toList();
  }

  /** True for a column of a book's log that the model does not use. */
  static boolean isColumn(String name) {
    return COLUMNS.contains(name);
  }

  /** True, and counted, when a line tells of what the model does not use. */
  boolean takes(String kind) {
    if (!KINDS.contains(kind)) {
      return false;
    }
    kinds.add(kind);
    lines++;
    return true;
  }

  /** What is worth saying; often nothing. */
  List<String> notes(List<String> header) {
    List<String> notes = new ArrayList<>();
    if (lines > 0) {
      notes.add(
          "%d %s of what the model does not use (%s), passed over."
              .formatted(
                  lines, lines == 1 ? "line tells" : "lines tell", String.join(", ", kinds)));
    }
    List<String> unused = COLUMNS.stream().filter(header::contains).toList();
    if (!unused.isEmpty()) {
      notes.add("Columns not used: " + String.join(", ", unused) + ".");
    }
    return notes;
  }
}
