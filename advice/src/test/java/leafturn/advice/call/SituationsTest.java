package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static leafturn.advice.call.Situation.all;
import static leafturn.advice.call.Situation.best;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.advice.call.Circumstances.FallenLeaves;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.advice.call.Place.AnnualBluegrass;
import leafturn.advice.call.Place.Deck;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** What an experienced adviser would say, situation by situation: common practice, no source. */
class SituationsTest {
  private static final Circumstances NOTHING = Circumstances.NONE;

  private static Sighting at(Sight sight, LocalDate on, int hour) {
    return new Sighting(on, LocalTime.of(hour, 0), sight, true);
  }

  @Test
  void fescueFourDaysAfterMowingIsMownNowAndReturned() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 6).mown(4, 93).dry(3, 8, 8, 19);
    Call call = may.saw(at(Sight.DRY_LEAVES, may.on(), 12)).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.mowOn()).isEqualTo(may.on());
    assertThat(call.sentence()).isEqualTo("Mow today and return the clippings.");
    assertThat(call.particulars().lastSafeDay()).isAfter(may.on());
    assertThat(call.particulars().hours().get(0).from()).isEqualTo(12);
  }

  @Test
  void twoWeeksAwayInMayIsRaisedAndCollectedNeverCutDownAtOnce() {
    Situation away =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 28).mown(14, 125).dry(3, 8, 12, 24);
    Call call = away.call();
    assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_COLLECT);
    assertThat(call.particulars().cuts())
        .containsExactly(
            new Particulars.Cut(away.on(), 90, false),
            new Particulars.Cut(away.on().plusDays(3), 64, true));
    assertThat(call.sentence()).contains("Raise the deck", "90 mm", "collect", "step down");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("one-third");
    assertThat(call.reasons()).extracting(Reason::ruleId).contains("stemmy");
    assertThat(call.options()).extracting(Option::choice).contains(Choice.RAISE_AND_CUT_TWICE);
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("animals"));
    assertThat(best(call).outcome().heightTakenFraction().middle()).isLessThan(1.0 / 3);
  }

  @Test
  void annualBluegrassInSeedIsCollectedAndKeptOffBeds() {
    Situation april =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 4, 22).mown(8, 84).dry(3, 8, 6, 16);
    Call call = april.saw(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, april.on())).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.mowOn()).isEqualTo(april.on());
    assertThat(call.sentence()).contains("Not to beds", "heap only with logged heat", "modest");
    assertThat(call.particulars().placing().beds()).isFalse();
    assertThat(call.particulars().placing().heap()).isFalse();
    Call hot =
        april
            .facts(
                NOTHING
                    .withWishes(new Wishes(false, HeapHeat.LOGGED))
                    .withSightings(
                        List.of(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, april.on()))))
            .call();
    assertThat(hot.particulars().placing().heap()).isTrue();
    assertThat(hot.particulars().placing().beds()).isFalse();
  }

  @Test
  void afterRainInTheMorningTheDryHoursOfTheAfternoonComeFirst() {
    Situation rain =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 20)
            .mown(3, 72)
            .dry(3, 8, 10, 21)
            .rainToday(4);
    Call call =
        rain.facts(NOTHING.withVisits(Visits.on(rain.on())))
            .saw(at(Sight.RAIN, rain.on(), 9))
            .call();
    assertThat(call.choice()).isEqualTo(Choice.WAIT_FOR_DRY_HOURS);
    assertThat(call.mowOn()).isEqualTo(rain.on());
    assertThat(call.sentence()).startsWith("Wait for the dry hours of today").contains("return");
    assertThat(call.wouldChange()).anyMatch(text -> text.contains("mown wet: collect"));
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("wet");
    assertThat(call.particulars().hours().get(0).from()).isGreaterThan(9);
  }

  @Test
  void grassAtRestInDroughtIsNotMownAndKeptOff() {
    Situation july =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 20).mown(20, 66).dry(40, 10, 20, 33);
    Call call = july.saw(Sighting.of(Sight.DORMANT, july.on())).call();
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.mowOn()).isNull();
    assertThat(call.sentence()).contains("Do not mow", "keep off", "look again after rain", "July");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("dormant");
    assertThat(call.particulars().watering())
        .singleElement()
        .asString()
        .contains("13 mm", "crowns");
    assertThat(all(call)).doesNotContain("ow today");
  }

  @Test
  void aHeldLawnIsMownAndReturned() {
    Situation held = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, 104).dry(3, 8, 10, 21);
    Call call = held.facts(Treated.withHerbicide(held.on().minusDays(5), null)).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence()).contains("Mow today and return", "Nothing leaves the lawn");
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("held"))
        .singleElement()
        .satisfies(reason -> assertThat(reason.meaning()).contains("3 more mowings", "nowhere"));
    assertThat(call.particulars().placing().offTheLawn()).isFalse();
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("label"));
    assertThat(call.wouldChange()).noneMatch(text -> text.contains("bluegrass"));
  }

  @Test
  void groundFrostIsWaitedForWhateverTheHeight() {
    for (double heightMm : new double[] {100, 120, 180}) {
      Situation april =
          Situation.of(Species.TALL_FESCUE, 76, 4, 10)
              .mown(9, heightMm)
              .dry(3, 8, 4, 15)
              .coldToday(0, 12);
      Call call = april.saw(at(Sight.GROUND_FROST, april.on(), 8)).call();
      assertThat(call.sentence()).startsWith("Wait until the frost has gone");
      assertThat(call.reasons().get(0).ruleId()).isEqualTo("frost");
      assertThat(call.mowOn()).isEqualTo(april.on());
      assertThat(call.particulars().hours().get(0).from()).isGreaterThanOrEqualTo(10);
    }
  }

  @Test
  void whoeverWantsNoClippingsInTheHouseIsGivenBothWithWhatEachCosts() {
    Situation twiceAWeek =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(3, 86).every(3).dry(3, 8, 10, 21);
    Circumstances wish = NOTHING.withWishes(new Wishes(true, HeapHeat.NOT_KNOWN));
    Call call = twiceAWeek.facts(wish).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence())
        .contains("almost nothing is left to see", "client's right", "stay on the property");
    assertThat(call.options())
        .extracting(Option::choice)
        .contains(Choice.MOW_AND_RETURN, Choice.MOW_AND_COLLECT);
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("no-clippings"))
        .singleElement()
        .satisfies(reason -> assertThat(reason.meaning()).contains("bag", "minutes"));
  }

  @Test
  void fallenLeavesAreChoppedWhileTheTurfShowsThrough() {
    Situation autumn = Situation.of(Species.TALL_FESCUE, 76, 10, 25).mown(10, 90).dry(3, 8, 5, 15);
    Call some = autumn.facts(NOTHING.withFallenLeaves(new FallenLeaves(autumn.on(), 0.3))).call();
    assertThat(some.choice()).isEqualTo(Choice.CHOP_LEAVES_AND_RETURN);
    assertThat(some.sentence()).contains("chop the fallen leaves", "return");
    Call many = autumn.facts(NOTHING.withFallenLeaves(new FallenLeaves(autumn.on(), 0.7))).call();
    assertThat(many.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(many.sentence()).contains("brown stock for the heap");
    Call untold =
        autumn.facts(NOTHING.withFallenLeaves(new FallenLeaves(autumn.on(), null))).call();
    assertThat(untold.choice()).isEqualTo(Choice.CHOP_LEAVES_AND_RETURN);
    assertThat(untold.wouldChange()).anyMatch(text -> text.contains("hide more than 50 %"));
    assertThat(untold.reasons())
        .filteredOn(reason -> reason.ruleId().equals("leaf-cover"))
        .singleElement()
        .satisfies(reason -> assertThat(reason.meaning()).contains("Nobody said"));
  }

  @Test
  void aNewLawnIsFirstCutAtAThirdOverItsTargetAndNeverCollected() {
    LocalDate on = LocalDate.of(2015, 5, 10);
    Circumstances seedlings =
        NOTHING.withPlace(new Place(Double.NaN, Deck.NOT_KNOWN, AnnualBluegrass.NOT_KNOWN, true));
    Call call =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 10)
            .logged(new LogEntry.Measured(on, 85))
            .dry(5, 8, 8, 19)
            .facts(seedlings)
            .call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence()).contains("sharp blade");
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("soft soil"));
    assertThat(call.options())
        .filteredOn(option -> option.choice() == Choice.MOW_AND_COLLECT)
        .singleElement()
        .satisfies(option -> assertThat(option.remark()).isEqualTo("pulls seedlings"));
  }

  @Test
  void aContractorsFridayIsTakenWhenTheThirdComesBeforeTheNext() {
    Situation friday =
        Situation.of(Species.TALL_FESCUE, 76, 5, 8)
            .mown(7, 98)
            .dry(3, 8, 10, 21)
            .logged(new LogEntry.Fed(LocalDate.of(2015, 4, 20), 9, 0, 0, 0))
            .logged(new LogEntry.Watered(LocalDate.of(2015, 5, 4), 30));
    Call call = friday.facts(NOTHING.withVisits(Visits.every(DayOfWeek.FRIDAY))).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.mowOn()).isEqualTo(friday.on());
    assertThat(requireNonNull(call.particulars().lastSafeDay()).getDayOfWeek())
        .isEqualTo(DayOfWeek.FRIDAY);
  }

  @Test
  void ownStalksAreReturnedWhereNoAnnualBluegrassWasSeen() {
    Situation may =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 10).mown(6, 86).dry(3, 8, 12, 24);
    Circumstances unwanted =
        NOTHING.withPlace(new Place(Double.NaN, Deck.NOT_KNOWN, AnnualBluegrass.UNWANTED, false));
    assertThat(may.facts(unwanted).call().choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    Call call =
        may.saw(
                Sighting.of(Sight.OWN_STALKS, may.on()),
                Sighting.none(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, may.on()))
            .call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence()).contains("sharp blade");
    assertThat(call.reasons())
        .extracting(Reason::headline)
        .contains("The lawn's own stalks")
        .doesNotContain("Annual bluegrass likely in seed");
  }

  @Test
  void granularFeedIsWateredInFirst() {
    Situation fed = Situation.of(Species.TALL_FESCUE, 76, 5, 15).mown(5, 96).dry(3, 8, 10, 21);
    Circumstances dry = NOTHING.withDryFeed(new DryFeed(fed.on().minusDays(1), Double.NaN));
    Call call = fed.facts(dry).call();
    assertThat(call.choice()).isEqualTo(Choice.WATER_IN_FIRST);
    assertThat(call.sentence()).contains("Water the feed in today", "label", "dry", "return");
    assertThat(call.options())
        .filteredOn(option -> option.choice() == Choice.MOW_AND_COLLECT)
        .singleElement()
        .satisfies(option -> assertThat(option.remark()).isEqualTo("takes the feed away"));
    assertThat(call.particulars().watering()).anyMatch(text -> text.contains("Wash the feed in"));
  }

  @Test
  void aHoldBeatsTheThird() {
    Situation tall =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 5, 20).mown(10, 110).dry(3, 8, 10, 21);
    Treatment.Label mayBeMown = new Treatment.Label(null, null, true, 0, true);
    Call call = tall.facts(Treated.withClopyralid(tall.on().minusDays(10), mayBeMown)).call();
    assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_CUT_TWICE);
    assertThat(call.particulars().cuts()).allMatch(Particulars.Cut::returned);
    assertThat(call.particulars().cuts().get(0).toMm()).isBetween(75.0, 90.0);
    assertThat(call.sentence()).contains("Raise the deck", "spread", "return", "nowhere to go");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("held");
    assertThat(call.particulars().conflicts()).anyMatch(text -> text.contains("label wins"));
    assertThat(call.wouldChange()).noneMatch(text -> text.contains(": collect"));
  }

  @Test
  void strawOfBermudagrassIsLoweredOnceAtGreenUp() {
    LocalDate autumn = LocalDate.of(2014, 10, 20);
    LocalDate on = LocalDate.of(2015, 4, 25);
    Sighting green = Sighting.of(Sight.GREENING_UP, on);
    Situation bermuda =
        Situation.of(Species.BERMUDAGRASS, 38, 4, 25)
            .logged(new LogEntry.Mown(autumn, Double.NaN, 38, 1))
            .logged(new LogEntry.Measured(on, 50))
            .dry(5, 20, 12, 24);
    Call call = bermuda.saw(green).call();
    assertThat(call.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(call.particulars().cuts()).containsExactly(new Particulars.Cut(on, 25, false));
    assertThat(call.sentence()).contains("once", "25 mm", "collect");
    assertThat(call.reasons().get(0).meaning()).contains("exception", "St. Augustinegrass");
    assertThat(call.particulars().conflicts()).anyMatch(text -> text.contains("third"));
  }
}
