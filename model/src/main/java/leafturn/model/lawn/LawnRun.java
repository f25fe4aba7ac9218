package leafturn.model.lawn;

import static leafturn.model.Flows.*;
import static leafturn.model.Stores.*;

import java.util.Arrays;
import leafturn.model.Flows;
import leafturn.model.Stores;
import leafturn.model.clippings.CutQuality;
import leafturn.model.clippings.CutQuality.Stalks;
import leafturn.model.grass.Turnover;
import org.jspecify.annotations.Nullable;

/**
 * One lawn living through days: the daily step in its fixed order, with the balances closed each
 * evening. Works in place and allocates nothing per day; for one thread.
 */
public final class LawnRun {
  private final LawnEquations equations;
  private final double[] stores;
  private final double[] flows = new double[Flows.COUNT];
  private final double[] totals = new double[Flows.BOUNDARY];
  private final Balance balance = new Balance();
  private DailyTerms terms;
  private double[] growthTemperature;
  private double soilC;
  private double leafHeightFactor;
  private double wateredMm;
  private double morningHeightMm;
  private @Nullable Stalks knownStalks;
  private int day;

  /**
   * @param equations of the lawn
   * @param start state to begin with
   * @param terms days to run through
   */
  public LawnRun(LawnEquations equations, LawnState start, DailyTerms terms) {
    this.equations = equations;
    this.stores = start.stores();
    this.soilC = start.soilC();
    this.terms = terms;
    this.growthTemperature = terms.growth(equations.thermalResponse);
    this.leafHeightFactor = equations.growth.heightFactor(stores[CUT_HEIGHT_MM]);
    balance.open(stores);
  }

  /**
   * Lives through days of the terms.
   *
   * @param from first day, inclusive
   * @param to last day, exclusive
   * @throws BalanceException if the account of a day does not close
   */
  public void live(int from, int to, Keeper keeper, DayListener listener) {
    for (day = from; day < to; day++) {
      Arrays.fill(flows, 0);
      wateredMm = 0;
      soilC = terms.soilC[day];
      keeper.morning(this);
      morningHeightMm = heightMm();
      step();
      flows[HEIGHT_BEFORE_MM] = heightMm();
      keeper.evening(this);
      balance.close(stores, flows, terms, day);
      for (int flow = 0; flow < totals.length; flow++) {
        totals[flow] += flows[flow];
      }
      listener.dayDone(this);
    }
  }

  /** The day's water, inputs, decay, plant and leaching, each with values already updated. */
  private void step() {
    stores[DAYS_SINCE_MOWING] += 1;
    equations.rootZone.step(stores, flows, terms.rainMm[day], wateredMm, terms.referenceEtMm[day]);
    flows[REFERENCE_ET_MM] = terms.referenceEtMm[day];
    double waterMm = flows[RAIN_MM] + flows[IRRIGATION_MM];
    double moisture = flows[DECAY_MOISTURE];
    double soilDecay = terms.soilDecay[day];
    double stress = flows[WATER_STRESS];

    equations.mineralNitrogen.receive(
        stores, flows, waterMm, terms.meanC[day], soilDecay * moisture);
    equations.decomposition.step(stores, flows, terms.airDecay[day], soilDecay, moisture);
    equations.humus.step(stores, flows, soilDecay, moisture);
    equations.clippingPotassium.step(stores, waterMm, flows[METABOLIC_LOST_FRACTION]);
    equations.mineralNitrogen.turnOver(stores, flows, soilC, soilDecay, flows[ROOT_ZONE_WATER]);
    equations.turnover.step(stores, flows, soilC, stress);
    equations.uptake.step(stores, flows, soilC, stress);
    flows[GROWTH_TEMPERATURE] = growthTemperature[day];
    equations.growth.step(
        stores,
        flows,
        growthTemperature[day] * flows[GROWTH_MOISTURE],
        leafHeightFactor * equations.reproductiveFactor(terms.dayOfYear[day], terms.southern),
        terms.radiationMj[day]);
    if (equations.cutQuality.eachItsOwn()) {
      equations.cutQuality.age(
          stores,
          flows[LEAF_GROWTH_G] * equations.mass.carbonFraction(),
          Turnover.warmthFraction(soilC));
    }
    equations.mineralNitrogen.leach(stores, flows, flows[DRAINAGE_MM]);
    equations.soilTest.leach(stores, flows, flows[DRAINAGE_MM], flows[RUNOFF_MM]);
  }

  /** Spreads fertiliser, elements in g/m2, 0 or more. In the morning. */
  public void feed(double fastNGPerM2, double slowNGPerM2, double pGPerM2, double kGPerM2) {
    stores[FAST_FERTILISER_N] += fastNGPerM2;
    stores[SLOW_FERTILISER_N] += slowNGPerM2;
    stores[SOIL_P] += pGPerM2;
    stores[SOIL_K] += kGPerM2;
    flows[FERTILISER_N] += fastNGPerM2 + slowNGPerM2;
    flows[FAST_FED_N] += fastNGPerM2;
    flows[FERTILISER_P] += pGPerM2;
    flows[FERTILISER_K] += kGPerM2;
  }

  /** Waters by hand, mm, 0 or more. In the morning. */
  public void water(double waterMm) {
    wateredMm += waterMm;
  }

  /**
   * Mows. In the evening. A cut below the present cut height lowers that height first.
   *
   * @param toHeightMm height the grass is cut to, mm
   * @param returnedShare share of the clippings returned, 0-1
   */
  public void cut(double toHeightMm, double returnedShare) {
    if (flows[MOWINGS] == 0) {
      flows[HEIGHT_BEFORE_MM] = heightMm(); // it may have been measured since the day was lived
    }
    if (toHeightMm < stores[CUT_HEIGHT_MM]) {
      setCutHeight(toHeightMm);
    }
    double aboveMm = heightMm() - stores[CUT_HEIGHT_MM];
    double leafFraction = aboveMm > 0 ? Math.max(0, (heightMm() - toHeightMm) / aboveMm) : 0;
    EarlierCuts earlier = EarlierCuts.of(flows);
    judge(toHeightMm);
    equations.cut.cut(stores, flows, leafFraction, returnedShare);
    earlier.countIn(flows);
  }

  private void judge(double toHeightMm) {
    int latest = Math.min(day, terms.days() - 1); // a cut may come before its day's weather
    Stalks bySeason =
        equations.reproductive(terms.dayOfYear[latest], terms.southern)
            ? Stalks.COMING_UP
            : Stalks.NONE;
    equations.cutQuality.judge(
        stores,
        flows,
        heightMm(),
        toHeightMm,
        new CutQuality.Leaf(
            equations.mass.leafNitrogenFraction(stores),
            knownStalks == null ? bySeason : knownStalks));
  }

  /** From now on cuts hold the seed stalks that someone saw or missed, whatever the season. */
  public void knowStalks(Stalks known) {
    knownStalks = known;
  }

  /**
   * Changes the height below which leaf counts as stubble; the grass keeps its height. Where the
   * new height is above the grass, all its leaf becomes stubble.
   *
   * @param cutHeightMm mm, positive
   */
  public void setCutHeight(double cutHeightMm) {
    double moved =
        (cutHeightMm - stores[CUT_HEIGHT_MM])
            * equations.leafGPerM2AndMm()
            * equations.mass.carbonFraction();
    moved = Math.min(stores[LEAF_C], Math.max(-stores[STUBBLE_C], moved));
    stores[LEAF_C] -= moved;
    stores[STUBBLE_C] += moved;
    if (moved < 0 && equations.cutQuality.eachItsOwn()) {
      equations.cutQuality.stubbleBecameLeaf(stores, -moved);
    }
    stores[CUT_HEIGHT_MM] = cutHeightMm;
    leafHeightFactor = equations.growth.heightFactor(cutHeightMm);
  }

  /**
   * Sets the grass to a measured height. What that adds or takes is booked as a correction of C, N,
   * P and K. A height below the cut height leaves no leaf above it.
   *
   * @param measuredMm mm, 0 or more
   */
  public void correctHeight(double measuredMm) {
    double wantedG = Math.max(0, measuredMm - stores[CUT_HEIGHT_MM]) * equations.leafGPerM2AndMm();
    double addedG = wantedG - equations.mass.leafG(stores);
    double share = addedG * equations.mass.leafNitrogenFraction(stores) / stores[PLANT_N];
    correct(LEAF_C, CORRECTION_C, addedG * equations.mass.carbonFraction());
    correct(PLANT_N, CORRECTION_N, share * stores[PLANT_N]);
    correct(PLANT_P, CORRECTION_P, share * stores[PLANT_P]);
    correct(PLANT_K, CORRECTION_K, share * stores[PLANT_K]);
  }

  private void correct(int store, int flow, double amount) {
    double added = Math.max(amount, -stores[store]);
    stores[store] += added;
    flows[flow] += added;
  }

  /** Equations of the lawn. */
  public LawnEquations equations() {
    return equations;
  }

  /** The days it runs through. */
  public DailyTerms terms() {
    return terms;
  }

  /** Index of the present day in the terms. */
  public int day() {
    return day;
  }

  /** A store of the present moment, by its index in {@link Stores}. */
  public double store(int store) {
    return stores[store];
  }

  /** A flow or read-out of the present day, by its index in {@link Flows}. */
  public double flow(int flow) {
    return flows[flow];
  }

  /** A boundary flow summed up since the start of the run. */
  public double total(int flow) {
    return totals[flow];
  }

  /** Soil temperature, °C. */
  public double soilC() {
    return soilC;
  }

  /** Days since the last mowing; a mowing day counts 0. */
  public double daysSinceMowing() {
    return stores[DAYS_SINCE_MOWING];
  }

  /** Height of the grass, mm. */
  public double heightMm() {
    return equations.mass.heightMm(stores);
  }

  /** Height of the grass as the day that is lived began, before its growth, mm. */
  public double morningHeightMm() {
    return morningHeightMm;
  }

  /** N fraction of leaf, g/g. */
  public double leafNitrogenFraction() {
    return equations.mass.leafNitrogenFraction(stores);
  }

  /** Thatch, mm. */
  public double thatchMm() {
    return equations.thatchMm(stores);
  }

  /** Share of the thatch that came from clippings, 0-1. */
  public double clippingsShareOfThatch() {
    return equations.clippingsShareOfThatch(stores);
  }

  /** Soil-test P, ppm. */
  public double soilPhosphorusPpm() {
    return equations.soilPhosphorusPpm(stores);
  }

  /** Soil-test K, ppm. */
  public double soilPotassiumPpm() {
    return equations.soilPotassiumPpm(stores);
  }

  /** Largest balance errors so far: C, N, P, K in g/m2, water in mm. */
  public double[] worstBalanceErrors() {
    return balance.worst();
  }

  /** The state at the present moment. */
  public LawnState state() {
    return new LawnState(stores, soilC);
  }
}
