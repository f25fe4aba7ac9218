package leafturn.records.sheet;

import leafturn.records.JsonObject;
import leafturn.records.shape.Outline;
import org.jspecify.annotations.Nullable;

/**
 * A bed or border that may take clippings as mulch.
 *
 * @param property id of the property
 * @param name what its people call it, 1 to 80 characters
 * @param outline its shape, or null
 * @param areaM2 area as somebody measured it, m2, 0.1 to 1,000,000, or null for that of the outline
 * @param mulchDepthMm depth of mulch it may carry, mm, 0 to 300, or null
 * @param growing what grows there, in words, or null
 * @param mostNKgPerHa most nitrogen it may take a year, kg/ha, 0 to 1000, or null
 * @param note anything to remember; may be null
 */
public record BedSheet(
    String property,
    String name,
    @Nullable Outline outline,
    @Nullable Double areaM2,
    @Nullable Double mulchDepthMm,
    @Nullable String growing,
    @Nullable Double mostNKgPerHa,
    @Nullable String note)
    implements Content {

  static BedSheet read(JsonObject json) {
    String property = json.requiredId("property", "the property it lies on");
    String name = json.requiredText("name", Limits.NAME, "what its people call it");
    Outline outline = Outline.read(json, "outline");
    Double area = json.number("areaM2", 0.1, 1e6, "m²");
    Double depth = json.number("mulchDepthMm", 0, 300, "mm");
    String growing = json.text("growing", Limits.SENTENCE);
    Double mostN = json.number("mostNKgPerHa", 0, 1000, "kg/ha");
    String note = json.text("note", Limits.NOTE);
    json.end();
    return new BedSheet(property, name, outline, area, depth, growing, mostN, note);
  }

  /** The area, m2: as measured, else that of the outline, else null. */
  public @Nullable Double surfaceM2() {
    return areaM2 == null && outline != null ? Double.valueOf(outline.areaM2()) : areaM2;
  }
}
