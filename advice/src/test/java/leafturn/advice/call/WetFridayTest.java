package leafturn.advice.call;

import static leafturn.advice.call.Situation.best;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalTime;
import leafturn.model.grass.Species;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Somebody comes on Fridays only, and this Friday is wet. */
class WetFridayTest {
  private static final Day RAIN = new Day(13, 18, 40, 1, 1);

  private static Situation friday(double nowMm) {
    Situation friday =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 29)
            .mown(7, nowMm)
            .dry(6, 6, 14, 24)
            .rainToday(20)
            .forecast(RAIN);
    Circumstances fridays = Circumstances.NONE.withVisits(Visits.every(DayOfWeek.FRIDAY));
    return friday
        .facts(fridays)
        .saw(new Sighting(friday.on(), LocalTime.of(19, 0), Sight.RAIN, true));
  }

  /** Common practice, no source: overdue grass is not left for another week to be mown dry. */
  @Test
  void overdueGrassIsMownAndThatItTakesOverAThirdIsSaid() {
    Situation lawn = friday(108);
    Call call = lawn.call();
    assertThat(call.mowOn()).isEqualTo(lawn.on());
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.sentence()).contains("41 % of the height comes off at once, more than a third");
  }

  /** Half of the height is no edge beyond which a week of wet growth is waited for. */
  @Test
  void grassOfWhichMoreThanHalfComesOffIsNotLeftToGrowOn() {
    for (double heightMm : new double[] {126, 130, 134}) {
      Situation lawn = friday(heightMm);
      assertThat(lawn.call().mowOn()).as("%s mm", heightMm).isEqualTo(lawn.on());
      assertThat(lawn.call().sentence()).doesNotContain("over several mowings");
    }
  }

  @Test
  void stepsFromThatDayStandBesideItWithWhyTheyAreNotFirst() {
    Situation lawn = friday(108);
    Call call = lawn.call();
    assertThat(call.options())
        .anyMatch(
            option ->
                option.choice() == Choice.RAISE_AND_COLLECT
                    && option.day().equals(lawn.on())
                    && option.title().contains("Friday 5 June to 64 mm"));
    assertThat(call.reasons())
        .filteredOn(reason -> reason.headline().startsWith("Not in two steps"))
        .singleElement()
        .satisfies(
            reason ->
                assertThat(reason.meaning())
                    .containsPattern("Cut to \\d+ mm today and to 64 mm by Friday 5 June, \\d+ %")
                    .contains("the 41 % of one cut"));
  }

  @Test
  void grassWithinAThirdIsToldNothingOfSteps() {
    Call call = friday(90).call();
    assertThat(best(call).choice()).isNotEqualTo(Choice.RAISE_AND_COLLECT);
    assertThat(call.sentence()).doesNotContain("at once");
    assertThat(call.reasons())
        .noneMatch(reason -> reason.headline().startsWith("Not in two steps"));
  }
}
