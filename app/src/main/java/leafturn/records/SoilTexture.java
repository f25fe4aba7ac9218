package leafturn.records;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leafturn.quantity.DataTable;

/**
 * Water contents to expect of a soil texture, m3/m3.
 *
 * @param name texture class, for instance sandy loam
 * @param fieldCapacity middle of the published range
 * @param wiltingPoint middle of the published range
 * @param saturation total porosity
 */
record SoilTexture(String name, double fieldCapacity, double wiltingPoint, double saturation) {
  private static final List<SoilTexture> ALL = read();

  /** All textures from coarse to fine. */
  static List<SoilTexture> all() {
    return ALL;
  }

  private static List<SoilTexture> read() {
    return DataTable.ofResource(SoilTexture.class, "soil-textures.tsv").rows().stream()
        .map(
            row ->
                new SoilTexture(
                    row.text("texture"),
                    row.number("field_capacity"),
                    row.number("wilting_point"),
                    row.number("saturation")))
        .toList();
  }

  /** The texture of a name, whatever its case. */
  static Optional<SoilTexture> named(String name) {
    String wanted = name.strip().toLowerCase(Locale.ROOT);
    return ALL.stream().filter(texture -> texture.name().equals(wanted)).findFirst();
  }
}
