package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Set;
import leafturn.model.grass.Species;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Water for growth keeps out of the mower's way, and is told by what the soil holds. */
class WaterAndMowingTest {
  private static final Day DRY = new Day(10, 22, 0, 0.05, 3);
  private static final String MORNING = "best early in the morning";

  /** A Wednesday in May after some dry days. */
  private static Situation may(double nowMm) {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20)
        .mown(4, nowMm)
        .dry(20, 0, 10, 22)
        .forecast(DRY, DRY, DRY, DRY);
  }

  private static WateringLimits on(DayOfWeek... days) {
    return new WateringLimits(false, Set.of(days), null, null);
  }

  private static WateringLimits between(int from, int to) {
    return new WateringLimits(false, Set.of(), LocalTime.of(from, 0), LocalTime.of(to, 0));
  }

  private static String water(Situation situation) {
    return String.join("\n", situation.call().particulars().watering());
  }

  private static String water(Situation situation, WateringLimits limits) {
    return water(situation.facts(Circumstances.NONE.withWateringLimits(limits)));
  }

  @Test
  void waterForGrowthComesAfterTheMowing() {
    assertThat(may(86).call().mowOn()).isEqualTo(may(86).on());
    assertThat(water(may(86))).contains("once it is mown, from tomorrow on, " + MORNING);
    assertThat(water(may(86), on(DayOfWeek.WEDNESDAY, DayOfWeek.SATURDAY)))
        .contains("once it is mown, on Saturday, " + MORNING);
  }

  @Test
  void theOnlyDayOfWateringIsTakenThoughItIsThatOfMowing() {
    assertThat(water(may(86), on(DayOfWeek.WEDNESDAY)))
        .contains("once it is mown, today;")
        .doesNotContain(MORNING);
  }

  @Test
  void waterDoesNotWaitLongForAMowingToCome() {
    WateringDays days = new WateringDays(WateringLimits.NONE, may(74).on());
    assertThat(days.forGrowth(0, 3)).contains(4);
    assertThat(days.forGrowth(0, 4)).contains(0);
    assertThat(days.forGrowth(4, 4)).contains(5);
    assertThat(days.whenForGrowth(0, 4)).startsWith("today, " + MORNING);
  }

  @Test
  void wiltingGrassIsWateredAtOnce() {
    Situation wilting = may(86);
    wilting.saw(Sighting.of(Sight.WILTING, wilting.on()));
    assertThat(water(wilting)).contains("mm today").doesNotContain("once it is mown");
  }

  @Test
  void theMorningIsBestOnlyWhereTheHoursAllowIt() {
    assertThat(water(may(74), between(18, 21)))
        .contains("between 18:00 and 21:00;")
        .doesNotContain(MORNING);
    assertThat(water(may(74), between(10, 16))).doesNotContain(MORNING);
    assertThat(water(may(74), between(0, 3))).doesNotContain(MORNING);
    assertThat(water(may(74), between(19, 2))).doesNotContain(MORNING);
    assertThat(water(may(74), between(5, 9))).contains("between 05:00 and 09:00, " + MORNING);
    assertThat(water(may(74), between(20, 6))).contains(MORNING);
  }

  @Test
  void grassGoesToRestOnlyOnSoilThatIsReallyDry() {
    assertThat(water(may(74))).contains("if it is to stay green, water", "else it goes to rest");
    assertThat(water(may(74).rule("drought-look", 0)))
        .contains("to keep it growing, water", "without it, growth slows.")
        .doesNotContain("to rest", "stay green");
    Situation wilting = may(74).rule("drought-look", 0);
    wilting.saw(Sighting.of(Sight.WILTING, wilting.on()));
    assertThat(water(wilting)).contains("else it goes to rest");
    assertThat(water(wilting.rule("dry-soil", 0)))
        .contains("growth slows")
        .doesNotContain("to rest");
  }

  @Test
  void warmSeasonGrassOutOfSeasonGetsNoWaterForGrowth() {
    Day cold = new Day(2, 12, 0, 0.05, 3);
    Situation november =
        Situation.of(Species.BERMUDAGRASS, 30, 11, 11)
            .mown(8, 38)
            .dry(40, 0, 4, 14)
            .forecast(cold, cold, cold, cold);
    assertThat(november.call().today().soilWaterFraction()).isLessThan(0.5);
    assertThat(water(november)).isEmpty();
    november.saw(Sighting.of(Sight.WILTING, november.on()));
    assertThat(water(november)).contains("keep the crowns alive").doesNotContain("stay green");
  }
}
