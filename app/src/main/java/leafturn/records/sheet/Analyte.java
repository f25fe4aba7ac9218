package leafturn.records.sheet;

import java.util.List;
import leafturn.records.Choice;

/** What a soil test determines, and the units it may be reported in. */
public enum Analyte implements Choice.Worded {
  PH("pH", AnalyteUnits.REACTION),
  BUFFER_PH("buffer pH", AnalyteUnits.REACTION),
  ORGANIC_MATTER("organic matter", AnalyteUnits.SHARE),
  TOTAL_NITROGEN("total nitrogen", AnalyteUnits.SHARE),
  NITRATE_NITROGEN("nitrate nitrogen", AnalyteUnits.ELEMENT),
  AMMONIUM_NITROGEN("ammonium nitrogen", AnalyteUnits.ELEMENT),
  PHOSPHORUS("phosphorus", AnalyteUnits.ELEMENT),
  POTASSIUM("potassium", AnalyteUnits.ELEMENT),
  CALCIUM("calcium", AnalyteUnits.ELEMENT),
  MAGNESIUM("magnesium", AnalyteUnits.ELEMENT),
  SULFUR("sulfur", AnalyteUnits.ELEMENT),
  SODIUM("sodium", AnalyteUnits.ELEMENT),
  IRON("iron", AnalyteUnits.ELEMENT),
  MANGANESE("manganese", AnalyteUnits.ELEMENT),
  ZINC("zinc", AnalyteUnits.ELEMENT),
  COPPER("copper", AnalyteUnits.ELEMENT),
  BORON("boron", AnalyteUnits.ELEMENT),
  CATION_EXCHANGE_CAPACITY("cation exchange capacity", AnalyteUnits.CHARGE),
  SOLUBLE_SALTS("soluble salts", AnalyteUnits.CONDUCTIVITY);

  /** Apart because an enum's constants come before its own fields. */
  private static final class AnalyteUnits {
    static final List<SoilUnit> REACTION = List.of(SoilUnit.PH);
    static final List<SoilUnit> SHARE =
        List.of(SoilUnit.PERCENT, SoilUnit.G_PER_KG, SoilUnit.MG_PER_KG);
    static final List<SoilUnit> ELEMENT =
        List.of(
            SoilUnit.MG_PER_KG,
            SoilUnit.PPM,
            SoilUnit.MG_PER_100_G,
            SoilUnit.MG_PER_LITRE,
            SoilUnit.KG_PER_HA,
            SoilUnit.LB_PER_ACRE);
    static final List<SoilUnit> CHARGE = List.of(SoilUnit.CMOL_PER_KG, SoilUnit.MEQ_PER_100_G);
    static final List<SoilUnit> CONDUCTIVITY = List.of(SoilUnit.DS_PER_M, SoilUnit.MS_PER_CM);
  }

  private static final double LOWEST_PH = 2;
  private static final double HIGHEST_PH = 12;
  private static final double HIGHEST_PERCENT = 100;
  private static final double HIGHEST_G_PER_KG = 1000;
  private static final double HIGHEST = 1e6;

  private final String word;
  private final List<SoilUnit> units;

  Analyte(String word, List<SoilUnit> units) {
    this.word = word;
    this.units = units;
  }

  @Override
  public String word() {
    return word;
  }

  /** Units it may be reported in; the first is the usual one. */
  public List<SoilUnit> units() {
    return units;
  }

  /** Whether laboratories also state it as an oxide, as fertiliser labels do. */
  public boolean statedAsOxide() {
    return this == PHOSPHORUS || this == POTASSIUM;
  }

  /** Lowest value there can be. */
  double lowest() {
    return units.contains(SoilUnit.PH) ? LOWEST_PH : 0;
  }

  /** Highest value there can be in a unit. */
  static double highest(SoilUnit unit) {
    return switch (unit) {
      case PH -> HIGHEST_PH;
      case PERCENT -> HIGHEST_PERCENT;
      case G_PER_KG -> HIGHEST_G_PER_KG;
      default -> HIGHEST;
    };
  }
}
