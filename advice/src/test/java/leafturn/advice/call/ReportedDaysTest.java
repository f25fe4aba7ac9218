package leafturn.advice.call;

import static leafturn.advice.call.Situation.best;
import static leafturn.advice.call.Situation.reason;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import leafturn.model.grass.Species;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** What is told of a day is of that day: wetness, hours, leaves on the turf and young seed. */
class ReportedDaysTest {
  private static final Day RAIN = new Day(12, 18, 22, 0.95, 4);

  /** A Sunday, wet in the morning and dry later; somebody comes on Mondays, and it will rain. */
  private static Situation sunday(double nowMm) {
    Situation sunday =
        Situation.of(Species.TALL_FESCUE, 76, 5, 31)
            .mown(8, nowMm)
            .every(7)
            .dry(6, 6, 12, 24)
            .rainToday(0.6)
            .forecast(RAIN, RAIN);
    return sunday.facts(Circumstances.NONE.withVisits(Visits.every(DayOfWeek.MONDAY)));
  }

  @Test
  void wetLeavesAreToldOfTheDayOfThePlan() {
    Call call = sunday(101).call();
    assertThat(call.today().possiblyWet()).isFalse();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.sentence()).contains("until tomorrow", "no dry hours are in sight that day");
    Reason wet = reason(call, "wet");
    assertThat(wet.headline()).isEqualTo("Leaves likely wet tomorrow");
    assertThat(wet.meaning())
        .matches("2\\d\\.\\d mm of rain or water tomorrow, 0\\.6 mm the day before\\. .*");
    assertThat(wet.against()).isTrue();
    assertThat(call.reasons()).noneMatch(one -> one.headline().contains("wet today"));
  }

  @Test
  void whoeverCouldComeBeforeTheRainIsToldTheDryHours() {
    assertThat(sunday(101).call().wouldChange())
        .anyMatch(
            text ->
                text.matches(
                    "If somebody can come today in the dry hours, about \\d+ to \\d+: mow and return then\\."));
    assertThat(sunday(130).call().wouldChange())
        .noneMatch(text -> text.contains("in the dry hours"));
  }

  /** A Thursday five days after the last cut of a lawn mown weekly; rain is told for days. */
  private static Situation beforeRain(double nowMm) {
    return Situation.of(Species.TALL_FESCUE, 76, 5, 14)
        .mown(5, nowMm)
        .every(7)
        .dry(6, 0, 12, 22)
        .forecast(RAIN, RAIN, RAIN, RAIN, RAIN);
  }

  @Test
  void theLastDryDayIsTakenWhereTheNextCutWouldBeAWetOne() {
    Call call = beforeRain(100).call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.mowOn()).isEqualTo(call.on());
    Reason due = reason(call, "due");
    assertThat(due.headline()).isEqualTo("Dry before a wet day");
    assertThat(due.meaning()).contains("24 % of the height comes off today", "due on Saturday");
    assertThat(beforeRain(86).call().mowOn()).isNotEqualTo(call.on());
  }

  @Test
  void soilThatSprinklersKeepMoistCarriesAMower() {
    Situation july =
        Situation.of(Species.TALL_FESCUE, 76, 7, 17)
            .mown(7, 95)
            .every(7)
            .dry(10, 3, 16, 28)
            .irrigated(1)
            .rule("saturated", 0.9);
    assertThat(july.call().today().soilWaterFraction()).isGreaterThan(0.9);
    assertThat(july.call().choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(july.rule("saturated-water", 0).call().reasons())
        .anyMatch(reason -> reason.ruleId().equals("saturated"));
  }

  /** A November lawn under fallen leaves on a morning that may be frozen. */
  private static Situation leaves(double coverFraction, double minimumC) {
    Situation lawn =
        Situation.of(Species.PERENNIAL_RYEGRASS, 60, 11, 24)
            .mown(18, 84)
            .every(7)
            .dry(6, 6, minimumC, 12);
    return lawn.facts(
        Circumstances.NONE.withFallenLeaves(
            new Circumstances.FallenLeaves(lawn.on(), coverFraction)));
  }

  @Test
  void whatWaitsForTheDryHoursOfTodayIsTitledSo() {
    Call frosty = leaves(0.7, -0.5).call();
    assertThat(frosty.sentence()).startsWith("Wait until the frost has gone").contains("collect");
    assertThat(best(frosty).title()).isEqualTo("Today in the dry hours, collect");
    assertThat(frosty.options()).anyMatch(option -> option.title().equals("Today, return"));
    Call mild = leaves(0.7, 6).call();
    assertThat(mild.sentence()).startsWith("Mow today");
    assertThat(best(mild).title()).isEqualTo("Today, collect");
  }

  @Test
  void figuresOfALawnUnderLeavesAreSaidToBeThoseOfTheGrass() {
    assertThat(leaves(0.3, 6).call().notes())
        .anyMatch(note -> note.contains("those of the grass alone: fallen leaves add"));
    assertThat(leaves(0, 6).call().notes())
        .noneMatch(note -> note.contains("those of the grass alone"));
  }

  @Test
  void aStandingLawnThatWasOverseededIsNoNewLawnThatIsNotDue() {
    Situation lawn = Situation.of(Species.TALL_FESCUE, 76, 9, 25).mown(11, 101).dry(6, 20, 12, 24);
    Call call =
        lawn.facts(Circumstances.NONE.withPlace(Place.UNKNOWN.sownOn(lawn.on().minusDays(10))))
            .call();
    assertThat(call.options())
        .filteredOn(option -> option.title().equals("Today, return"))
        .singleElement()
        .satisfies(option -> assertThat(option.remark()).isEqualTo("new seed not rooted"));
    assertThat(reason(call, "seedlings").headline()).isEqualTo("First cut after sowing");
    Place untold =
        new Place(Double.NaN, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.NOT_KNOWN, true);
    Call young = lawn.facts(Circumstances.NONE.withPlace(untold)).call();
    assertThat(reason(young, "seedlings").headline()).isEqualTo("First cut of a new lawn");
    assertThat(young.options()).noneMatch(option -> option.remark().contains("rooted"));
  }
}
