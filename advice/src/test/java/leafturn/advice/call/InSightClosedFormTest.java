package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class InSightClosedFormTest {
  /** Unseen below 10 g/m2, 0.2 a day up to 25 mm, thickest at twice the mean, clumps above 40. */
  private static final Sinking SINKING = new Sinking(10, 0.2, 25, 2, 40, 20);

  @Test
  void littleIsNeverSeen() {
    assertThat(daysToUnseen(5, 20, false, 1)).isZero();
  }

  @Test
  void shortPiecesSinkAtTheirRate() {
    assertThat(daysToUnseen(20, 25, false, 1)).as("ln 4 / 0.2 = 6.9").isEqualTo(7);
    assertThat(daysToUnseen(20, 25, false, Math.exp(-0.2))).as("decaying as fast").isEqualTo(4);
  }

  @Test
  void longPiecesSinkSlowerByTheirLength() {
    assertThat(daysToUnseen(20, 50, false, 1)).as("ln 4 / 0.1 = 13.9").isEqualTo(14);
  }

  @Test
  void clumpsSinkAtHalfTheRateUntilTheyComeApart() {
    assertThat(daysToUnseen(20, 25, true, 1))
        .as("ln 2 / 0.1, whole days, and the rest at 0.2")
        .isEqualTo(7 + 4);
    assertThat(daysToUnseen(40, 25, false, 1)).isEqualTo(7 + 7);
  }

  @Test
  void aLawnOfItsOwnTakesSoManyTimesAsLong() {
    InSight sight = new InSight(SINKING.slower(2));
    sight.fall(20, 25, false);
    assertThat(sight.daysToGo()).isEqualTo(Math.log(4) / 0.1, within(1e-12));
  }

  @Test
  void aSecondFallIsSeenAgain() {
    InSight sight = new InSight(SINKING);
    sight.fall(4, 25, false);
    assertThat(sight.daysToUnseen()).isZero();
    sight.day(1);
    sight.day(1);
    sight.fall(20, 25, false);
    assertThat(sight.daysToUnseen()).isEqualTo(-1);
    for (int day = 0; day < 12; day++) {
      sight.day(1);
    }
    assertThat(sight.daysToUnseen())
        .as("counted from the first; two days in clumps, seven to sink")
        .isEqualTo(2 + 2 + 7);
  }

  @Test
  void withoutLooksALawnIsLikeOthers() {
    assertThat(OwnSight.of(List.of())).isEqualTo(new OwnSight(1, 0.35, 0));
  }

  @Test
  void looksMoveALawnTheMoreTheMoreThereAre() {
    OwnSight.Look tooLong = new OwnSight.Look(5, 10, true);
    OwnSight one = OwnSight.of(List.of(tooLong));
    OwnSight five = OwnSight.of(Collections.nCopies(5, tooLong));
    OwnSight many = OwnSight.of(Collections.nCopies(500, tooLong));

    assertThat(one.times()).isBetween(1.2, 1.5);
    assertThat(one.looks()).isEqualTo(1);
    assertThat(one.logSd()).isLessThan(0.35);
    assertThat(five.logSd()).isLessThan(one.logSd());
    assertThat(one.drawn(0)).isEqualTo(one.times());
    assertThat(one.drawn(1)).isEqualTo(one.times() * Math.exp(one.logSd()), within(1e-12));
    assertThat(five.times()).isBetween(one.times() + 0.3, 2.5);
    assertThat(many.times()).isGreaterThan(five.times());
    assertThat(OwnSight.of(List.of(new OwnSight.Look(5, 2, true))).times())
        .as("as reckoned")
        .isBetween(1.0, 1.05);
    assertThat(OwnSight.of(List.of(new OwnSight.Look(10, 5, false))).times())
        .as("gone sooner")
        .isEqualTo(1 / one.times(), within(1e-9));
  }

  @Test
  void seenAtOneLookAndGoneAtAnotherPutsItBetween() {
    List<OwnSight.Look> looks = new ArrayList<>();
    for (int cut = 0; cut < 100; cut++) {
      looks.add(new OwnSight.Look(5, 8, true));
      looks.add(new OwnSight.Look(5, 12.5, false));
    }
    assertThat(OwnSight.of(looks).times()).isEqualTo(2, within(0.05));
  }

  private static int daysToUnseen(double dryG, double lengthMm, boolean wet, double kept) {
    InSight sight = new InSight(SINKING);
    sight.fall(dryG, lengthMm, wet);
    for (int day = 0; day < 100; day++) {
      sight.day(kept);
    }
    return sight.daysToUnseen();
  }
}
