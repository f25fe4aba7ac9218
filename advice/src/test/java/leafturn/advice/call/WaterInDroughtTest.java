package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.regex.Pattern;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Water given counts, one amount for a day, and no mowing beside keeping off; common practice. */
class WaterInDroughtTest {
  private static final Day DRY = new Day(20, 32, 0, 0.05, 3);
  private static final Circumstances BANNED =
      Circumstances.NONE.withWateringLimits(WateringLimits.BAN);

  private static Situation july(int nowMm) {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 18)
        .mown(33, nowMm)
        .dry(40, 0, 22, 33)
        .forecast(DRY, DRY, DRY, DRY, DRY);
  }

  private static Situation dryMay(double nowMm) {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20)
        .mown(4, nowMm)
        .dry(30, 0, 10, 22)
        .forecast(DRY, DRY, DRY, DRY);
  }

  private static String water(Situation situation) {
    return String.join("\n", situation.call().particulars().watering());
  }

  @Test
  void waterGivenToGrassAtRestCountsAsRainDoes() {
    for (int daysAgo : new int[] {0, 3, 20, 22}) {
      Situation july = july(66);
      july.saw(Sighting.of(Sight.DORMANT, july.on()));
      july.logged(new LogEntry.Watered(july.on().minusDays(daysAgo), 13));
      if (daysAgo < 21) {
        assertThat(water(july))
            .contains("no water yet, for it had 13 mm on")
            .contains("by " + DayNames.date(july.on().plusDays(21 - daysAgo)));
      } else {
        assertThat(water(july)).contains("give 13 mm today");
      }
    }
  }

  @Test
  void feedIsWashedInAndTheRestOfTheWaterComesAfterTheMowing() {
    Situation may = dryMay(80);
    may.facts(Circumstances.NONE.withDryFeed(new Circumstances.DryFeed(may.on().minusDays(1), 10)));
    assertThat(may.call().choice()).isEqualTo(Choice.WATER_IN_FIRST);
    assertThat(Pattern.compile("\\btoday\\b").matcher(water(may)).results()).hasSize(1);
    assertThat(water(may)).contains("with 10 mm of water today", "water 25 mm on");
  }

  @Test
  void grassAtRestThatIsFedHasOneAmount() {
    Situation july = july(66);
    july.facts(
        Circumstances.NONE.withDryFeed(new Circumstances.DryFeed(july.on().minusDays(1), 10)));
    july.saw(Sighting.of(Sight.DORMANT, july.on()));
    assertThat(water(july)).contains("Wash the feed in").doesNotContain("crowns");
  }

  @Test
  void grassSeenTurningGreenIsNotAtRest() {
    Situation may =
        Situation.of(Species.BERMUDAGRASS, 38, 5, 20)
            .mown(220, 50)
            .dry(30, 0, 14, 26)
            .forecast(DRY, DRY, DRY, DRY);
    may.saw(Sighting.of(Sight.GREENING_UP, may.on()));
    assertThat(water(may)).contains("to help it turn green").doesNotContain("at rest");
    Situation july = july(66).rule("hardly-growing", 1);
    assertThat(july.call().sentence()).contains("likely at rest");
    july.saw(Sighting.of(Sight.GREENING_UP, july.on()));
    assertThat(july.call().sentence()).doesNotContain("at rest");
    assertThat(water(july)).contains("to help it turn green");
  }

  @Test
  void grassOnSoilReckonedDryIsLookedAtBeforeItIsMown() {
    Call call = july(90).call();
    assertThat(call.today().soilWaterFraction()).isLessThan(0.1);
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence()).contains("look first").contains("footprints stay or leaves fold");
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("drought-look"))
        .singleElement()
        .satisfies(reason -> assertThat(reason.threshold()).isEqualTo("looked at below 10 %"));
    assertThat(call.wouldChange()).anyMatch(change -> change.contains("log what you see"));
    assertThat(Situation.all(call)).doesNotContain("else let it go to rest");
    assertThat(Situation.all(july(90).facts(BANNED).call())).doesNotContain("raise the cut");
    assertThat(july(90).rule("drought-look", 0).call().sentence()).doesNotContain("look first");
    Situation looked = july(90);
    looked.saw(Sighting.none(Sight.WILTING, looked.on()));
    assertThat(looked.call().sentence()).doesNotContain("look first");
  }

  @Test
  void aNewLawnIsNotAtRestAndHasNoCutsOfTheGrassBefore() {
    Place seeded = new Place(0, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.NOT_KNOWN, true);
    Situation may = july(86).rule("hardly-growing", 1);
    assertThat(may.call().particulars().lying()).isNotEmpty();
    Call call = may.facts(Circumstances.NONE.withPlace(seeded)).call();
    assertThat(Situation.all(call)).doesNotContain("at rest").contains("Seedlings must not dry");
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.particulars().lying()).isEmpty();
    Situation banned = july(86).facts(BANNED.withPlace(seeded));
    assertThat(water(banned)).contains("watering is not allowed: ask").doesNotContain("water them");
  }

  /** A lawn that hardly grew in the cold before spring rests in no drought. */
  @Test
  void grassThatIsToBeMownIsNotCalledAtRest() {
    Situation may =
        Situation.of(Species.BERMUDAGRASS, 38, 5, 2)
            .mown(210, 50)
            .dry(30, 0, 8, 18)
            .forecast(DRY, DRY, DRY, DRY)
            .rule("hardly-growing", 1)
            .rule("dry-soil", 0);
    Call call = may.call();
    assertThat(call.mowOn()).isNotNull();
    assertThat(String.join("\n", call.particulars().watering()))
        .contains("The root zone holds")
        .doesNotContain("at rest");
  }

  @Test
  void aBanHoldsWhereRainIsLikelyAndWhereGrassWilts() {
    Situation rain = dryMay(74).forecast(DRY, new Day(11, 19, 35, 0.95, 3), DRY, DRY);
    assertThat(water(rain.facts(BANNED)))
        .contains("watering is not allowed")
        .doesNotContain("water no more than");
    Situation wilting = july(66).facts(BANNED);
    wilting.saw(Sighting.of(Sight.WILTING, wilting.on()));
    assertThat(wilting.call().sentence())
        .contains("watering is not allowed, so wait for rain")
        .doesNotContain("water it");
    assertThat(water(wilting)).contains("not allowed: keep off until it rains");
  }

  @Test
  void noWaterIsGivenTodayOnceTheMorningIsGoneOrRainFell() {
    assertThat(water(dryMay(74))).contains("water 25 mm today");
    assertThat(water(dryMay(74).rainToday(10))).contains("mm tomorrow");
    Situation late = dryMay(74);
    late.saw(new Sighting(late.on(), LocalTime.of(16, 0), Sight.DRY_LEAVES, true));
    assertThat(water(late)).contains("water 25 mm tomorrow");
  }

  @Test
  void waterOfTheLastDaysIsPartOfWhatIsGivenAtOnce() {
    Situation may = dryMay(74);
    may.logged(new LogEntry.Watered(may.on().minusDays(1), 15));
    assertThat(water(may)).contains("water 10 mm today");
  }
}
