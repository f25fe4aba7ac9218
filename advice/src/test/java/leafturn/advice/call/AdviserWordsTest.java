package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static leafturn.advice.call.Situation.reason;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** Words that agree with the figures beside them and with what was logged. */
class AdviserWordsTest {
  private static final Circumstances NOTHING = Circumstances.NONE;

  @Test
  void aMowingThatNobodyLoggedIsNoFact() {
    LocalDate on = LocalDate.of(2015, 6, 12);
    Situation measured =
        Situation.of(Species.TALL_FESCUE, 76, 6, 12).logged(new LogEntry.Measured(on, 98));
    Call reckoned = measured.dry(3, 8, 12, 24).call();
    assertThat(reckoned.today().lastMown()).isNotNull();
    assertThat(reckoned.today().lastMownLogged()).isFalse();
    assertThat(reckoned.particulars().lying()).isNotEmpty().noneMatch(LyingCut::logged);

    Call logged = Situation.of(Species.TALL_FESCUE, 76, 6, 12).mown(6, 98).call();
    assertThat(logged.today().lastMownLogged()).isTrue();
    LyingCut last = logged.particulars().lying().get(0);
    assertThat(last.day()).isEqualTo(on.minusDays(6));
    assertThat(last.logged()).isTrue();
    assertThat(logged.particulars().lying()).anyMatch(cut -> !cut.logged());
  }

  @Test
  void aLittleOverAThirdIsToldAsToleratedWhereItDecides() {
    Call over = Situation.of(Species.TALL_FESCUE, 80, 5, 12).mown(9, 122).dry(3, 8, 9, 20).call();
    assertThat(over.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(reason(over, "one-third").meaning()).contains("Up to 35 % still counts as a third");
    Call under = Situation.of(Species.TALL_FESCUE, 80, 5, 12).mown(9, 118).dry(3, 8, 9, 20).call();
    assertThat(reason(under, "one-third").meaning()).doesNotContain("counts");
  }

  @Test
  void aShareShownAsItsLimitIsDue() {
    Call call = // 16.7 %
        Situation.of(Species.KENTUCKY_BLUEGRASS, 60, 7, 10).mown(5, 72).dry(3, 8, 15, 26).call();
    assertThat(call.mowOn()).isEqualTo(call.on());
    assertThat(call.reasons()).noneMatch(reason -> reason.ruleId().equals("due"));
  }

  @Test
  void oneDayIsToldInTheSingular() {
    Call call =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(1, 90).dry(3, 8, 10, 21).every(1).call();
    Reason due = Situation.reason(call, "due");
    assertThat(due.headline()).isEqualTo("1 day since the last mowing");
    assertThat(due.threshold()).isEqualTo("mown every day");
  }

  @Test
  void anIntervalThatIsOverIsGivenAsTheReason() {
    Call call =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(7, 90).every(7).dry(3, 8, 9, 20).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    Reason due = reason(call, "due");
    assertThat(due.against()).isFalse();
    assertThat(due.headline()).isEqualTo("7 days since the last mowing");
    assertThat(due.meaning()).contains("interval is over");
  }

  @Test
  void feedThatMayNotBeWateredInIsToldAndWaitsForRain() {
    Situation fed = Situation.of(Species.TALL_FESCUE, 80, 5, 8).mown(7, 101).dry(3, 1, 9, 20);
    Call banned =
        fed.facts(
                NOTHING
                    .withDryFeed(new DryFeed(fed.on().minusDays(1), Double.NaN))
                    .withWateringLimits(WateringLimits.BAN))
            .call();
    LocalDate safe = requireNonNull(banned.particulars().lastSafeDay());
    int days = (int) ChronoUnit.DAYS.between(fed.on(), safe);
    assertThat(banned.sentence())
        .contains(
            "may not be watered in",
            "picks granules up",
            "on the lawn",
            "rain that is sure to come by")
        .endsWith(new DayNames(fed.on()).name(days) + ".");
    assertThat(reason(banned, "feed-dry").meaning()).contains("let rain wash them in");
  }

  @Test
  void softGroundNamesTheDaysItsWaterIsOf() {
    Situation wet =
        Situation.of(Species.TALL_FESCUE, 80, 5, 20).mown(6, 104).rule("soft-ground", 5);
    Call call = wet.rainBefore(14).rainToday(20).call();
    assertThat(reason(call, "soft-ground").headline()).endsWith("in the three days before");
    assertThat(reason(call, "soft-ground").meaning()).contains("of the day itself is not in that");
  }

  @Test
  void wetLeavesAreToldOfTheTimeTheyWereSeenAt() {
    Situation may =
        Situation.of(Species.PERENNIAL_RYEGRASS, 60, 5, 20).mown(4, 78).dry(3, 8, 9, 18);
    for (int hour : new int[] {8, 16, 19}) {
      Sighting wet = new Sighting(may.on(), LocalTime.of(hour, 30), Sight.WET_LEAVES, true);
      Call call = may.rainToday(12).facts(NOTHING.withSightings(List.of(wet))).call();
      assertThat(reason(call, "wet").headline())
          .isEqualTo(
              "Leaves wet this " + (hour < 12 ? "morning" : hour < 18 ? "afternoon" : "evening"));
    }
  }

  @Test
  void annualBluegrassIsNotCollectedForItsOwnSeed() {
    Situation own = Situation.of(Species.ANNUAL_BLUEGRASS, 60, 4, 24).mown(7, 79).dry(3, 8, 7, 18);
    Call call = own.saw(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, own.on())).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(reason(call, "seed-heads").meaning()).contains("no reason to collect");
    assertThat(call.particulars().placing().beds()).isFalse();
  }

  @Test
  void noDeckIsRaisedAboveWhereDecksGo() {
    Call meadow =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 60, 6, 20).mown(38, 260).dry(3, 8, 12, 24).call();
    assertThat(meadow.particulars().cuts().get(0).toMm()).isGreaterThan(115);
    assertThat(meadow.sentence())
        .startsWith("Take the long grass down today")
        .contains("No usual deck cuts above 115 mm", "trimmer", "contractor")
        .doesNotContain("aise the deck");
  }
}
