package leafturn.advice.call;

import static leafturn.advice.call.Situation.all;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.advice.call.Circumstances.FallenLeaves;
import leafturn.advice.call.Circumstances.HeapHeat;
import leafturn.advice.call.Circumstances.Wishes;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

/** Nothing an answer says contradicts the answer, its reasons or the rules it was made by. */
class TrueWordsTest {
  private static final Circumstances NOTHING = Circumstances.NONE;
  private static final Wishes NO_CLIPPINGS = new Wishes(true, HeapHeat.NOT_KNOWN);

  @Test
  void whatWouldChangeTheAnswerIsNotTrueAlready() {
    Situation april =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 4, 22).mown(8, 84).dry(3, 8, 6, 16);
    Call seed = april.saw(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, april.on())).call();
    assertThat(seed.wouldChange())
        .anyMatch(text -> text.contains("no annual bluegrass is in seed any more"))
        .noneMatch(text -> text.contains("stands below") || text.contains("leaves are dry"));
    Situation autumn = Situation.of(Species.TALL_FESCUE, 76, 10, 25).mown(10, 90).dry(3, 8, 5, 15);
    Call leaves = autumn.facts(NOTHING.withFallenLeaves(new FallenLeaves(autumn.on(), 0.8))).call();
    assertThat(leaves.wouldChange())
        .anyMatch(text -> text.contains("hide no more than 50 %"))
        .noneMatch(text -> text.contains("stands below"));
  }

  @Test
  void bothCausesHaveToGoWhereBothHold() {
    Situation april =
        Situation.of(Species.PERENNIAL_RYEGRASS, 64, 4, 22).mown(8, 115).dry(3, 8, 6, 16);
    Call call = april.saw(Sighting.of(Sight.ANNUAL_BLUEGRASS_SEED_HEADS, april.on())).call();
    assertThat(call.wouldChange())
        .anyMatch(text -> text.contains("stands below") && text.contains("in seed any more"));
  }

  @Test
  void wordsFollowTheShareThatIsSet() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).dry(3, 8, 10, 21);
    for (int heightMm : new int[] {100, 108, 125}) {
      Call call = may.mown(9, heightMm).rule("one-third", 0.25).call();
      assertThat(all(call).replace("about a third", "")).doesNotContain("third");
      assertThat(call.options())
          .extracting(Option::remark)
          .noneMatch(remark -> remark.contains("third"));
      assertThat(call.particulars().noSafeDay()).doesNotContain("third");
      assertThat(all(call)).contains("a quarter");
    }
  }

  @Test
  void aChangedRuleSaysWhyAndReadsItsUsualShareAsPeopleDo() {
    CallRules rules =
        CallRules.standard()
            .with(Map.of("one-third", 0.25))
            .saying(Map.of("one-third", "Shade thins it. ", "half", "nobody set it"));
    assertThat(rules.entry(CallRule.ONE_THIRD).source())
        .startsWith("set by hand: Shade thins it; usual a third (");
    assertThat(rules.entry(CallRule.HALF)).isEqualTo(CallRules.standard().entry(CallRule.HALF));
  }

  @Test
  void whatTheSentenceNamesIsAmongTheReasons() {
    Situation thursday =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 28).mown(5, 88).dry(3, 12, 12, 24);
    Circumstances monday = NOTHING.withVisits(Visits.every(DayOfWeek.MONDAY));
    for (Circumstances known : List.of(monday, monday.withWishes(NO_CLIPPINGS))) {
      for (double share : new double[] {0.25, 1.0 / 3}) {
        Call call = thursday.facts(known).rule("one-third", share).call();
        if (call.sentence().contains("% of the height")) {
          String named = call.sentence().replaceAll(".*?(\\d+ %) of the height.*", "$1");
          assertThat(call.reasons())
              .extracting(Reason::headline)
              .anyMatch(headline -> headline.equals(named + " of the height"));
        }
        boolean stemmy = call.reasons().stream().anyMatch(r -> r.ruleId().equals("stemmy"));
        assertThat(call.sentence().contains("stemmy")).isEqualTo(stemmy);
        assertThat(call.sentence()).doesNotContain("no dry hours are in sight");
      }
    }
  }

  @Test
  void whoeverWantsNoClippingsIsToldTheCostsOfBothBeforeACutIsDue() {
    Call call =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20)
            .mown(3, 84)
            .dry(3, 8, 10, 21)
            .facts(NOTHING.withWishes(NO_CLIPPINGS))
            .call();
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.reasons()).extracting(Reason::headline).contains("What each costs");
  }

  @Test
  void whatEachCostsIsToldOfTheDayThatIsAdvised() {
    Situation wet =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(5, 96).dry(3, 8, 10, 21).rainToday(20);
    Call call =
        wet.saw(new Sighting(wet.on(), LocalTime.of(19, 0), Sight.RAIN, true))
            .facts(wet.facts().withWishes(NO_CLIPPINGS))
            .call();
    LocalDate mowOn = call.mowOn();
    assertThat(mowOn).isAfter(wet.on());
    Reason costs =
        call.reasons().stream()
            .filter(reason -> reason.headline().equals("What each costs"))
            .findFirst()
            .orElseThrow();
    String day = new DayNames(wet.on()).name((int) ChronoUnit.DAYS.between(wet.on(), mowOn));
    assertThat(call.particulars().cuts()).hasSize(2);
    assertThat(costs.meaning()).startsWith("To return both cuts from %s on leaves ".formatted(day));
  }

  @Test
  void wetClippingsThatWouldBeSeenAreToldAsWet() {
    Situation friday =
        Situation.of(Species.TALL_FESCUE, 76, 5, 22).mown(5, 88).dry(3, 8, 10, 21).rainToday(25);
    Call call =
        friday
            .saw(new Sighting(friday.on(), LocalTime.of(19, 0), Sight.RAIN, true))
            .facts(
                friday
                    .facts()
                    .withWishes(NO_CLIPPINGS)
                    .withVisits(Visits.on(friday.on(), friday.on().plusDays(14))))
            .call();
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    assertThat(call.sentence()).contains("carried in, and wet clippings would be seen");
    assertThat(call.reasons())
        .filteredOn(reason -> reason.ruleId().equals("no-clippings"))
        .anyMatch(reason -> reason.meaning().startsWith("Wet clippings would be seen today"));
  }

  @Test
  void grassAtRestIsGivenNoDayToMowBy() {
    Situation july =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 20).mown(20, 66).dry(40, 10, 20, 33);
    assertThat(july.saw(Sighting.of(Sight.DORMANT, july.on())).call().mowBy()).isNull();
  }

  @Test
  void weatherThatNobodyMeasuredDecidesNothingByItself() {
    LocalDate on = LocalDate.of(2015, 5, 20);
    SiteClimate measured = wetWeek(on, true);
    SiteClimate standingIn = wetWeek(on, false);
    Call known = call(measured, on);
    assertThat(all(known)).contains("of water in the three days before");
    Call untold = call(standingIn, on);
    assertThat(untold.reasons())
        .extracting(Reason::ruleId)
        .doesNotContain("soft-ground", "saturated", "wet");
    assertThat(untold.sentence()).contains("Nobody has measured", "look outside");
    assertThat(untold.particulars().hours()).isEmpty();
    assertThat(untold.particulars().byTheHour()).isNull();
  }

  /** A record to the day before, very wet at its end, which was measured or only stands in. */
  private static SiteClimate wetWeek(LocalDate on, boolean measured) {
    WeatherSeries weather = CallExamples.newYork();
    int days = weather.indexOf(on);
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity each : Quantity.values()) {
      if (weather.has(each)) {
        values.put(
            each, IntStream.range(0, days).mapToDouble(d -> weather.value(each, d)).toArray());
      }
    }
    WeatherSeries toYesterday =
        CallExamples.changed(
            new WeatherSeries(weather.firstDay(), values),
            Quantity.RAIN_MM,
            on.minusDays(7),
            on.minusDays(1),
            20);
    return new SiteClimate(toYesterday, CallExamples.fescue().site(), measured ? days : days - 100);
  }

  private static Call call(SiteClimate climate, LocalDate on) {
    List<LogEntry> log =
        List.of(
            new LogEntry.Mown(on.minusDays(9), Double.NaN, 76, 1), new LogEntry.Measured(on, 105));
    return MowingCall.of(
        CallExamples.fescue(),
        climate,
        log,
        new Asked(on, CallRules.standard(), Units.METRIC, NOTHING));
  }

  @Test
  void aCutOfTodayLiesOnTheTurfBeforeItsWeatherIsKnown() {
    LocalDate on = LocalDate.of(2015, 5, 20);
    Call call =
        MowingCall.of(
            CallExamples.fescue(),
            wetWeek(on, true),
            List.of(new LogEntry.Mown(on, 110, 76, 1)),
            new Asked(on, CallRules.standard(), Units.METRIC, NOTHING));
    assertThat(call.particulars().lying().get(0).day()).isEqualTo(on);
  }

  @Test
  void littleIsNotShownAsNothing() {
    Reader american = new Reader(Units.US);
    assertThat(american.waterLimit(0.05)).isEqualTo("0.002 in");
    assertThat(american.onArea(0.01, "nitrogen"))
        .isEqualTo("less than 0.01 lb of nitrogen per 1000 ft²");
    assertThat(new Reader(Units.METRIC).onArea(0.001, "")).isEqualTo("less than 0.01 g per m²");
  }
}
