package leafturn.model.lawn;

import java.util.HashMap;
import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.soil.Soil;

/** From a lawn's description to the parameters of its equations. */
public final class LawnParameters {
  private static final String QUALITY = "qual";

  private LawnParameters() {}

  /**
   * The species' defaults, with the soil, shade and irrigation of the description, and the
   * description's own parameters on top.
   *
   * @throws IllegalArgumentException naming a parameter that does not exist
   */
  public static Parameters of(Lawn lawn) {
    Soil soil = lawn.ground().soil();
    Map<String, Double> described = new HashMap<>();
    described.put("fc", soil.water().fieldCapacity());
    described.put("wp", soil.water().wiltingPoint());
    described.put("sat", soil.water().saturation());
    described.put("cn", soil.water().curveNumber());
    described.put("om", soil.test().organicMatterPercent() / 100);
    described.put("depth", soil.test().depthCm());
    described.put("bd", soil.test().bulkDensityGPerCm3());
    described.put("stp0", soil.test().phosphorusPpm());
    described.put("stk0", soil.test().potassiumPpm());
    described.put("shade", 1 - lawn.ground().shadeFraction());
    described.put("irr", lawn.programme().irrigationShareOfDemand());
    return Parameters.of(lawn.ground().grass()).with(described).with(lawn.parameters());
  }

  /**
   * The parameters of a lawn whose cuts each have their own quality, as advice wants them, unless
   * its description says of which kind its clippings are.
   *
   * @throws IllegalArgumentException naming a parameter that does not exist
   */
  public static Parameters withCutQuality(Lawn lawn) {
    Parameters parameters = of(lawn);
    return lawn.parameters().containsKey(QUALITY)
        ? parameters
        : parameters.with(Map.of(QUALITY, 1.0));
  }
}
