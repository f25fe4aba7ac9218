package leafturn.model.lawn;

import leafturn.model.Parameters;
import leafturn.model.weather.GrowingPotential;

/**
 * How a grass answers to temperature; grasses with the same response share its daily values.
 *
 * @param beta true for the beta function, false for growing potential
 * @param heldAboveOptimum growing potential stays at 1 above its optimum
 * @param baseC beta: no growth below; else unused
 * @param optimumC best temperature
 * @param widthC growing potential: width; beta: no growth above
 */
record ThermalResponse(
    boolean beta, boolean heldAboveOptimum, double baseC, double optimumC, double widthC) {

  static ThermalResponse of(Parameters parameters) {
    if (parameters.get("tresp") == 1) {
      return new ThermalResponse(
          true,
          false,
          parameters.get("beta_tb"),
          parameters.get("beta_to"),
          parameters.get("beta_tm"));
    }
    return new ThermalResponse(
        false, parameters.get("gp_cap") == 1, 0, parameters.get("gp_to"), parameters.get("gp_var"));
  }

  /** Growth factor at a daily mean temperature, 0-1. */
  double at(double meanC) {
    if (beta) {
      return GrowingPotential.betaFraction(meanC, baseC, optimumC, widthC);
    }
    return heldAboveOptimum
        ? GrowingPotential.gaussianHeldAboveOptimumFraction(meanC, optimumC, widthC)
        : GrowingPotential.gaussianFraction(meanC, optimumC, widthC);
  }
}
