package leafturn.model.clippings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.clippings.CutQuality.Stalks;
import leafturn.model.grass.Species;
import leafturn.quantity.Property;
import org.junit.jupiter.api.Test;

class CutQualityClosedFormTest {
  private static final double LEAF_N = 0.039;

  @Test
  void commonClippingsAreOfOneKindWhateverIsCut() {
    double[] flows = cut(Map.of("qual", 0.0), 30, 200, 50, true);

    assertThat(flows[Flows.CUT_FAST_FRACTION]).isEqualTo(0.85);
    assertThat(flows[Flows.CUT_N_FACTOR]).isEqualTo(1);
    assertThat(flows[Flows.CUT_LIGNIN_FRACTION]).isZero();
  }

  @Test
  void theMeanCutOfWeeklyMowingIsTheCommonKind() {
    double[] flows = own(3.3, 109, 76, false);

    assertThat(flows[Flows.CUT_N_FACTOR]).isEqualTo(1);
    assertThat(flows[Flows.CUT_LIGNIN_FRACTION]).isEqualTo(0.025 + 0.0018 * 3.3, within(1e-12));
    assertThat(flows[Flows.CUT_FAST_FRACTION]).isEqualTo(0.85, within(0.015));
  }

  @Test
  void itsMeanLifeIsThatOfItsOwnShareAndRates() {
    double[] flows = own(8, 130, 76, false);
    double lignin = flows[Flows.CUT_LIGNIN_FRACTION];
    double share = TwoPoolDecay.fastFraction(lignin, LEAF_N * flows[Flows.CUT_N_FACTOR]);
    double slower = Math.exp(-3 * (lignin / (1 - share) - 0.21));
    double faster = Math.pow(33.0 / (130 - 76), 0.2);

    assertThat(lignin)
        .isEqualTo(0.025 + 0.0018 * 8 + 0.09 * ((130 - 76) / 130.0 - 1.0 / 3), within(1e-12));
    assertThat(TwoPoolDecay.meanLifeDays(flows[Flows.CUT_FAST_FRACTION], 0.045, 0.012))
        .isEqualTo((share / 0.045 + (1 - share) / (0.012 * slower)) / faster, within(1e-9));
  }

  @Test
  void ageDepthAndStalksEachMakeItLastLonger() {
    double fast = own(3, 110, 76, false)[Flows.CUT_FAST_FRACTION];

    assertThat(own(6, 110, 76, false)[Flows.CUT_FAST_FRACTION]).isLessThan(fast);
    assertThat(own(3, 130, 96, false)[Flows.CUT_FAST_FRACTION])
        .as("as long, but less of the height")
        .isGreaterThan(own(3, 80, 46, false)[Flows.CUT_FAST_FRACTION]);
    assertThat(own(3, 110, 76, true)[Flows.CUT_FAST_FRACTION]).isLessThan(fast);
    assertThat(cut(Map.of("qual", 1.0, "lenCut", 0.5), 3, 110, 76, false)[Flows.CUT_FAST_FRACTION])
        .as("chopped")
        .isGreaterThan(fast);
  }

  @Test
  void stalksComeUpWithTimeAndHoldLessNitrogen() {
    double[] flows = own(10, 110, 76, true);

    assertThat(flows[Flows.CUT_STALK_FRACTION]).isEqualTo(0.15 * (1 - Math.exp(-1)), within(1e-12));
    assertThat(flows[Flows.CUT_N_FACTOR])
        .isEqualTo(
            Math.pow(4.3 / 11, 0.1) * (1 - flows[Flows.CUT_STALK_FRACTION] / 2), within(1e-12));
  }

  @Test
  void leafAgesByTheDayAndGrowthMakesItYounger() {
    CutQuality quality = new CutQuality(Parameters.of(Species.TALL_FESCUE));
    double[] stores = new double[Stores.COUNT];
    stores[Stores.LEAF_C] = 8;
    stores[Stores.LEAF_AGE_DAYS] = 3;

    quality.age(stores, 2, 0.5);
    assertThat(stores[Stores.LEAF_AGE_DAYS]).isEqualTo(0.75 * 3.5);
    quality.stubbleBecameLeaf(stores, 4);
    assertThat(stores[Stores.LEAF_AGE_DAYS]).isEqualTo((2.625 + 20) / 2);
    stores[Stores.LEAF_C] = 0;
    quality.age(stores, 0, 0.5);
    assertThat(stores[Stores.LEAF_AGE_DAYS]).isZero();
  }

  @Test
  void theSplitGivesBackItsMeanLife() {
    Property.forAll(
        20261125,
        Property.cases(1000),
        random -> {
          double share = random.nextDouble();
          double life = TwoPoolDecay.meanLifeDays(share, 0.045, 0.012);
          assertThat(TwoPoolDecay.fastFractionOfMeanLife(life, 0.045, 0.012))
              .isEqualTo(share, within(1e-12));
        });
    assertThat(TwoPoolDecay.fastFractionOfMeanLife(1000, 0.045, 0.012)).isZero();
    assertThat(TwoPoolDecay.fastFractionOfMeanLife(5, 0.045, 0.012)).isEqualTo(1);
    assertThat(TwoPoolDecay.ligninFactor(0)).isEqualTo(1);
    assertThat(TwoPoolDecay.ligninFactor(0.3)).isEqualTo(Math.exp(-0.9), within(1e-15));
  }

  private static double[] own(double age, double heightMm, double toMm, boolean reproductive) {
    return cut(Map.of("qual", 1.0), age, heightMm, toMm, reproductive);
  }

  private static double[] cut(
      Map<String, Double> changes, double age, double heightMm, double toMm, boolean reproductive) {
    double[] stores = new double[Stores.COUNT];
    double[] flows = new double[Flows.COUNT];
    stores[Stores.LEAF_AGE_DAYS] = age;
    new CutQuality(Parameters.of(Species.TALL_FESCUE).with(changes))
        .judge(
            stores,
            flows,
            heightMm,
            toMm,
            new CutQuality.Leaf(LEAF_N, reproductive ? Stalks.COMING_UP : Stalks.NONE));
    return flows;
  }
}
