package leafturn.model.soil;

import static leafturn.model.Flows.AMMONIUM_TIED_UP_N;
import static leafturn.model.Flows.DECAYED_C;
import static leafturn.model.Flows.DECAYED_N;
import static leafturn.model.Flows.DECAY_FRACTION;
import static leafturn.model.Flows.DECAY_SCALE;
import static leafturn.model.Flows.DECAY_VOLATILISED_N;
import static leafturn.model.Flows.INCORPORATED_N;
import static leafturn.model.Flows.METABOLIC_LOST_FRACTION;
import static leafturn.model.Flows.NITRATE_TIED_UP_N;
import static leafturn.model.Flows.RESPIRED_C;
import static leafturn.model.Flows.TO_MICROBES_N;
import static leafturn.model.Flows.VOLATILISED_N;
import static leafturn.model.Stores.AMMONIUM_N;
import static leafturn.model.Stores.CLIPPING_THATCH_C;
import static leafturn.model.Stores.CLIPPING_THATCH_N;
import static leafturn.model.Stores.CLIPPING_THATCH_P;
import static leafturn.model.Stores.DECAYING;
import static leafturn.model.Stores.DECAYING_CLIPPINGS;
import static leafturn.model.Stores.HUMUS_P;
import static leafturn.model.Stores.METABOLIC_C;
import static leafturn.model.Stores.METABOLIC_N;
import static leafturn.model.Stores.METABOLIC_P;
import static leafturn.model.Stores.MICROBE_C;
import static leafturn.model.Stores.MICROBE_N;
import static leafturn.model.Stores.NITRATE_N;
import static leafturn.model.Stores.SOIL_P;
import static leafturn.model.Stores.STRUCTURAL_C;
import static leafturn.model.Stores.STRUCTURAL_N;
import static leafturn.model.Stores.STRUCTURAL_P;

import leafturn.model.Bounds;
import leafturn.model.FirstOrder;
import leafturn.model.Parameters;

/**
 * Decay of clippings, thatch and fresh soil organic matter through microbes. Each pool loses a
 * fraction of its carbon; microbes keep part of it and claim N for it, first from the decaying
 * pool, then from ammonium and nitrate. Where N is short, all decay slows down.
 */
public final class Decomposition {
  /** Keeps mineral N from falling below zero by rounding when decay is limited by it. */
  private static final double ROUNDING_MARGIN = 1 - 1e-12;

  private final double[] ratePerDay;
  private final double nitrogenExponent;
  private final double efficiency;
  private final double nitrogenNeedPerCarbon;
  private final double reachableMineralFraction;
  private final double clippingsVolatilisedFraction;
  private final double availablePhosphorusFraction;
  private final double incorporatedFraction;

  /**
   * @param parameters km, ks, kT, kfo, aN, E, cnm, amin, vclip, plab, kinc
   */
  public Decomposition(Parameters parameters) {
    double thatchRate = parameters.get("kT");
    this.ratePerDay =
        new double[] {
          parameters.get("km"), parameters.get("ks"), thatchRate, thatchRate, parameters.get("kfo")
        };
    this.nitrogenExponent = parameters.get("aN");
    this.efficiency = parameters.get("E");
    this.nitrogenNeedPerCarbon = efficiency / parameters.get("cnm");
    this.reachableMineralFraction = parameters.get("amin");
    this.clippingsVolatilisedFraction = parameters.get("vclip");
    this.availablePhosphorusFraction = parameters.get("plab");
    this.incorporatedFraction = FirstOrder.lostFraction(parameters.get("kinc"));
  }

  /**
   * One day of decay.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param airDecay temperature factor of decay at air temperature, 1 at 20 °C
   * @param soilDecay temperature factor of decay at soil temperature
   * @param moisture moisture factor of decay, 0-1
   */
  public void step(
      double[] stores, double[] flows, double airDecay, double soilDecay, double moisture) {
    losses(stores, flows, airDecay * moisture, soilDecay * moisture);
    double scale = scale(stores, flows);
    flows[DECAY_SCALE] = scale;
    moveCarbonAndPhosphorus(stores, flows, scale);
    moveNitrogen(stores, flows, scale);
    incorporate(stores, flows);
  }

  /** Unscaled losses of carbon and N of each pool. */
  private void losses(double[] stores, double[] flows, double atAir, double atSoil) {
    for (int pool = 0; pool < DECAYING; pool++) {
      boolean clippings = pool < DECAYING_CLIPPINGS;
      double time = ratePerDay[pool] * (clippings ? atAir : atSoil);
      double carbonFraction = FirstOrder.lostFraction(time);
      double nitrogenFraction =
          clippings ? FirstOrder.lostFraction(nitrogenExponent * time) : carbonFraction;
      flows[DECAY_FRACTION + pool] = carbonFraction;
      flows[DECAYED_C + pool] = stores[METABOLIC_C + pool] * carbonFraction;
      flows[DECAYED_N + pool] = stores[METABOLIC_N + pool] * nitrogenFraction;
    }
    flows[METABOLIC_LOST_FRACTION] = stores[METABOLIC_C] > 0 ? flows[DECAY_FRACTION] : 1;
  }

  /**
   * Share of the decay that N allows: what the pools free and microbes can reach over what they
   * claim, lowered further if mineral N would run below zero.
   */
  private double scale(double[] stores, double[] flows) {
    double mineral = stores[AMMONIUM_N] + stores[NITRATE_N];
    double demand = 0;
    double limit = reachableMineralFraction * mineral;
    double netTaken = 0;
    for (int pool = 0; pool < DECAYING; pool++) {
      double need = need(flows[DECAYED_C + pool]);
      double freed = flows[DECAYED_N + pool];
      demand += need;
      limit += freed;
      netTaken += freed < need ? need - freed : -(1 - volatilisedFraction(pool)) * (freed - need);
    }
    double scale = limit < demand ? limit / demand : 1;
    return scale * netTaken > mineral ? ROUNDING_MARGIN * mineral / netTaken : scale;
  }

  private double need(double carbon) {
    return nitrogenNeedPerCarbon * carbon;
  }

  private double volatilisedFraction(int pool) {
    return pool < DECAYING_CLIPPINGS ? clippingsVolatilisedFraction : 0;
  }

  private void moveCarbonAndPhosphorus(double[] stores, double[] flows, double scale) {
    double allCarbon = 0;
    double allPhosphorus = 0;
    for (int pool = 0; pool < DECAYING; pool++) {
      double carbon = scale * flows[DECAYED_C + pool];
      double phosphorus = scale * flows[DECAY_FRACTION + pool] * stores[METABOLIC_P + pool];
      stores[METABOLIC_C + pool] -= carbon;
      stores[METABOLIC_P + pool] -= phosphorus;
      flows[DECAYED_C + pool] = carbon;
      allCarbon += carbon;
      allPhosphorus += phosphorus;
    }
    stores[MICROBE_C] += efficiency * allCarbon;
    flows[RESPIRED_C] += (1 - efficiency) * allCarbon;
    stores[SOIL_P] += availablePhosphorusFraction * allPhosphorus;
    stores[HUMUS_P] += (1 - availablePhosphorusFraction) * allPhosphorus;
  }

  /**
   * Pool by pool: microbes take what they need from the pool's own N; the rest is freed, or what is
   * missing comes from ammonium, then from nitrate. What mineral N cannot give yet is owed until a
   * later pool frees it; the scale sees to it that nothing is owed in the end.
   */
  private void moveNitrogen(double[] stores, double[] flows, double scale) {
    double ammonium = stores[AMMONIUM_N];
    double nitrate = stores[NITRATE_N];
    double toMicrobes = 0;
    double allVolatilised = 0;
    double owed = 0;
    for (int pool = 0; pool < DECAYING; pool++) {
      double nitrogen = scale * flows[DECAYED_N + pool];
      double need = need(flows[DECAYED_C + pool]);
      double direct = Bounds.atMost(nitrogen, need);
      double volatilised = volatilisedFraction(pool) * (nitrogen - direct);
      double claimed = owed + need - direct;
      ammonium += nitrogen - direct - volatilised;
      double fromAmmonium = Bounds.atMost(ammonium, claimed);
      double fromNitrate = Bounds.atMost(nitrate, claimed - fromAmmonium);
      ammonium -= fromAmmonium;
      nitrate -= fromNitrate;
      owed = claimed - fromAmmonium - fromNitrate;
      toMicrobes += direct + fromAmmonium + fromNitrate;
      allVolatilised += volatilised;
      stores[METABOLIC_N + pool] -= nitrogen;
      flows[DECAYED_N + pool] = nitrogen;
      flows[TO_MICROBES_N + pool] = direct;
      flows[AMMONIUM_TIED_UP_N + pool] = fromAmmonium;
      flows[NITRATE_TIED_UP_N + pool] = fromNitrate;
      flows[DECAY_VOLATILISED_N + pool] = volatilised;
    }
    stores[AMMONIUM_N] = ammonium;
    stores[NITRATE_N] = nitrate;
    stores[MICROBE_N] += toMicrobes;
    flows[VOLATILISED_N] += allVolatilised;
  }

  /** Part of the slow clippings passes into thatch. */
  private void incorporate(double[] stores, double[] flows) {
    flows[INCORPORATED_N] = incorporatedFraction * stores[STRUCTURAL_N];
    move(stores, STRUCTURAL_C, CLIPPING_THATCH_C);
    move(stores, STRUCTURAL_N, CLIPPING_THATCH_N);
    move(stores, STRUCTURAL_P, CLIPPING_THATCH_P);
  }

  private void move(double[] stores, int from, int to) {
    double amount = incorporatedFraction * stores[from];
    stores[from] -= amount;
    stores[to] += amount;
  }
}
