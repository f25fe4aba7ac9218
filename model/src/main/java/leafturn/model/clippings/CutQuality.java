package leafturn.model.clippings;

import static leafturn.model.Flows.CUT_FAST_FRACTION;
import static leafturn.model.Flows.CUT_LEAF_AGE_DAYS;
import static leafturn.model.Flows.CUT_LENGTH_MM;
import static leafturn.model.Flows.CUT_LIGNIN_FRACTION;
import static leafturn.model.Flows.CUT_N_FACTOR;
import static leafturn.model.Flows.CUT_STALK_FRACTION;
import static leafturn.model.Stores.LEAF_AGE_DAYS;
import static leafturn.model.Stores.LEAF_C;

import leafturn.model.Bounds;
import leafturn.model.FirstOrder;
import leafturn.model.Parameters;

/**
 * What kind of litter a cut makes. Either all cuts are of one kind, or each has its own, from the
 * age of its leaf, the share of the height taken, seed stalks and the length of the pieces.
 *
 * <p>A cut of its own kind has a fast share and a slow rate of its own. Clippings of all mowings
 * lie in one fast and one slow pool, and only pools that keep their rates may be merged exactly; so
 * a cut's quality is carried by its split between the two pools alone, chosen such that the mean
 * life of its carbon is the one its own share and rates would give.
 */
public final class CutQuality {
  private static final double THIRD = 1.0 / 3;
  private static final double SHORTEST_MM = 10;
  private static final double LEAST_NITROGEN_FRACTION = 1e-3;

  private final boolean eachItsOwn;
  private final double commonFastFraction;
  private final Lignin lignin;
  private final Nitrogen nitrogen;
  private final Breakdown breakdown;
  private final double stalkFraction;
  private final double stalkAgeDays;
  private final double stubbleAgeDays;

  /**
   * @param parameters qual, fm, km, ks and those of each cut's own quality
   */
  public CutQuality(Parameters parameters) {
    this.eachItsOwn = parameters.get("qual") == 1;
    this.commonFastFraction = parameters.get("fm");
    this.lignin =
        new Lignin(
            parameters.get("lig0"),
            parameters.get("ligAge"),
            parameters.get("ligDeep"),
            parameters.get("ligStalk"),
            parameters.get("ligMax"));
    this.nitrogen =
        new Nitrogen(parameters.get("ageRef"), parameters.get("nAge"), parameters.get("nStalk"));
    this.breakdown =
        new Breakdown(
            parameters.get("km"),
            parameters.get("ks"),
            parameters.get("ligRef"),
            parameters.get("lenRef"),
            parameters.get("lenExp"),
            parameters.get("lenCut"));
    this.stalkFraction = parameters.get("stalk");
    this.stalkAgeDays = parameters.get("stalkAge");
    this.stubbleAgeDays = parameters.get("ageStub");
  }

  private record Lignin(double young, double perDay, double deep, double stalk, double most) {
    double fraction(double ageDays, double takenFraction, double stalkShare) {
      double beyondThird = Bounds.atLeast(0, takenFraction - THIRD);
      return Bounds.atMost(
          most, young + perDay * ageDays + deep * beyondThird + stalk * stalkShare);
    }
  }

  private record Nitrogen(double referenceDays, double exponent, double stalk) {
    /** N of clippings over that of the whole plant's leaf. */
    double factor(double ageDays, double stalkShare) {
      double age = Math.pow((1 + referenceDays) / (1 + ageDays), exponent);
      return age * (1 - stalkShare * (1 - stalk));
    }
  }

  private record Breakdown(
      double fastRate,
      double slowRate,
      double referenceLignin,
      double referenceMm,
      double lengthExponent,
      double lengthPerHeight) {

    double lengthMm(double removedMm) {
      return lengthPerHeight * removedMm;
    }

    double fastFraction(double ligninFraction, double nitrogenFraction, double lengthMm) {
      double fast = TwoPoolDecay.fastFraction(ligninFraction, nitrogenFraction);
      double inSlow = Bounds.fraction(ligninFraction / (1 - fast));
      double slow = slowRate * TwoPoolDecay.ligninFactor(inSlow - referenceLignin);
      double speed = Math.pow(referenceMm / Bounds.atLeast(SHORTEST_MM, lengthMm), lengthExponent);
      double meanLife = TwoPoolDecay.meanLifeDays(fast, fastRate, slow) / speed;
      return TwoPoolDecay.fastFractionOfMeanLife(meanLife, fastRate, slowRate);
    }
  }

  /** True when each cut has its own quality. */
  public boolean eachItsOwn() {
    return eachItsOwn;
  }

  /**
   * The leaf ages by a day and is made younger by what grew.
   *
   * @param stores state after the day's growth, changed
   * @param grownC leaf grown on the day, g C/m2
   * @param warmthFraction days at 20 °C the day counts for, 0-1
   */
  public void age(double[] stores, double grownC, double warmthFraction) {
    double leaf = stores[LEAF_C];
    double oldShare = leaf > 0 ? Bounds.fraction(1 - grownC / leaf) : 0;
    stores[LEAF_AGE_DAYS] = oldShare * (stores[LEAF_AGE_DAYS] + warmthFraction);
  }

  /**
   * Old leaf that counted as stubble now counts as leaf, because the cut height was lowered.
   *
   * @param stores state after the move, changed
   * @param movedC g C/m2, positive
   */
  public void stubbleBecameLeaf(double[] stores, double movedC) {
    double share = Bounds.fraction(movedC / stores[LEAF_C]);
    stores[LEAF_AGE_DAYS] = share * stubbleAgeDays + (1 - share) * stores[LEAF_AGE_DAYS];
  }

  /**
   * Judges the cut about to be made and writes its quality into the flows.
   *
   * @param stores state before the cut
   * @param flows day's flows, written
   * @param heightMm height of the grass, mm
   * @param toHeightMm height it will be cut to, mm
   * @param leaf N fraction of the leaf, and what is known of seed stalks in it
   */
  public void judge(
      double[] stores, double[] flows, double heightMm, double toHeightMm, Leaf leaf) {
    double removedMm = Bounds.atLeast(0, heightMm - toHeightMm);
    double age = stores[LEAF_AGE_DAYS];
    flows[CUT_LEAF_AGE_DAYS] = age;
    flows[CUT_LENGTH_MM] = breakdown.lengthMm(removedMm);
    if (!eachItsOwn) {
      flows[CUT_FAST_FRACTION] = commonFastFraction;
      flows[CUT_N_FACTOR] = 1;
      return;
    }
    double stalks =
        switch (leaf.stalks()) {
          case NONE -> 0;
          case COMING_UP -> stalkFraction * FirstOrder.lostFraction(age / stalkAgeDays);
          case SEEN -> stalkFraction;
        };
    double takenFraction = heightMm > 0 ? removedMm / heightMm : 0;
    double factor = nitrogen.factor(age, stalks);
    double inDryMatter = Bounds.atLeast(LEAST_NITROGEN_FRACTION, factor * leaf.nitrogenFraction());
    flows[CUT_STALK_FRACTION] = stalks;
    flows[CUT_N_FACTOR] = factor;
    flows[CUT_LIGNIN_FRACTION] = lignin.fraction(age, takenFraction, stalks);
    flows[CUT_FAST_FRACTION] =
        breakdown.fastFraction(
            flows[CUT_LIGNIN_FRACTION], Bounds.fraction(inDryMatter), flows[CUT_LENGTH_MM]);
  }

  /**
   * @param nitrogenFraction N of the leaf, g/g dry matter
   * @param stalks seed stalks among the leaf
   */
  public record Leaf(double nitrogenFraction, Stalks stalks) {}

  /** Seed stalks among the leaf. */
  public enum Stalks {
    NONE,
    /** In the reproductive phase: the more the longer nothing was cut. */
    COMING_UP,
    /** Someone saw them, so they are up. */
    SEEN
  }
}
