package leafturn.records.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.records.Choice;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.SourceText;
import leafturn.records.shape.Anchor;
import leafturn.records.shape.GeoJsonFile;
import leafturn.records.shape.Outline;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialMower;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * Reads the lawns of a plan. An outline is an object of ours or a list of corners, both in m, or
 * GeoJSON in longitude and latitude, in the plan or in a file beside it.
 */
final class TrialLawnReading {
  private static final String OUTLINE = "outline";
  private static final String FILE = "outlineFile";
  private static final int MOST_OF_FILE = 3;

  private final @Nullable Path folder;

  /**
   * @param folder in which files of outlines lie, or null where none can be named
   */
  TrialLawnReading(@Nullable Path folder) {
    this.folder = folder;
  }

  /** The lawns that could be read; the faults of the others are reported. */
  List<TrialLawn> read(JsonObject root) {
    List<TrialLawn> lawns = new ArrayList<>();
    for (JsonObject json : root.objects("lawns")) {
      TrialLawn lawn = lawn(json);
      if (lawn != null) {
        lawns.add(lawn);
      }
    }
    root.requireItems("lawns", "at least one lawn with its outline");
    return lawns;
  }

  private @Nullable TrialLawn lawn(JsonObject json) {
    long before = json.faultsSoFar();
    String name = json.requiredText("name", TrialLawn.LONGEST_NAME, "what to call the lawn");
    Outline outline = outline(json);
    Anchor anchor = outline == null ? null : outline.anchor();
    List<Geometry> keepOut = new ArrayList<>();
    for (JsonObject place : json.objects("keepOut")) {
      Outline bed = outline == null ? part(place, null) : onGridOf(anchor, place);
      if (bed != null) {
        keepOut.add(bed.geometry());
      }
    }
    TrialMower mower = mower(json.object("mower"));
    Double bearing = json.number("bearingDeg", 0, TrialLawn.BEARING_DEG.high(), "°");
    json.refuseOthers();
    if (outline == null || mower == null) {
      return null;
    }
    TrialLawn.Origin origin =
        anchor == null ? null : new TrialLawn.Origin(anchor.longitudeDeg(), anchor.latitudeDeg());
    return TrialPlanFile.made(
        json,
        "name",
        before,
        () -> new TrialLawn(name, outline.geometry(), keepOut, origin, mower, bearing));
  }

  private @Nullable Outline outline(JsonObject json) {
    if (json.has(FILE)) {
      if (json.has(OUTLINE)) {
        json.fault(FILE, "the lawn has an outline too; keep one of the two.");
      }
      return file(json);
    }
    if (!json.has(OUTLINE)) {
      json.missing(OUTLINE, "its corners as \"12 x 8\", as patches, or as GeoJSON; or outlineFile");
      return null;
    }
    return json.holdsObject(OUTLINE)
        ? part(json.object(OUTLINE), null)
        : Outline.read(json, OUTLINE);
  }

  /** Our own form or GeoJSON, told apart by GeoJSON's field {@code type}. */
  private static @Nullable Outline part(JsonObject json, @Nullable Anchor anchor) {
    return json.has("type") ? GeoJsonFile.readPart(json, anchor) : Outline.read(json);
  }

  /** A bed on the grid of its lawn, or null after telling that it lies on another. */
  private static @Nullable Outline onGridOf(@Nullable Anchor anchor, JsonObject place) {
    boolean degrees = place.has("type");
    if (degrees && anchor == null) {
      place.fault("type", "the outline of the lawn is in m; give this place in m too.");
      return null;
    }
    Outline bed = part(place, anchor);
    if (bed != null && degrees && !Objects.equals(bed.anchor(), anchor)) {
      place.fault("coordinates", "it lies far from the lawn; check the positions.");
    } else if (bed != null && !degrees && bed.anchor() != null) {
      place.fault("anchor", "it lies on the grid of the lawn; leave the anchor out.");
    }
    return bed;
  }

  private @Nullable Outline file(JsonObject json) {
    String name = json.text(FILE);
    if (name == null) {
      return null;
    }
    if (folder == null) {
      json.fault(FILE, "no file can be named here; give the outline itself.");
      return null;
    }
    if (name.contains("..") || name.startsWith("/") || name.contains("\\") || name.contains(":")) {
      json.fault(
          FILE, Faults.quoted(name) + " leads elsewhere; name a file in the folder of the plan.");
      return null;
    }
    try {
      SourceText text = SourceText.read(folder.resolve(name), GeoJsonFile.LIMIT_BYTES);
      return GeoJsonFile.readOne(text).outline();
    } catch (InputException wrong) {
      List<String> faults = wrong.faults();
      faults.stream().limit(MOST_OF_FILE).forEach(fault -> json.fault(FILE, fault));
      if (faults.size() > MOST_OF_FILE) {
        json.fault(FILE, "more of it is no outline; name a file with the lawn's outline alone.");
      }
      return null;
    }
  }

  private static @Nullable TrialMower mower(JsonObject json) {
    long before = json.faultsSoFar();
    double width =
        json.requiredNumber(
            "deckWidthMm", TrialMower.DECK_WIDTH_MM.low(), TrialMower.DECK_WIDTH_MM.high(), "mm");
    TrialMower.Discharge discharge =
        Choice.read(json, "discharge", TrialMower.Discharge.values(), TrialMower.Discharge::word);
    if (!json.has("discharge")) {
      json.missing(
          "discharge",
          "one of " + Choice.words(TrialMower.Discharge.values(), TrialMower.Discharge::word));
    }
    boolean assumed = Boolean.TRUE.equals(json.flag("dischargeAssumed"));
    json.refuseOthers();
    return discharge == null
        ? null
        : TrialPlanFile.made(
            json, "deckWidthMm", before, () -> new TrialMower(width, discharge, assumed));
  }
}
