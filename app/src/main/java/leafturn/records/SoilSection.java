package leafturn.records;

import java.util.List;
import leafturn.model.Parameters;
import leafturn.model.soil.Soil;
import org.jspecify.annotations.Nullable;

/** The soil of a lawn description, with defaults for what it leaves out. */
final class SoilSection {
  private static final String DEFAULT_EXTRACTANT = "Mehlich-3";

  private final SoilFields given;
  private final Parameters usual;
  private final List<String> notes;
  private final Defaults defaults = new Defaults("soil");

  /**
   * @param usual the model's parameters, which stand in for what the section leaves out
   */
  SoilSection(JsonObject section, Parameters usual, List<String> notes) {
    this.usual = usual;
    this.given = SoilFields.read(section);
    this.notes = notes;
  }

  /** The soil, or null when a fault was reported. */
  @Nullable Soil read() {
    if (!given.waterContentsRise()) {
      return null;
    }
    Soil soil = new Soil(water(), test());
    notes.addAll(defaults.notes());
    return soil;
  }

  private Soil.Water water() {
    SoilTexture texture = given.textureOrUsual();
    double curve = defaults.number(given.curveNumber(), usual.get("cn"), "curveNumber", "");
    String unit = "m3/m3 (" + texture.name() + ")";
    return new Soil.Water(
        defaults.number(given.fieldCapacity(), texture.fieldCapacity(), "fieldCapacity", unit),
        defaults.number(given.wiltingPoint(), texture.wiltingPoint(), "wiltingPoint", unit),
        defaults.number(given.saturation(), texture.saturation(), "saturation", unit),
        curve);
  }

  private Soil.Test test() {
    return new Soil.Test(
        defaults.number(
            given.organicMatterPercent(), 100 * usual.get("om"), "organicMatterPercent", "%"),
        defaults.number(given.testDepthCm(), usual.get("depth"), "testDepthCm", "cm"),
        defaults.number(given.bulkDensityGPerCm3(), usual.get("bd"), "bulkDensityGPerCm3", "g/cm3"),
        defaults.number(given.phosphorusPpm(), usual.get("stp0"), "phosphorusPpm", "ppm"),
        defaults.number(given.potassiumPpm(), usual.get("stk0"), "potassiumPpm", "ppm"),
        defaults.value(given.extractant(), DEFAULT_EXTRACTANT, "extractant " + DEFAULT_EXTRACTANT));
  }
}
