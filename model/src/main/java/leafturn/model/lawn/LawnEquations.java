package leafturn.model.lawn;

import static leafturn.model.Stores.CLIPPING_THATCH_C;
import static leafturn.model.Stores.THATCH_C;

import leafturn.model.Parameters;
import leafturn.model.clippings.ClippingPotassium;
import leafturn.model.clippings.CutQuality;
import leafturn.model.grass.Cut;
import leafturn.model.grass.Growth;
import leafturn.model.grass.PlantMass;
import leafturn.model.grass.Turnover;
import leafturn.model.grass.Uptake;
import leafturn.model.soil.Decomposition;
import leafturn.model.soil.Humus;
import leafturn.model.soil.MineralNitrogen;
import leafturn.model.soil.SoilTestReadout;
import leafturn.model.water.RootZone;

/**
 * The equations of one lawn with its constants worked out once. Holds no state: one object may
 * serve many runs at a time.
 */
public final class LawnEquations {
  final Parameters parameters;
  final PlantMass mass;
  final RootZone rootZone;
  final MineralNitrogen mineralNitrogen;
  final Decomposition decomposition;
  final Humus humus;
  final ClippingPotassium clippingPotassium;
  final SoilTestReadout soilTest;
  final Turnover turnover;
  final Uptake uptake;
  final Growth growth;
  final Cut cut;
  final CutQuality cutQuality;
  final ThermalResponse thermalResponse;
  final double reproductiveFactor;
  final double reproductiveFrom;
  final double reproductiveTo;
  final double leastGrowthToMowMm;
  private final double thatchGPerMm;

  /**
   * @param parameters of the lawn
   * @throws IllegalArgumentException where values contradict one another, naming them
   */
  public LawnEquations(Parameters parameters) {
    this.parameters = ParameterRules.checked(parameters);
    this.mass = new PlantMass(parameters);
    this.rootZone = new RootZone(parameters);
    this.mineralNitrogen = new MineralNitrogen(parameters);
    this.decomposition = new Decomposition(parameters);
    this.humus = new Humus(parameters);
    this.clippingPotassium = new ClippingPotassium(parameters);
    this.soilTest = new SoilTestReadout(parameters);
    this.turnover = new Turnover(parameters, mass);
    this.uptake = new Uptake(parameters, mass, soilTest);
    this.growth = new Growth(parameters, mass);
    this.cut = new Cut(parameters, mass);
    this.cutQuality = new CutQuality(parameters);
    this.thermalResponse = ThermalResponse.of(parameters);
    this.reproductiveFactor = parameters.get("rep");
    this.reproductiveFrom = parameters.get("repA");
    this.reproductiveTo = parameters.get("repB");
    this.leastGrowthToMowMm = parameters.get("mincut");
    this.thatchGPerMm = parameters.get("rhoT");
  }

  /** The parameters. */
  public Parameters parameters() {
    return parameters;
  }

  /** Height of the grass, mm. */
  public double heightMm(double[] stores) {
    return mass.heightMm(stores);
  }

  /** Dry matter above the cut height per mm of height, g/m2 and mm. */
  public double leafGPerM2AndMm() {
    return mass.leafGPerM2AndMm();
  }

  /** Growth that a day's warmth lets be, over the best, 0-1, at its mean temperature, °C. */
  public double growthAtFraction(double meanC) {
    return thermalResponse.at(meanC);
  }

  /** Thatch, mm. */
  public double thatchMm(double[] stores) {
    return (stores[THATCH_C] + stores[CLIPPING_THATCH_C]) / mass.carbonFraction() / thatchGPerMm;
  }

  /** Share of the thatch that came from clippings, 0-1. */
  public double clippingsShareOfThatch(double[] stores) {
    double all = stores[THATCH_C] + stores[CLIPPING_THATCH_C];
    return all > 0 ? stores[CLIPPING_THATCH_C] / all : 0;
  }

  /** Soil-test P, ppm. */
  public double soilPhosphorusPpm(double[] stores) {
    return soilTest.phosphorusPpm(stores);
  }

  /** Soil-test K, ppm. */
  public double soilPotassiumPpm(double[] stores) {
    return soilTest.potassiumPpm(stores);
  }

  /**
   * Leaf growth's extra factor in the reproductive phase; the window shifts half a year southward.
   */
  double reproductiveFactor(int dayOfYear, boolean southern) {
    return reproductive(dayOfYear, southern) ? reproductiveFactor : 1;
  }

  /** True in the reproductive phase. */
  boolean reproductive(int dayOfYear, boolean southern) {
    int day = southern ? Math.floorMod(dayOfYear - 182 - 1, 365) + 1 : dayOfYear;
    return reproductiveFrom <= reproductiveTo
        ? day >= reproductiveFrom && day <= reproductiveTo
        : day >= reproductiveFrom || day <= reproductiveTo;
  }
}
