package leafturn.advice.evidence;

import java.util.HashMap;
import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LawnEquations;

/**
 * A plot of a trial.
 *
 * @param grass species
 * @param heightMm cut height, mm
 * @param parameters model parameters that differ from the species' defaults
 */
record Plot(Species grass, double heightMm, Map<String, Double> parameters) {
  static final Plot TALL_FESCUE = of(Species.TALL_FESCUE);
  static final Plot RYEGRASS = of(Species.PERENNIAL_RYEGRASS);
  static final Plot BLUEGRASS = of(Species.KENTUCKY_BLUEGRASS);
  static final Plot BERMUDAGRASS = of(Species.BERMUDAGRASS);

  Plot {
    parameters = Map.copyOf(parameters);
  }

  /** A loam plot cut at its species' usual height. */
  private static Plot of(Species grass) {
    return new Plot(grass, Parameters.of(grass).get("Href"), Map.of());
  }

  Plot with(Map<String, Double> changes) {
    Map<String, Double> changed = new HashMap<>(parameters);
    changed.putAll(changes);
    return new Plot(grass, heightMm, changed);
  }

  Plot cutAt(double newHeightMm) {
    return new Plot(grass, newHeightMm, parameters);
  }

  LawnEquations equations(Treatment kept) {
    return new LawnEquations(
        Parameters.of(grass)
            .with(parameters)
            .with(Map.of("mincut", kept.mowing().leastGrowthMm(), "irr", kept.irrigationShare())));
  }
}
