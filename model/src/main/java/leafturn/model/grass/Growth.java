package leafturn.model.grass;

import static leafturn.model.Flows.GROWTH_G;
import static leafturn.model.Flows.GROWTH_NITROGEN;
import static leafturn.model.Flows.LEAF_GROWTH_G;
import static leafturn.model.Flows.LEAF_N_FRACTION;
import static leafturn.model.Flows.PHOTOSYNTHESIS_C;
import static leafturn.model.Flows.SMOTHERING;
import static leafturn.model.Stores.LEAF_C;
import static leafturn.model.Stores.METABOLIC_C;
import static leafturn.model.Stores.ROOT_C;
import static leafturn.model.Stores.STRUCTURAL_C;
import static leafturn.model.Stores.STUBBLE_C;

import leafturn.model.Bounds;
import leafturn.model.Parameters;

/** Growth of leaf, stubble and root under warmth, water, plant N, light and undecayed clippings. */
public final class Growth {
  private static final double HEIGHT_EXPONENT = 0.3;

  private final PlantMass mass;
  private final double ceilingGPerDay;
  private final double emptyNitrogenFraction;
  private final double perNitrogenSpan;
  private final double storageExponent;
  private final double stubbleShare;
  private final double rootShare;
  private final double gPerMegajoule;
  private final double smotheringLimitC;
  private final double smotheringPerC;
  private final double smotheringMost;
  private final double usualHeightMm;

  /**
   * @param parameters gmax, shade, nlo, nhi, q, sStub, sRoot, lue, smoLim, smoK, smoMax, Href
   */
  public Growth(Parameters parameters, PlantMass mass) {
    this.mass = mass;
    this.ceilingGPerDay = parameters.get("gmax") * parameters.get("shade");
    this.emptyNitrogenFraction = parameters.get("nlo");
    this.perNitrogenSpan = 1 / (parameters.get("nhi") - emptyNitrogenFraction);
    this.storageExponent = parameters.get("q");
    this.stubbleShare = parameters.get("sStub");
    this.rootShare = parameters.get("sRoot");
    this.gPerMegajoule = parameters.get("lue");
    this.smotheringLimitC = parameters.get("smoLim") * mass.carbonFraction();
    this.smotheringPerC = parameters.get("smoK") / mass.carbonFraction();
    this.smotheringMost = parameters.get("smoMax");
    this.usualHeightMm = parameters.get("Href");
  }

  /**
   * Factor of leaf growth for the cut height: lower mowing gives more clippings.
   *
   * @param cutHeightMm mm, positive
   */
  public double heightFactor(double cutHeightMm) {
    return Math.pow(usualHeightMm / cutHeightMm, HEIGHT_EXPONENT);
  }

  /**
   * One day.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param weatherFactor temperature factor times moisture factor of growth, 0-1
   * @param leafFactor factor of leaf alone: reproductive phase times {@link #heightFactor}
   * @param radiationMj global radiation, MJ/m2
   */
  public void step(
      double[] stores,
      double[] flows,
      double weatherFactor,
      double leafFactor,
      double radiationMj) {
    double leafNitrogen = mass.leafNitrogenFraction(stores);
    double nitrogenFactor =
        Bounds.fraction((leafNitrogen - emptyNitrogenFraction) * perNitrogenSpan);
    double excessC = stores[METABOLIC_C] + stores[STRUCTURAL_C] - smotheringLimitC;
    double smothering =
        1 - Bounds.atMost(smotheringMost, smotheringPerC * Bounds.atLeast(0, excessC));
    double potential = ceilingGPerDay * weatherFactor * smothering;
    double storage = potential * Math.pow(nitrogenFactor, storageExponent);
    double leaf = potential * leafFactor * nitrogenFactor;
    double stubble = stubbleShare * storage;
    double root = rootShare * storage;
    double total = leaf + stubble + root;
    double light = gPerMegajoule * radiationMj;
    double scale = total > light ? light / total : 1;
    double carbon = scale * mass.carbonFraction();

    stores[LEAF_C] += carbon * leaf;
    stores[STUBBLE_C] += carbon * stubble;
    stores[ROOT_C] += carbon * root;
    flows[PHOTOSYNTHESIS_C] = carbon * total;
    flows[LEAF_GROWTH_G] = scale * leaf;
    flows[GROWTH_G] = scale * total;
    flows[GROWTH_NITROGEN] = nitrogenFactor;
    flows[SMOTHERING] = smothering;
    flows[LEAF_N_FRACTION] = mass.leafNitrogenFraction(stores);
  }
}
