package leafturn.records;

import java.util.List;
import leafturn.model.Parameters;
import leafturn.model.soil.Soil;
import org.jspecify.annotations.Nullable;

/** The soil of a lawn description. */
final class SoilSection {
  private static final String DEFAULT_TEXTURE = "loam";
  private static final String DEFAULT_EXTRACTANT = "Mehlich-3";

  private final JsonObject section;
  private final Parameters usual;
  private final List<String> notes;
  private final Defaults defaults = new Defaults("soil");

  /**
   * @param usual the model's parameters, which stand in for what the section leaves out
   */
  SoilSection(JsonObject section, Parameters usual, List<String> notes) {
    this.usual = usual;
    this.section = section;
    this.notes = notes;
  }

  /** The soil, or null when a fault was reported. */
  @Nullable Soil read() {
    Soil.Water water = water();
    Soil.Test test = test();
    section.refuseOthers();
    notes.addAll(defaults.notes());
    return water == null ? null : new Soil(water, test);
  }

  private Soil.@Nullable Water water() {
    SoilTexture texture = texture();
    Double fieldCapacity = section.number("fieldCapacity", 0.02, 0.8, "m3/m3");
    Double wiltingPoint = section.number("wiltingPoint", 0.01, 0.6, "m3/m3");
    Double saturation = section.number("saturation", 0.05, 0.9, "m3/m3");
    Double curveNumber = section.number("curveNumber", 30, 100, "");
    double curve = defaults.number(curveNumber, usual.get("cn"), "curveNumber", "");
    double capacity = content(fieldCapacity, texture.fieldCapacity(), "fieldCapacity", texture);
    double wilting = content(wiltingPoint, texture.wiltingPoint(), "wiltingPoint", texture);
    double full = content(saturation, texture.saturation(), "saturation", texture);
    if (wilting < capacity && capacity < full) {
      return new Soil.Water(capacity, wilting, full, curve);
    }
    section.fault(
        "fieldCapacity",
        "wiltingPoint %s, fieldCapacity %s and saturation %s must rise in this order."
            .formatted(Numbers.plain(wilting), Numbers.plain(capacity), Numbers.plain(full)));
    return null;
  }

  private double content(
      @Nullable Double given, double expected, String name, SoilTexture texture) {
    return defaults.number(given, expected, name, "m3/m3 (" + texture.name() + ")");
  }

  private SoilTexture texture() {
    String name = section.text("texture");
    if (name != null && SoilTexture.named(name).isEmpty()) {
      List<String> names = SoilTexture.all().stream().map(SoilTexture::name).toList();
      section.fault(
          "texture",
          "%s is not a texture known here; %s"
              .formatted(Faults.quoted(name), NearestName.advice(name, names)));
      name = null;
    }
    return SoilTexture.named(name == null ? DEFAULT_TEXTURE : name).orElseThrow();
  }

  private Soil.Test test() {
    Double organicMatter = section.number("organicMatterPercent", 0.1, 30, "% of the soil's mass");
    Double depth = section.number("testDepthCm", 2, 40, "cm");
    Double bulkDensity = section.number("bulkDensityGPerCm3", 0.5, 2, "g/cm3");
    Double phosphorus = section.number("phosphorusPpm", 0, 2000, "mg/kg");
    Double potassium = section.number("potassiumPpm", 0, 5000, "mg/kg");
    String extractant = section.text("extractant");
    return new Soil.Test(
        defaults.number(organicMatter, 100 * usual.get("om"), "organicMatterPercent", "%"),
        defaults.number(depth, usual.get("depth"), "testDepthCm", "cm"),
        defaults.number(bulkDensity, usual.get("bd"), "bulkDensityGPerCm3", "g/cm3"),
        defaults.number(phosphorus, usual.get("stp0"), "phosphorusPpm", "ppm"),
        defaults.number(potassium, usual.get("stk0"), "potassiumPpm", "ppm"),
        defaults.value(extractant, DEFAULT_EXTRACTANT, "extractant " + DEFAULT_EXTRACTANT));
  }
}
