package leafturn.records;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The soil of a lawn as somebody described it; what was not given is null.
 *
 * @param texture class that stands in for the water contents that are left out
 * @param fieldCapacity m3/m3, 0.02 to 0.8
 * @param wiltingPoint m3/m3, 0.01 to 0.6
 * @param saturation m3/m3, 0.05 to 0.9
 * @param curveNumber SCS curve number, 30 to 100
 * @param organicMatterPercent % of the soil's mass, 0.1 to 30
 * @param testDepthCm depth of the cores, cm, 2 to 40
 * @param bulkDensityGPerCm3 g/cm3, 0.5 to 2
 * @param phosphorusPpm mg P per kg soil, 0 to 2000
 * @param potassiumPpm mg K per kg soil, 0 to 5000
 * @param extractant extractant of P and K
 */
public record SoilFields(
    @Nullable String texture,
    @Nullable Double fieldCapacity,
    @Nullable Double wiltingPoint,
    @Nullable Double saturation,
    @Nullable Double curveNumber,
    @Nullable Double organicMatterPercent,
    @Nullable Double testDepthCm,
    @Nullable Double bulkDensityGPerCm3,
    @Nullable Double phosphorusPpm,
    @Nullable Double potassiumPpm,
    @Nullable String extractant) {
  static final String DEFAULT_TEXTURE = "loam";

  private static final int LONGEST_NAME = 80;

  /** Reads the section of a description; faults are reported there. */
  public static SoilFields read(JsonObject section) {
    SoilFields soil =
        new SoilFields(
            textureOf(section),
            section.number("fieldCapacity", 0.02, 0.8, "m3/m3"),
            section.number("wiltingPoint", 0.01, 0.6, "m3/m3"),
            section.number("saturation", 0.05, 0.9, "m3/m3"),
            section.number("curveNumber", 30, 100, ""),
            section.number("organicMatterPercent", 0.1, 30, "% of the soil's mass"),
            section.number("testDepthCm", 2, 40, "cm"),
            section.number("bulkDensityGPerCm3", 0.5, 2, "g/cm3"),
            section.number("phosphorusPpm", 0, 2000, "mg/kg"),
            section.number("potassiumPpm", 0, 5000, "mg/kg"),
            section.text("extractant", LONGEST_NAME));
    if (!soil.waterContentsRise()) {
      section.fault("fieldCapacity", soil.order());
    }
    section.refuseOthers();
    return soil;
  }

  private static @Nullable String textureOf(JsonObject section) {
    String name = section.text("texture");
    if (name == null) {
      return null;
    }
    if (SoilTexture.named(name).isEmpty()) {
      List<String> names = SoilTexture.all().stream().map(SoilTexture::name).toList();
      section.fault(
          "texture",
          "%s is not a texture known here; %s"
              .formatted(Faults.quoted(name), NearestName.advice(name, names)));
      return null;
    }
    return SoilTexture.named(name).orElseThrow().name();
  }

  /** The texture, or the one that stands in for it. */
  SoilTexture textureOrUsual() {
    return SoilTexture.named(texture == null ? DEFAULT_TEXTURE : texture).orElseThrow();
  }

  /** True when the water contents, given or of the texture, are in their order. */
  boolean waterContentsRise() {
    return wilting() < capacity() && capacity() < full();
  }

  private String order() {
    return "wiltingPoint %s, fieldCapacity %s and saturation %s must rise in this order."
        .formatted(Numbers.plain(wilting()), Numbers.plain(capacity()), Numbers.plain(full()));
  }

  private double wilting() {
    return wiltingPoint == null ? textureOrUsual().wiltingPoint() : wiltingPoint;
  }

  private double capacity() {
    return fieldCapacity == null ? textureOrUsual().fieldCapacity() : fieldCapacity;
  }

  private double full() {
    return saturation == null ? textureOrUsual().saturation() : saturation;
  }
}
