package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Circumstances.FallenLeaves;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.advice.call.Place.AnnualBluegrass;
import leafturn.advice.call.Place.Deck;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Around the situations: the rules hold by method, not by example. */
class SituationVariantsTest {
  private static final Circumstances NOTHING = Circumstances.NONE;

  private static Sighting at(Sight sight, LocalDate on, int hour) {
    return new Sighting(on, LocalTime.of(hour, 0), sight, true);
  }

  @Test
  void withoutDryHoursAndWithNoOtherDayWetGrassIsCollected() {
    Situation rain =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 20)
            .mown(3, 78)
            .dry(3, 8, 10, 21)
            .rainToday(9);
    Call call = rain.facts(NOTHING.withVisits(Visits.on(rain.on()))).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.sentence()).contains("wet clippings cling and clump");
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("slippery"));
  }

  @Test
  void leavesFoundDryAtNoonAreNotFrozen() {
    Situation april =
        Situation.of(Species.TALL_FESCUE, 76, 4, 20).mown(6, 96).dry(6, 6, 9, 20).coldToday(-3, 20);
    assertThat(april.call().sentence()).startsWith("Wait until the frost has gone");
    Call early = april.saw(at(Sight.DRY_LEAVES, april.on(), 5)).call();
    assertThat(early.sentence()).startsWith("Wait until the frost has gone");
    Call noon = april.saw(at(Sight.DRY_LEAVES, april.on(), 12)).call();
    assertThat(noon.sentence()).startsWith("Mow today and return");
    assertThat(Situation.all(noon)).doesNotContain("frost", "frozen");
    Situation white = april.saw(at(Sight.GROUND_FROST, april.on(), 8));
    assertThat(white.call().sentence()).startsWith("Mow today and return");
    Call again = white.saw(at(Sight.GROUND_FROST, april.on(), 13)).call();
    assertThat(again.sentence()).startsWith("Wait until the frost has gone");
  }

  @Test
  void strawSeenGreeningAtNoonIsLoweredAfterAColdNight() {
    Situation bermuda =
        Situation.of(Species.BERMUDAGRASS, 38, 4, 25)
            .logged(new LogEntry.Mown(LocalDate.of(2014, 10, 20), Double.NaN, 38, 1))
            .logged(new LogEntry.Measured(LocalDate.of(2015, 4, 25), 50))
            .dry(5, 30, 12, 25)
            .coldToday(-1, 25);
    Call noon =
        bermuda
            .saw(at(Sight.GREENING_UP, bermuda.on(), 12), at(Sight.DRY_LEAVES, bermuda.on(), 12))
            .call();
    assertThat(noon.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(noon.mowOn()).isEqualTo(bermuda.on());
  }

  @Test
  void frostThatStaysKeepsTheMowerInItsShed() {
    Situation cold =
        Situation.of(Species.TALL_FESCUE, 76, 12, 1)
            .mown(20, 112)
            .dry(4, 12, -6, 2)
            .rule("frost", 5)
            .rule("thaw", 10);
    Call call = cold.saw(at(Sight.GROUND_FROST, cold.on(), 8)).call();
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.sentence()).contains("Do not mow", "frost", "look again");
  }

  @Test
  void wetClippingsThatWouldBeSeenAreCollectedForWhoeverWantsNone() {
    Circumstances wish = NOTHING.withWishes(new Wishes(true, HeapHeat.NOT_KNOWN));
    Situation wet =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(3, 86).dry(3, 8, 10, 21).rainToday(9);
    Call seldom = wet.facts(wish.withVisits(Visits.on(wet.on()))).call();
    assertThat(seldom.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(seldom.sentence()).contains("keep them on the property");
  }

  @Test
  void theLimitOfFallenLeavesCanBeEdited() {
    Situation autumn =
        Situation.of(Species.TALL_FESCUE, 76, 10, 25)
            .mown(10, 90)
            .dry(3, 8, 5, 15)
            .facts(NOTHING.withFallenLeaves(new FallenLeaves(LocalDate.of(2015, 10, 25), 0.7)));
    Call edited = autumn.rule("leaf-cover", 0.8).call();
    assertThat(edited.choice()).isEqualTo(Choice.CHOP_LEAVES_AND_RETURN);
  }

  @Test
  void aNewLawnIsNotCutSooner() {
    LocalDate on = LocalDate.of(2015, 5, 10);
    Circumstances seedlings =
        NOTHING.withPlace(new Place(Double.NaN, Deck.NOT_KNOWN, AnnualBluegrass.NOT_KNOWN, true));
    Call sooner =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 10)
            .logged(new LogEntry.Measured(on, 80))
            .dry(5, 8, 8, 19)
            .facts(seedlings)
            .call();
    assertThat(sooner.choice()).isNotEqualTo(Choice.MOW_AND_RETURN);
  }

  @Test
  void youngSeedIsNotMownHoweverTallTheGrassBesideIt() {
    LocalDate on = LocalDate.of(2015, 5, 10);
    Situation tall =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 10)
            .logged(new LogEntry.Measured(on, 110))
            .dry(5, 12, 8, 19);
    Call young = tall.facts(NOTHING.withPlace(Place.UNKNOWN.sownOn(on.minusDays(5)))).call();
    assertThat(young.sentence()).startsWith("Leave it: its new seed is not rooted yet;");
    assertThat(Situation.all(young)).contains("no cut before 19 May");
    Call rooted = tall.facts(NOTHING.withPlace(Place.UNKNOWN.sownOn(on.minusDays(20)))).call();
    assertThat(rooted.choice()).isEqualTo(Choice.RAISE_AND_CUT_TWICE);
  }

  @Test
  void onThursdayTheContractorIsWaitedFor() {
    Call thursday =
        Situation.of(Species.TALL_FESCUE, 76, 5, 7)
            .mown(6, 97)
            .dry(3, 9, 10, 21)
            .facts(NOTHING.withVisits(Visits.every(DayOfWeek.FRIDAY)))
            .call();
    assertThat(thursday.mowOn()).isEqualTo(LocalDate.of(2015, 5, 8));
    assertThat(thursday.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
  }

  @Test
  void whereWateringIsNotAllowedFeedIsLeftAndNeverCollected() {
    Situation fed = Situation.of(Species.TALL_FESCUE, 76, 5, 15).mown(5, 96).dry(3, 8, 10, 21);
    Circumstances dry = NOTHING.withDryFeed(new DryFeed(fed.on().minusDays(1), Double.NaN));
    Call banned = fed.facts(dry.withWateringLimits(WateringLimits.BAN)).call();
    assertThat(banned.choice()).isNotEqualTo(Choice.WATER_IN_FIRST);
    assertThat(banned.sentence()).doesNotContain("collect");
    assertThat(banned.particulars().watering()).anyMatch(text -> text.contains("not allowed"));
  }

  @Test
  void howMuchWaterWashesFeedInIsTheRulesToSay() {
    Situation fed =
        Situation.of(Species.TALL_FESCUE, 76, 5, 15)
            .mown(5, 96)
            .logged(new LogEntry.Watered(LocalDate.of(2015, 5, 15), 8))
            .dry(3, 8, 10, 21);
    Circumstances dry = NOTHING.withDryFeed(new DryFeed(fed.on().minusDays(1), Double.NaN));
    assertThat(fed.facts(dry).call().choice()).isNotEqualTo(Choice.WATER_IN_FIRST);
    assertThat(fed.rule("feed-water", 12).call().choice()).isEqualTo(Choice.WATER_IN_FIRST);
  }

  @Test
  void strawIsLoweredNeitherBeforeTheLastFrostNorOnStAugustinegrass() {
    LocalDate autumn = LocalDate.of(2014, 10, 20);
    LocalDate on = LocalDate.of(2015, 4, 25);
    Sighting green = Sighting.of(Sight.GREENING_UP, on);
    Situation bermuda =
        Situation.of(Species.BERMUDAGRASS, 38, 4, 25)
            .logged(new LogEntry.Mown(autumn, Double.NaN, 38, 1))
            .logged(new LogEntry.Measured(on, 50))
            .saw(green);
    Call frosty = bermuda.dry(5, 20, -3, 12).call();
    assertThat(frosty.choice()).isNotEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    Day warm = new Day(13, 24, 0, 0.02, 3);
    Call later =
        bermuda.dry(5, 20, 13, 24).forecast(new Day(-2, 14, 0, 0.02, 3), warm, warm, warm).call();
    assertThat(later.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(later.mowOn()).isAfter(bermuda.on().plusDays(1));
    assertThat(later.sentence()).contains("frost may still harm what turns green");
    assertThat(later.reasons())
        .anyMatch(reason -> reason.meaning().contains("Not sooner: lowered "));
    Call other =
        Situation.of(Species.ST_AUGUSTINEGRASS, 76, 4, 25)
            .logged(new LogEntry.Mown(autumn, Double.NaN, 76, 1))
            .logged(new LogEntry.Measured(on, 100))
            .dry(5, 20, 12, 24)
            .saw(green)
            .call();
    assertThat(other.choice()).isNotEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(other.options())
        .extracting(Option::choice)
        .doesNotContain(Choice.LOWER_ONCE_AND_COLLECT);
  }

  @Test
  void aPlainThirdFromAMulchingDeckIsReturnedAndTheConflictIsShown() {
    Situation third = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(9, 114).dry(3, 8, 10, 21);
    Circumstances mulching =
        NOTHING.withPlace(new Place(Double.NaN, Deck.MULCHING, AnnualBluegrass.NOT_KNOWN, false));
    Call call = third.facts(mulching).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.particulars().conflicts())
        .anyMatch(text -> text.contains("38 mm") && text.contains("25 mm"));
    Circumstances side =
        NOTHING.withPlace(
            new Place(Double.NaN, Deck.SIDE_DISCHARGE, AnnualBluegrass.NOT_KNOWN, false));
    assertThat(third.facts(side).call().choice()).isEqualTo(Choice.DOUBLE_PASS);
  }

  @Test
  void brownPatchAloneIsNoReasonToCollect() {
    Situation sick = Situation.of(Species.TALL_FESCUE, 76, 6, 20).mown(6, 100).dry(3, 8, 16, 27);
    Call call = sick.saw(Sighting.of(Sight.BROWN_PATCH, sick.on().minusDays(2))).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.reasons()).extracting(Reason::headline).contains("Brown patch");
    assertThat(call.cautions()).anyMatch(c -> c.contains("last") && c.contains("clean the deck"));
  }

  @Test
  void theLabelsWaitBeforeMowingIsKept() {
    Situation treated = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(8, 108).dry(3, 8, 10, 21);
    Call call = treated.facts(Treated.withHerbicide(treated.on().minusDays(1), 3)).call();
    assertThat(call.mowOn()).isEqualTo(treated.on().plusDays(2));
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("label-wait");
    assertThat(call.sentence()).contains("return");
  }

  @Test
  void anInsecticideHoldsClippingsForAWeekWhereItsLabelIsNotRead() {
    Situation treated = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, 104).dry(3, 8, 10, 21);
    Call fresh = treated.facts(Treated.withInsecticide(treated.on().minusDays(3))).call();
    assertThat(fresh.particulars().placing().offTheLawn()).isFalse();
    Call old = treated.facts(Treated.withInsecticide(treated.on().minusDays(8))).call();
    assertThat(old.particulars().placing().offTheLawn()).isTrue();
  }

  @Test
  void theNextLookIsNotAfterTheLastSafeDay() {
    for (int cutMm : new int[] {50, 64, 76}) {
      Call early =
          Situation.of(Species.KENTUCKY_BLUEGRASS, cutMm, 5, 23)
              .mown(3, 1.12 * cutMm)
              .dry(25, 3, 10, 24)
              .call();
      assertThat(early.choice()).isEqualTo(Choice.LEAVE_ALONE);
      LocalDate safe = requireNonNull(early.particulars().lastSafeDay());
      boolean inTime =
          early
              .on()
              .plusDays(1)
              .datesUntil(safe.plusDays(1))
              .anyMatch(day -> early.sentence().contains(DayNames.date(day) + "."));
      assertThat(inTime).as("%s; safe until %s", early.sentence(), safe).isTrue();
    }
  }

  @Test
  void whereTheAnswerIsToKeepOffNoLastDayToMowIsNamed() {
    Situation dry = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 20).mown(19, 66);
    Call resting = dry.saw(Sighting.of(Sight.DORMANT, dry.on())).call();
    assertThat(resting.sentence()).contains("keep off");
    assertThat(resting.particulars().lastSafeDay()).isNull();
    Call winter = Situation.of(Species.TALL_FESCUE, 76, 2, 10).mown(60, 104).call();
    assertThat(winter.sentence()).contains("the mowing season begins");
    assertThat(winter.particulars().lastSafeDay()).isNull();
  }

  @Test
  void turfCutLowIsMownOnceACutIsDue() {
    Call green =
        Situation.of(Species.ANNUAL_BLUEGRASS, 5, 5, 20).mown(2, 6.8).dry(3, 8, 8, 19).call();
    assertThat(green.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(green.mowOn()).isEqualTo(green.on());
    Call ownLimit =
        Situation.of(Species.ANNUAL_BLUEGRASS, 5, 5, 20)
            .mown(2, 6.8)
            .dry(3, 8, 8, 19)
            .rule("least-growth", 3)
            .call();
    assertThat(ownLimit.mowOn()).isNotEqualTo(green.on());
  }

  @Test
  void grassAboveAnyDeckIsTakenDownByOtherMeans() {
    Call meadow =
        Situation.of(Species.FINE_FESCUE, 70, 6, 20).mown(70, 400).dry(3, 8, 12, 24).call();
    assertThat(meadow.particulars().cuts().get(0).toMm()).isGreaterThan(115);
    assertThat(meadow.cautions()).anyMatch(c -> c.contains("115 mm") && c.contains("scythe"));
    Call tall = Situation.of(Species.FINE_FESCUE, 70, 6, 20).mown(14, 130).dry(3, 8, 12, 24).call();
    assertThat(tall.cautions()).noneMatch(c -> c.contains("scythe"));
  }
}
