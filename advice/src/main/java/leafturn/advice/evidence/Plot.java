package leafturn.advice.evidence;

import java.util.HashMap;
import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LawnEquations;

/**
 * A plot of a trial: its grass and soil, four years of common keeping, then the treatment.
 *
 * @param grass species, cut at its usual height unless the parameters say otherwise
 * @param heightMm cut height, mm
 * @param parameters model parameters that differ from the species' defaults
 * @param past how it was kept before
 * @param treatment how it is kept from then on
 */
record Plot(
    Species grass,
    double heightMm,
    Map<String, Double> parameters,
    Treatment past,
    Treatment treatment) {
  /** N of the common years before the treatment. */
  static final double USUAL_N = 147;

  Plot {
    parameters = Map.copyOf(parameters);
  }

  /** A plot at its species' usual height after four common years at 147 kg N/ha, collected. */
  static Plot of(Species grass, Treatment treatment) {
    double heightMm = Parameters.of(grass).get("Href");
    return new Plot(grass, heightMm, Map.of(), Treatment.collected(USUAL_N), treatment);
  }

  Plot with(String parameter, double value) {
    Map<String, Double> changed = new HashMap<>(parameters);
    changed.put(parameter, value);
    return new Plot(grass, heightMm, changed, past, treatment);
  }

  Plot cutAt(double newHeightMm) {
    return new Plot(grass, newHeightMm, parameters, past, treatment);
  }

  Plot after(Treatment newPast) {
    return new Plot(grass, heightMm, parameters, newPast, treatment);
  }

  LawnEquations equations(Treatment kept) {
    return new LawnEquations(
        Parameters.of(grass)
            .with(parameters)
            .with(
                Map.of(
                    "mincut", kept.mowing().leastGrowthMm(), "irr", kept.irrigationShare())));
  }
}
