package leafturn.records.sheet;

import java.util.OptionalDouble;
import leafturn.quantity.SoilLayer;
import leafturn.quantity.Unit;
import leafturn.records.Choice;
import org.jspecify.annotations.Nullable;

/** Units in which laboratories report soil, by the symbols they print. */
public enum SoilUnit implements Choice.Worded {
  PH("pH", null),
  PERCENT("%", Unit.PERCENT),
  G_PER_KG("g/kg", Unit.GRAM_PER_KILOGRAM),
  MG_PER_KG("mg/kg", Unit.PART_PER_MILLION),
  PPM("ppm", Unit.PART_PER_MILLION),
  MG_PER_100_G("mg/100 g", null),
  /** Of a measured scoop; its mass is not told, so it is kept as it is. */
  MG_PER_LITRE("mg/L", null),
  KG_PER_HA("kg/ha", Unit.KILOGRAM_PER_HECTARE),
  LB_PER_ACRE("lb/ac", Unit.POUND_PER_ACRE),
  CMOL_PER_KG("cmol/kg", null),
  MEQ_PER_100_G("meq/100 g", null),
  DS_PER_M("dS/m", null),
  MS_PER_CM("mS/cm", null);

  private static final double MG_PER_KG_IN_MG_PER_100_G = 10;

  private final String word;
  private final @Nullable Unit unit;

  SoilUnit(String word, @Nullable Unit unit) {
    this.word = word;
    this.unit = unit;
  }

  @Override
  public String word() {
    return word;
  }

  /**
   * A value of this unit in mg per kg of soil, where that is the same quantity.
   *
   * @param layer the layer of soil an amount per area lies in, or null when its mass is not known
   */
  public OptionalDouble mgPerKg(double value, @Nullable SoilLayer layer) {
    if (this == MG_PER_100_G) {
      return OptionalDouble.of(value * MG_PER_KG_IN_MG_PER_100_G);
    }
    if (unit == null) {
      return OptionalDouble.empty();
    }
    if (unit.dimension() == Unit.Dimension.FRACTION) {
      return OptionalDouble.of(unit.to(Unit.PART_PER_MILLION, value));
    }
    return layer == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(layer.ppm(unit.to(Unit.GRAM_PER_M2, value)));
  }
}
