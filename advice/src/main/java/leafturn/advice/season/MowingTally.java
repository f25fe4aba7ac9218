package leafturn.advice.season;

import leafturn.advice.call.CallRule;
import leafturn.advice.call.CallRules;
import leafturn.advice.call.ClumpRisk;
import leafturn.model.Flows;
import leafturn.model.Stores;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import leafturn.model.lawn.ReturnRule;

/**
 * Looks at each mowing of a run: decides what becomes of its clippings where the programme leaves
 * that to the rules, and counts what a plan reports. Reads the day's state only: the height, the
 * cut, the day's water and the rain of the day before.
 *
 * <p>What a cut takes of the height is judged, as in advice for a day, by the height that the day
 * began with: a run mows in the evening, and the growth of the day itself, which a daily step
 * cannot divide, is nobody's delay. A cut on the first day on which a third is due is so within it.
 */
final class MowingTally implements ReturnRule {
  private final ReturnPractice practice;
  private final double dryGPerMm;
  private final double mostTakenFraction;
  private final double mostLengthMm;
  private final double mostClumpIndex;
  private final double deckFactor;
  private final double dryLimitG;
  private final double wetLimitG;
  private final double wetMm;
  private final double wetYesterdayMm;

  private int clumpMowings;
  private int thirdRuleBroken;
  private double keptPhosphorusG;
  private double keptPotassiumG;

  MowingTally(Programme programme, LawnEquations equations, CallRules rules) {
    this.practice = programme.mowing().clippings();
    this.dryGPerMm = equations.leafGPerM2AndMm() * equations.parameters().get("eff");
    this.mostTakenFraction =
        rules.threshold(CallRule.ONE_THIRD) + rules.threshold(CallRule.ONE_THIRD_TOLERANCE);
    this.mostLengthMm = rules.threshold(CallRule.LENGTH);
    this.mostClumpIndex = rules.threshold(CallRule.CLUMPS);
    this.deckFactor = rules.threshold(CallRule.DECK_FACTOR);
    this.dryLimitG = rules.threshold(CallRule.CLUMP_LIMIT_DRY);
    this.wetLimitG = rules.threshold(CallRule.CLUMP_LIMIT_WET);
    this.wetMm = rules.threshold(CallRule.WET);
    this.wetYesterdayMm = rules.threshold(CallRule.WET_YESTERDAY);
  }

  /** Begins to count anew. */
  void clear() {
    clumpMowings = 0;
    thirdRuleBroken = 0;
    keptPhosphorusG = 0;
    keptPotassiumG = 0;
  }

  @Override
  public double returnedShare(LawnRun run, double toHeightMm) {
    double heightMm = run.heightMm();
    double lengthMm = Math.max(0, heightMm - toHeightMm);
    double dryG = lengthMm * dryGPerMm;
    boolean breaksThirdRule = 1 - toHeightMm / run.morningHeightMm() > mostTakenFraction;
    double limitG = wet(run) ? wetLimitG : dryLimitG;
    boolean clumps = ClumpRisk.index(dryG, deckFactor, limitG) > mostClumpIndex;
    double share = practice.share();
    if (practice.byRules()) {
      share = breaksThirdRule || clumps || lengthMm > mostLengthMm ? 0 : 1;
    }
    if (breaksThirdRule) {
      thirdRuleBroken++;
    }
    if (share > 0 && ClumpRisk.index(share * dryG, deckFactor, limitG) > mostClumpIndex) {
      clumpMowings++;
    }
    double nitrogenG = share * dryG * run.leafNitrogenFraction();
    keptPhosphorusG += nitrogenG * run.store(Stores.PLANT_P) / run.store(Stores.PLANT_N);
    keptPotassiumG += nitrogenG * run.store(Stores.PLANT_K) / run.store(Stores.PLANT_N);
    return share;
  }

  private boolean wet(LawnRun run) {
    double todayMm = run.flow(Flows.RAIN_MM) + run.flow(Flows.IRRIGATION_MM);
    int day = run.day();
    return todayMm > wetMm || day > 0 && run.terms().rainMm(day - 1) > wetYesterdayMm;
  }

  /** Mowings whose returned clippings are likely to lie in clumps. */
  int clumpMowings() {
    return clumpMowings;
  }

  /** Mowings that took more of the height than the one-third rule lets off. */
  int thirdRuleBroken() {
    return thirdRuleBroken;
  }

  double keptPhosphorusG() {
    return keptPhosphorusG;
  }

  double keptPotassiumG() {
    return keptPotassiumG;
  }
}
