package leafturn.model.soil;

import static leafturn.model.Flows.HUMUS_TO_AMMONIUM_N;
import static leafturn.model.Flows.MICROBES_TO_AMMONIUM_N;
import static leafturn.model.Flows.MICROBES_TO_HUMUS_N;
import static leafturn.model.Flows.RESPIRED_C;
import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.HUMUS_C;
import static leafturn.model.Stores.HUMUS_N;
import static leafturn.model.Stores.HUMUS_P;
import static leafturn.model.Stores.MICROBE_C;
import static leafturn.model.Stores.MICROBE_N;
import static leafturn.model.Stores.SOIL_P;

import leafturn.model.Bounds;
import leafturn.model.FirstOrder;
import leafturn.model.Parameters;

/** Turnover of soil microbes and mineralisation of soil organic matter. */
public final class Humus {
  private final double microbeRatePerDay;
  private final double humifiedFraction;
  private final double humusCarbonToNitrogen;
  private final double humusRatePerDay;

  /**
   * @param parameters kb, h, cns, ksom, somNorm
   */
  public Humus(Parameters parameters) {
    this.microbeRatePerDay = parameters.get("kb");
    this.humifiedFraction = parameters.get("h");
    this.humusCarbonToNitrogen = parameters.get("cns");
    this.humusRatePerDay = parameters.get("ksom") / 365 * parameters.get("somNorm");
  }

  /**
   * One day.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param soilDecay temperature factor of decay at soil temperature
   * @param moisture moisture factor of decay, 0-1
   */
  public void step(double[] stores, double[] flows, double soilDecay, double moisture) {
    double time = soilDecay * moisture;
    turnMicrobesOver(stores, flows, FirstOrder.lostFraction(microbeRatePerDay * time));
    mineralise(stores, flows, FirstOrder.lostFraction(humusRatePerDay * time));
  }

  private void turnMicrobesOver(double[] stores, double[] flows, double fraction) {
    double nitrogen = fraction * stores[MICROBE_N];
    double carbon = fraction * stores[MICROBE_C];
    double humified = humifiedFraction * nitrogen;
    double carbonToHumus = Bounds.atMost(carbon, humified * humusCarbonToNitrogen);
    stores[MICROBE_N] -= nitrogen;
    stores[MICROBE_C] -= carbon;
    stores[HUMUS_N] += humified;
    stores[HUMUS_C] += carbonToHumus;
    stores[AMMONIUM_N] += nitrogen - humified;
    flows[RESPIRED_C] += carbon - carbonToHumus;
    flows[MICROBES_TO_HUMUS_N] = humified;
    flows[MICROBES_TO_AMMONIUM_N] = nitrogen - humified;
  }

  private static void mineralise(double[] stores, double[] flows, double fraction) {
    double nitrogen = fraction * stores[HUMUS_N];
    double carbon = fraction * stores[HUMUS_C];
    double phosphorus = fraction * stores[HUMUS_P];
    stores[HUMUS_N] -= nitrogen;
    stores[HUMUS_C] -= carbon;
    stores[HUMUS_P] -= phosphorus;
    stores[AMMONIUM_N] += nitrogen;
    stores[SOIL_P] += phosphorus;
    flows[RESPIRED_C] += carbon;
    flows[HUMUS_TO_AMMONIUM_N] = nitrogen;
  }
}
