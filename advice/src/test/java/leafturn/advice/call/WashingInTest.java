package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.util.Set;
import leafturn.advice.call.Circumstances.DryFeed;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Feed that rain washes in asks for no water, and once washed in forbids no collecting. */
class WashingInTest {
  private static final Day DRY = new Day(10, 20, 0, 0.05, 3);
  private static final Day RAIN = new Day(11, 18, 30, 0.95, 3);

  private static Situation may(double nowMm) {
    return Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(8, nowMm).dry(8, 0, 10, 21);
  }

  private static Situation fed(Situation lawn, int daysAgo, WateringLimits limits) {
    return lawn.facts(
        Circumstances.NONE
            .withDryFeed(new DryFeed(lawn.on().minusDays(daysAgo), Double.NaN))
            .withWateringLimits(limits));
  }

  @Test
  void rainOfTheFeedsOwnDayIsLookedAtBeforeWaterIsAskedFor() {
    for (int daysAgo : new int[] {0, 1}) {
      Situation lawn = fed(may(96), daysAgo, WateringLimits.NONE);
      Situation wet = daysAgo == 0 ? lawn.rainToday(40) : lawn.rainBefore(40);
      Call call = wet.call();
      assertThat(call.sentence())
          .contains("may have washed the granular feed in: look whether granules still lie")
          .contains("log it as watered in if none do")
          .doesNotContain("Water the feed in");
      assertThat(String.join("\n", call.particulars().watering()))
          .contains("Give the feed no water before you have looked", "40 mm of rain")
          .doesNotContain("Wash the feed in");
      assertThat(call.reasons())
          .filteredOn(reason -> reason.ruleId().equals("feed-collected"))
          .singleElement()
          .satisfies(
              reason -> assertThat(reason.headline()).isEqualTo("Granular feed may lie dry"));
    }
    Call little = fed(may(96), 1, WateringLimits.NONE).rainBefore(8).call();
    assertThat(little.choice()).isEqualTo(Choice.WATER_IN_FIRST);
  }

  @Test
  void rainThatIsSureTomorrowWashesFeedInAndItIsMownInTheDryToday() {
    for (WateringLimits limits : new WateringLimits[] {WateringLimits.NONE, WateringLimits.BAN}) {
      Call call = fed(may(104), 1, limits).forecast(RAIN, DRY, DRY, DRY).call();
      assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
      assertThat(call.sentence())
          .startsWith("Mow today and return")
          .contains("keep all clippings on the lawn. Rain of tomorrow washes the feed in")
          .contains("so that it needs no water")
          .doesNotContain("wait", "Water the feed");
      assertThat(String.join("\n", call.particulars().watering()))
          .contains("Rain of tomorrow washes the feed in")
          .doesNotContain("Wash the feed in", "The feed needs");
    }
  }

  @Test
  void feedOnALawnThatNeedNotBeMownIsLeftToTheRainThatIsSure() {
    Call call = fed(may(88), 1, WateringLimits.NONE).forecast(RAIN, DRY, DRY, DRY).call();
    assertThat(call.mowOn()).isNotIn(may(88).on(), may(88).on().plusDays(1));
    assertThat(Situation.all(call)).doesNotContain("Water the feed in", "Wash the feed in");
  }

  @Test
  void adviceThatIsFollowedStays() {
    Circumstances fridays = Circumstances.NONE.withVisits(Visits.every(DayOfWeek.FRIDAY));
    Situation lawn = may(170);
    Circumstances dry = fridays.withDryFeed(new DryFeed(lawn.on().minusDays(1), Double.NaN));
    Call advised = lawn.facts(dry).call();
    assertThat(advised.sentence()).contains("Water the feed in today, with 6 mm", "before you mow");
    Situation watered = may(170).logged(new LogEntry.Watered(lawn.on(), 6)).facts(dry);
    assertThat(watered.call().choice()).isEqualTo(advised.choice());
    assertThat(watered.call().mowOn()).isEqualTo(advised.mowOn());
    assertThat(advised.choice()).isEqualTo(Choice.RAISE_AND_COLLECT);
    Call banned = lawn.facts(dry.withWateringLimits(WateringLimits.BAN)).call();
    assertThat(Set.of(Choice.RAISE_AND_COLLECT, Choice.MOW_AND_COLLECT))
        .doesNotContain(banned.choice());
  }
}
