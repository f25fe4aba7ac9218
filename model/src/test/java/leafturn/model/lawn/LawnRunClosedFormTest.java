package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.model.soil.DecayModifiers;
import org.junit.jupiter.api.Test;

/** What a run must give where it can be worked out by hand. */
class LawnRunClosedFormTest {
  private static final double LEAF_G_PER_MM = 0.6;
  private static final double CARBON = 0.42;

  /** An evening's work. */
  private interface Work {
    void on(LawnRun run);
  }

  private static Keeper evening(Work work) {
    return new Keeper() {
      @Override
      public void morning(LawnRun run) {}

      @Override
      public void evening(LawnRun run) {
        work.on(run);
      }
    };
  }

  private static LawnRun afterOneDay(Work work) {
    LawnRun run = StandingLawn.run(Map.of("leaf0", 20.0), 1);
    run.live(0, 1, evening(work), DayListener.NONE);
    return run;
  }

  @Test
  void withoutGrowthEveryTissueDiesExponentially() {
    LawnRun run = StandingLawn.run(Map.of("gmax", 0.0), 60);
    double stubble = run.store(Stores.STUBBLE_C);
    double root = run.store(Stores.ROOT_C);
    double leaf = run.store(Stores.LEAF_C);

    run.live(0, 60, StandingLawn.NOBODY, DayListener.NONE);

    assertThat(run.store(Stores.STUBBLE_C))
        .isCloseTo(stubble * Math.exp(-0.0055 * 60), within(1e-10));
    assertThat(run.store(Stores.ROOT_C)).isCloseTo(root * Math.exp(-0.0040 * 60), within(1e-10));
    assertThat(run.store(Stores.LEAF_C)).isCloseTo(leaf * Math.exp(-0.006 * 60), within(1e-10));
  }

  @Test
  void thatchWithoutInputDecaysExponentially() {
    // Rich in N, so that decay never waits for it.
    LawnRun run = StandingLawn.run(Map.of("phiT", 0.0, "thN0", 0.04, "foN0", 0.04), 100);
    double thatch = run.store(Stores.THATCH_C);

    run.live(0, 100, StandingLawn.NOBODY, DayListener.NONE);

    double rate = 0.45 / 365 * DecayModifiers.rothCTemperatureFraction(20);
    assertThat(run.store(Stores.THATCH_C)).isCloseTo(thatch * Math.exp(-rate * 100), within(1e-9));
  }

  @Test
  void slowFertiliserIsReleasedExponentially() {
    LawnRun run = StandingLawn.run(Map.of(), 30);
    Keeper feedsOnce =
        new Keeper() {
          @Override
          public void morning(LawnRun lawn) {
            if (lawn.day() == 0) {
              lawn.feed(0, 10, 0, 0);
            }
          }

          @Override
          public void evening(LawnRun lawn) {}
        };

    run.live(0, 30, feedsOnce, DayListener.NONE);

    double rate = 0.012 * DecayModifiers.rothCTemperatureFraction(20);
    assertThat(run.store(Stores.SLOW_FERTILISER_N))
        .isCloseTo(10 * Math.exp(-rate * 30), within(1e-11));
  }

  @Test
  void aCutTakesTheShareOfLeafAboveItsHeight() {
    double[] before = new double[2];
    LawnRun run =
        afterOneDay(
            lawn -> {
              before[0] = lawn.store(Stores.LEAF_C);
              before[1] = lawn.heightMm();
              lawn.cut(90, 0.5);
            });

    double left = (90 - 76) / (before[1] - 76);
    assertThat(before[1]).isGreaterThan(100);
    assertThat(run.store(Stores.LEAF_C)).isCloseTo(left * before[0], within(1e-12));
    assertThat(run.heightMm()).isCloseTo(90, within(1e-10));
    assertThat(run.daysSinceMowing()).isZero();
  }

  @Test
  void twoCutsOfADayAreToldTogether() {
    double[] first = new double[3];
    LawnRun run =
        afterOneDay(
            lawn -> {
              lawn.cut(90, 1);
              first[0] = lawn.flow(Flows.CLIPPINGS_G);
              first[1] = lawn.flow(Flows.CUT_LENGTH_MM);
              first[2] = lawn.heightMm();
              lawn.cut(80, 0);
            });

    double share = first[0] / run.flow(Flows.CLIPPINGS_G);
    assertThat(share).isBetween(0.4, 0.9);
    assertThat(run.flow(Flows.RETURNED_SHARE)).isCloseTo(share, within(1e-12));
    assertThat(run.flow(Flows.RETURNED_G)).isCloseTo(first[0], within(1e-12));
    assertThat(run.flow(Flows.CUT_N_FRACTION))
        .isCloseTo(run.flow(Flows.CLIPPINGS_N) / run.flow(Flows.CLIPPINGS_G), within(1e-12));
    assertThat(run.flow(Flows.CUT_LENGTH_MM))
        .isCloseTo(share * first[1] + (1 - share) * (first[2] - 80), within(1e-9));
  }

  @Test
  void aSecondRoundThatFindsNothingLeavesWhatIsToldOfTheFirst() {
    LawnRun once = afterOneDay(lawn -> lawn.cut(90, 1));
    LawnRun twice =
        afterOneDay(
            lawn -> {
              lawn.cut(90, 1);
              lawn.cut(90, 0);
            });

    for (int flow = Flows.CUT_FAST_FRACTION; flow <= Flows.CUT_STALK_FRACTION; flow++) {
      assertThat(twice.flow(flow)).isEqualTo(once.flow(flow));
    }
    assertThat(twice.flow(Flows.RETURNED_SHARE)).isEqualTo(1);
  }

  @Test
  void aCutAtTheCutHeightTakesAllLeafAndAHigherOneNothing() {
    assertThat(afterOneDay(lawn -> lawn.cut(76, 0)).store(Stores.LEAF_C)).isZero();
    LawnRun above = afterOneDay(lawn -> lawn.cut(150, 0));
    assertThat(above.flow(Flows.CLIPPINGS_G)).isZero();
    assertThat(above.flow(Flows.MOWINGS)).isEqualTo(1);
  }

  @Test
  void theMowerMissesItsShareWhateverIsCollected() {
    double[] leaf = new double[1];
    LawnRun run =
        afterOneDay(
            lawn -> {
              leaf[0] = lawn.store(Stores.LEAF_C);
              lawn.cut(76, 0);
            });

    assertThat(run.flow(Flows.COLLECTED_C)).isCloseTo(0.95 * leaf[0], within(1e-12));
    assertThat(run.flow(Flows.CLIPPINGS_G)).isCloseTo(0.95 * leaf[0] / CARBON, within(1e-12));
    assertThat(run.flow(Flows.RETURNED_G)).isZero();
    assertThat(run.store(Stores.METABOLIC_C)).isCloseTo(0.05 * 0.85 * leaf[0], within(1e-12));
  }

  @Test
  void aChangeOfCutHeightKeepsTheGrassAsHighAsItWas() {
    for (double heightMm : new double[] {40, 60, 76, 90}) {
      double[] before = new double[3];
      LawnRun run =
          afterOneDay(
              lawn -> {
                before[0] = lawn.heightMm();
                before[1] = lawn.store(Stores.LEAF_C);
                before[2] = lawn.store(Stores.STUBBLE_C);
                lawn.setCutHeight(heightMm);
              });
      double moved = LEAF_G_PER_MM * CARBON * (heightMm - 76);

      assertThat(run.heightMm()).isCloseTo(before[0], within(1e-10));
      assertThat(run.store(Stores.LEAF_C)).isCloseTo(before[1] - moved, within(1e-12));
      assertThat(run.store(Stores.STUBBLE_C)).isCloseTo(before[2] + moved, within(1e-12));
    }
  }

  @Test
  void aMeasuredHeightIsBookedAsACorrection() {
    for (double measuredMm : new double[] {50, 80, 130}) {
      double[] before = new double[3];
      LawnRun run =
          afterOneDay(
              lawn -> {
                before[0] = lawn.store(Stores.LEAF_C);
                before[1] = lawn.store(Stores.PLANT_N);
                before[2] = lawn.flow(Flows.LEAF_N_FRACTION);
                lawn.correctHeight(measuredMm);
              });
      double addedG = LEAF_G_PER_MM * Math.max(0, measuredMm - 76) - before[0] / CARBON;

      assertThat(run.heightMm()).isCloseTo(Math.max(76, measuredMm), within(1e-10));
      assertThat(run.flow(Flows.CORRECTION_C)).isCloseTo(CARBON * addedG, within(1e-12));
      assertThat(run.flow(Flows.CORRECTION_N)).isCloseTo(before[2] * addedG, within(1e-12));
      assertThat(run.store(Stores.PLANT_N) - before[1])
          .isCloseTo(run.flow(Flows.CORRECTION_N), within(1e-12));
    }
  }

  @Test
  void theOneThirdRuleCutsOnTheFirstEveningAtOneAndAHalfTimesTheHeight() {
    LawnEquations equations = new LawnEquations(Parameters.of(Species.TALL_FESCUE));
    DailyTerms terms =
        StandingLawn.terms(RandomWeather.mild(3, LocalDate.of(2012, 1, 1), 1461), 40.78);
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 76), terms);
    Programme byThirds =
        new Programme(
            new Programme.Mowing(76, 0, CalendarDay.ofYear(75), CalendarDay.ofYear(345), 1),
            TestLawns.quarters(14.7),
            0);
    List<String> wrong = new ArrayList<>();
    run.live(
        0,
        1461,
        new ProgrammeKeeper(byThirds, equations),
        lawn -> {
          int today = terms.dayOfYear(lawn.day());
          boolean due =
              lawn.flow(Flows.HEIGHT_BEFORE_MM) >= 1.5 * 76 && today >= 75 && today <= 345;
          if (due != (lawn.flow(Flows.MOWINGS) > 0)) {
            wrong.add(terms.date(lawn.day()).toString());
          }
        });

    assertThat(wrong).isEmpty();
    assertThat(run.total(Flows.MOWINGS)).isGreaterThan(40);
  }
}
