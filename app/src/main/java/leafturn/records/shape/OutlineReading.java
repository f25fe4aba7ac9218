package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;

/** Reads an outline from its JSON form. */
final class OutlineReading {
  private final JsonObject json;
  private final List<JsonObject> places = new ArrayList<>();
  private boolean faulty;

  OutlineReading(JsonObject json) {
    this.json = json;
  }

  @Nullable Outline read() {
    if (!json.has("patches")) {
      json.missing("patches", "the pieces of the outline, each with an edge");
      faulty = true;
    }
    List<Patch> patches = new ArrayList<>();
    for (JsonObject patch : json.objects("patches")) {
      places.add(patch);
      patches.add(patch(patch));
    }
    boolean anchored = json.has("anchor");
    Anchor anchor = Anchor.read(json, "anchor");
    json.refuseOthers();
    if (faulty || anchored && anchor == null) {
      return null;
    }
    List<OutlineCheck.Finding> findings = OutlineCheck.of(patches, Corner::words);
    findings.forEach(this::report);
    return findings.isEmpty() ? new Outline(patches, anchor) : null;
  }

  private void report(OutlineCheck.Finding finding) {
    if (finding.patch() == OutlineCheck.WHOLE) {
      json.fault("patches", finding.sentence());
    } else if (finding.ring() <= 0) {
      places.get(finding.patch()).fault("edge", finding.sentence());
    } else {
      String hole = "hole %d: %s".formatted(finding.ring(), finding.sentence());
      places.get(finding.patch()).fault("holes", hole);
    }
  }

  private Patch patch(JsonObject patch) {
    if (!patch.has("edge")) {
      patch.missing("edge", "its corners as a list of [x, y] in m");
      faulty = true;
    }
    Ring edge = ring(patch, patch.take("edge"));
    List<Ring> holes = new ArrayList<>();
    for (JsonValue hole : list(patch, patch.take("holes"))) {
      holes.add(ring(patch, hole));
    }
    patch.refuseOthers();
    return new Patch(edge, holes);
  }

  private Ring ring(JsonObject patch, @Nullable JsonValue value) {
    List<Corner> corners = new ArrayList<>();
    for (JsonValue place : list(patch, value)) {
      Corner corner = corner(place);
      if (corner == null) {
        fault(
            patch,
            place,
            "%s is no corner; give [x, y], each %s, m."
                .formatted(place.shown(), Numbers.range(-Corner.FARTHEST_M, Corner.FARTHEST_M)));
      } else {
        corners.add(corner);
      }
    }
    return new Ring(corners);
  }

  private List<JsonValue> list(JsonObject patch, @Nullable JsonValue value) {
    if (value == null) {
      return List.of();
    }
    List<JsonValue> items = value.items();
    if (items == null) {
      fault(patch, value, value.shown() + " is not a list; give one in square brackets.");
      return List.of();
    }
    return items;
  }

  private void fault(JsonObject patch, JsonValue value, String sentence) {
    patch.fault(value, sentence);
    faulty = true;
  }

  private static @Nullable Corner corner(JsonValue place) {
    List<JsonValue> pair = place.items();
    if (pair == null
        || pair.size() != 2
        || !(pair.get(0).content() instanceof Double x)
        || !(pair.get(1).content() instanceof Double y)) {
      return null;
    }
    return Corner.isNear(x) && Corner.isNear(y) ? new Corner(x, y) : null;
  }
}
