package leafturn.records.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leafturn.model.grass.Species;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import leafturn.records.LawnParts;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;

/**
 * A further grass of a lawn's mixture, beside the one there is most of.
 *
 * @param grass its common name
 * @param percent its share of the mixture, %, 1 to 50
 */
public record AlsoSown(String grass, double percent) {
  private static final String LIST = "mixture";
  private static final int MOST = 4;

  /**
   * The further grasses in the field {@code mixture}; what they leave of 100 % is the main grass.
   *
   * @param main the main grass, or null when it is not known
   */
  static List<AlsoSown> list(JsonObject json, @Nullable Species main) {
    List<JsonObject> items = json.objects(LIST);
    if (items.size() > MOST) {
      json.fault(
          LIST, "%d further grasses are listed; give at most %d.".formatted(items.size(), MOST));
    }
    Set<String> seen = new HashSet<>();
    if (main != null) {
      seen.add(main.commonName());
    }
    List<AlsoSown> mixture = new ArrayList<>();
    double left = 100;
    for (JsonObject item : items) {
      AlsoSown one = read(item, seen);
      left -= one.percent;
      mixture.add(one);
      checkShare(item, mixture, left);
    }
    return mixture;
  }

  private static AlsoSown read(JsonObject json, Set<String> seen) {
    Species grass = LawnParts.grass(json);
    if (grass != null && !seen.add(grass.commonName())) {
      json.fault(
          "grass", Faults.quoted(grass.commonName()) + " is named already; give each grass once.");
    }
    double percent = json.requiredNumber("percent", 1, 50, "%");
    json.refuseOthers();
    return new AlsoSown(grass == null ? "" : grass.commonName(), percent);
  }

  private static void checkShare(JsonObject item, List<AlsoSown> mixture, double left) {
    double largest = mixture.stream().mapToDouble(AlsoSown::percent).max().orElse(0);
    if (left < largest) {
      item.fault(
          "percent",
          ("the main grass would have %s %% and another one %s %%; the main grass is the one there"
                  + " is most of.")
              .formatted(Numbers.plain(Math.max(0, left)), Numbers.plain(largest)));
    }
  }
}
