package leafturn.model.water;

import static leafturn.model.Flows.DECAY_MOISTURE;
import static leafturn.model.Flows.DRAINAGE_MM;
import static leafturn.model.Flows.EVAPOTRANSPIRATION_MM;
import static leafturn.model.Flows.GROWTH_MOISTURE;
import static leafturn.model.Flows.IRRIGATION_MM;
import static leafturn.model.Flows.RAIN_MM;
import static leafturn.model.Flows.ROOT_ZONE_WATER;
import static leafturn.model.Flows.RUNOFF_MM;
import static leafturn.model.Flows.WATER_STRESS;
import static leafturn.model.Stores.DEPLETION_MM;
import static leafturn.model.Stores.IRRIGATION_ACCOUNT_MM;

import leafturn.model.Bounds;
import leafturn.model.Parameters;

/**
 * Water of the root zone by the day: runoff by curve number, irrigation programme,
 * evapotranspiration under stress, drainage, and the moisture factors of decay and growth.
 */
public final class RootZone {
  private final double availableMm;
  private final double perAvailableMm;
  private final double perStressedMm;
  private final double readilyAvailableMm;
  private final double retentionMm;
  private final double cropCoefficient;
  private final double irrigationShare;
  private final double irrigationTriggerMm;
  private final double growthExponent;

  /**
   * @param parameters fc, wp, zr, ptab, cn, kc, irr, irrTrig, wg
   */
  public RootZone(Parameters parameters) {
    this.availableMm = 1000 * (parameters.get("fc") - parameters.get("wp")) * parameters.get("zr");
    this.readilyAvailableMm = parameters.get("ptab") * availableMm;
    this.perAvailableMm = 1 / availableMm;
    this.perStressedMm = 1 / ((1 - parameters.get("ptab")) * availableMm);
    this.retentionMm = CurveNumberRunoff.retentionMm(parameters.get("cn"));
    this.cropCoefficient = parameters.get("kc");
    this.irrigationShare = parameters.get("irr");
    this.irrigationTriggerMm = parameters.get("irrTrig");
    this.growthExponent = parameters.get("wg");
  }

  /** Water the root zone holds between wilting point and field capacity, mm. */
  public double availableMm() {
    return availableMm;
  }

  /**
   * One day of water.
   *
   * @param stores state, changed
   * @param flows day's flows, written
   * @param rainMm rain, mm, 0 or more
   * @param wateredMm water given by hand, mm, 0 or more
   * @param referenceEtMm reference evapotranspiration, mm, 0 or more
   */
  public void step(
      double[] stores, double[] flows, double rainMm, double wateredMm, double referenceEtMm) {
    double demandMm = cropCoefficient * referenceEtMm;
    double runoffMm = CurveNumberRunoff.runoffMm(rainMm, retentionMm);
    double irrigationMm = wateredMm + programmeMm(stores, demandMm - rainMm);
    double depletionMm = stores[DEPLETION_MM];
    double stress =
        depletionMm <= readilyAvailableMm
            ? 1
            : Bounds.atLeast(0, (availableMm - depletionMm) * perStressedMm);
    double infiltrationMm = rainMm - runoffMm + irrigationMm;
    double evapotranspirationMm =
        Bounds.atMost(availableMm - depletionMm + infiltrationMm, stress * demandMm);
    double after = depletionMm - infiltrationMm + evapotranspirationMm;
    // Rounding may leave the root zone a hair drier than empty; it is empty then.
    stores[DEPLETION_MM] = Bounds.atMost(availableMm, Bounds.atLeast(0, after));
    double water = 1 - stores[DEPLETION_MM] * perAvailableMm;

    flows[RAIN_MM] = rainMm;
    flows[RUNOFF_MM] = runoffMm;
    flows[IRRIGATION_MM] = irrigationMm;
    flows[EVAPOTRANSPIRATION_MM] = evapotranspirationMm;
    flows[DRAINAGE_MM] = after < 0 ? -after : 0;
    flows[WATER_STRESS] = stress;
    flows[ROOT_ZONE_WATER] = water;
    flows[DECAY_MOISTURE] = Bounds.atMost(1, 0.1 + 0.9 * Math.sqrt(water));
    flows[GROWTH_MOISTURE] = growthExponent == 2 ? water * water : Math.pow(water, growthExponent);
  }

  /**
   * Irrigation of the programme: the saved-up demand's share once the demand reaches the trigger.
   */
  private double programmeMm(double[] stores, double missingMm) {
    if (irrigationShare == 0) {
      return 0;
    }
    double accountMm = Bounds.atLeast(0, stores[IRRIGATION_ACCOUNT_MM] + missingMm);
    if (accountMm < irrigationTriggerMm) {
      stores[IRRIGATION_ACCOUNT_MM] = accountMm;
      return 0;
    }
    stores[IRRIGATION_ACCOUNT_MM] = 0;
    return irrigationShare * accountMm;
  }
}
