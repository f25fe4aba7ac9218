package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

/** Which answer follows from which state of a tall fescue lawn cut to 76 mm, and why. */
class MowingCallTest {
  private static final LocalDate ON = LocalDate.of(2015, 5, 20);
  private static final WeatherSeries MILD = mildMay();

  /** Ten dry, mild days in the May of every year, three of them before the day of the call. */
  private static WeatherSeries mildMay() {
    WeatherSeries weather = CallExamples.newYork();
    for (int year = 2012; year <= 2015; year++) {
      LocalDate from = LocalDate.of(year, 5, 17);
      LocalDate to = LocalDate.of(year, 5, 31);
      weather = CallExamples.changed(weather, Quantity.RAIN_MM, from, to, 0);
      weather = CallExamples.changed(weather, Quantity.MINIMUM_C, from, to, 11);
      weather = CallExamples.changed(weather, Quantity.MAXIMUM_C, from, to, 22);
    }
    return weather;
  }

  private static WeatherSeries today(Quantity quantity, double value) {
    return CallExamples.changed(MILD, quantity, ON, ON, value);
  }

  private static Call standingAt(double heightMm, WeatherSeries weather) {
    return MowingCall.of(CallExamples.fescue(), weather, CallExamples.standingAt(ON, heightMm), ON);
  }

  private static Option bestOf(Call call) {
    return call.options().stream().filter(Option::best).findFirst().orElseThrow();
  }

  @Test
  void shortAndDryIsReturned() {
    Call call = standingAt(108, MILD);
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.sentence()).isEqualTo("Mow today and return the clippings.");
    assertThat(call.mowOn()).isEqualTo(ON);
    Reason first = call.reasons().get(0);
    assertThat(first.ruleId()).isEqualTo("one-third");
    assertThat(first.headline()).isEqualTo("30 % of the height");
    assertThat(first.against()).isFalse();
    assertThat(bestOf(call).outcome().heightTakenFraction())
        .isEqualTo(Spread.exactly(1 - 76 / 108.0));
  }

  @Test
  void aThirdAtTheUsualHeightIsReturnedThoughItsPiecesAreLongerThanTheRuleOfThumb() {
    Call call = standingAt(114, MILD);
    assertThat(call.choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.reasons()).extracting(Reason::ruleId).contains("short-pieces");
    assertThat(bestOf(call).outcome().clumpIndex().middle()).isBetween(0.6, 0.7);
  }

  @Test
  void loggedFeedIsSaidToTakeThePlaceOfTheProgrammes() {
    List<LogEntry> log = new ArrayList<>(CallExamples.standingAt(ON, 108));
    Lawn fed = CallExamples.fescue();
    assertThat(MowingCall.of(fed, MILD, log, ON).notes())
        .noneMatch(note -> note.startsWith("Feed is in the log"));
    log.add(new LogEntry.Fed(ON.minusDays(1), 1, 2, 0, 0));
    assertThat(MowingCall.of(fed, MILD, log, ON).notes())
        .anyMatch(note -> note.startsWith("Feed is in the log") && note.contains("2015, and none"));
  }

  @Test
  void wetLeavesAreLeftToDry() {
    Call call = standingAt(109, today(Quantity.RAIN_MM, 20));
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    assertThat(call.sentence())
        .isEqualTo(
            "Wait for the dry hours of tomorrow, about 10 to 19, then mow and return the clippings.");
    assertThat(call.today().possiblyWet()).isTrue();
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("clumps");
    assertThat(call.reasons().get(0).against()).isTrue();
    assertThat(call.reasons()).extracting(Reason::ruleId).contains("wet");
    assertThat(call.wouldChange())
        .contains("If the leaves are dry after all: mow today and return.");
  }

  @Test
  void dryHoursThatAreToldMakeADayUsable() {
    Call call = standingAt(112, today(Quantity.RAIN_MM, 2));
    assertThat(call.choice()).isEqualTo(Choice.WAIT_FOR_DRY_HOURS);
    assertThat(call.today().possiblyWet()).isFalse();
    Particulars.Hours today = call.particulars().hours().get(0);
    assertThat(call.sentence())
        .isEqualTo(
            "Wait for the dry hours of today, about %d to %d, then mow and return the clippings.",
            today.from(), today.to());
    assertThat(today.words()).contains("wet with rain until about " + today.from());
  }

  @Test
  void aSafeVisitIsNotLetGoForDaysOfGrowthOnlyBecauseItIsWet() {
    SiteClimate climate =
        new SiteClimate(today(Quantity.RAIN_MM, 20), CallExamples.fescue().site());
    for (double heightMm = 96; heightMm <= 112; heightMm += 4) {
      Visits visits = Visits.on(ON, ON.plusDays(7), ON.plusDays(14));
      Asked asked =
          new Asked(ON, CallRules.standard(), Units.METRIC, Circumstances.NONE.withVisits(visits));
      Call call =
          MowingCall.of(
              CallExamples.fescue(), climate, CallExamples.standingAt(ON, heightMm), asked);
      assertThat(call.mowOn()).as("%s mm", heightMm).isEqualTo(ON);
      assertThat(call.choice()).isEqualTo(Choice.MOW_AND_COLLECT);
    }
  }

  @Test
  void grassThatGrowsTooTallWhileItDriesIsCutTwiceThen() {
    Call call = standingAt(117, today(Quantity.RAIN_MM, 20));
    assertThat(call.sentence())
        .isEqualTo(
            "Wait for the dry hours of tomorrow, about 10 to 19, then raise the deck and cut twice: to 90 mm tomorrow, to 76 mm on Sunday; return each time.");
    assertThat(call.mowOn()).isEqualTo(ON.plusDays(1));
  }

  @Test
  void overAThirdIsCutTwice() {
    Call call = standingAt(130, MILD);
    assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_CUT_TWICE);
    assertThat(call.sentence())
        .isEqualTo(
            "Raise the deck and cut twice: to 100 mm today, to 76 mm on Saturday; return each time.");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("one-third");
    assertThat(bestOf(call).outcome().heightTakenFraction().middle()).isLessThan(1.0 / 3);
    assertThat(bestOf(call).outcome().heightTakenFraction().high()).isLessThan(0.35);
  }

  @Test
  void overHalfIsCollectedInSteps() {
    Call call = standingAt(160, MILD);
    assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_COLLECT);
    assertThat(call.sentence())
        .isEqualTo(
            "Raise the deck, mow today to 110 mm and collect: more than half of the height would come off at once. Then step down: to 76 mm on Saturday, return.");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("half");
    assertThat(bestOf(call).outcome().bags()).isNotNull();
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("horses"));
  }

  @Test
  void nothingToCutIsLeft() {
    Call call = standingAt(77, MILD);
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.mowOn()).isNull();
    assertThat(call.sentence()).startsWith("Leave it: nothing to cut yet; next look about ");
    assertThat(call.reasons()).extracting(Reason::ruleId).containsExactly("least-growth");
    assertThat(call.options()).isEmpty();
  }

  @Test
  void possibleFrostPutsMowingOffUntilItHasGone() {
    Call call = standingAt(108, today(Quantity.MINIMUM_C, 1));
    assertThat(call.choice()).isEqualTo(Choice.WAIT_FOR_DRY_HOURS);
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("frost");
    assertThat(call.reasons().get(0).headline()).isEqualTo("Down to 1.0 °C");
  }

  @Test
  void soilFullOfWaterPutsMowingOff() {
    Call call = standingAt(108, today(Quantity.RAIN_MM, 140));
    assertThat(call.choice()).isNotEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("saturated");
    assertThat(call.cautions()).anyMatch(caution -> caution.contains("slopes"));
  }

  @Test
  void heatPutsMowingOff() {
    Call call = standingAt(108, today(Quantity.MAXIMUM_C, 37));
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("heat");
  }

  @Test
  void outsideItsSeasonTheLawnIsLeft() {
    LocalDate winter = LocalDate.of(2015, 1, 20);
    Call call = MowingCall.of(CallExamples.fescue(), MILD, List.of(), winter);
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.sentence()).isEqualTo("Leave it: the mowing season begins on 1 April.");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("season");
  }

  @Test
  void grassAtRestInDroughtIsLeft() {
    LocalDate july = LocalDate.of(2015, 7, 20);
    WeatherSeries drought =
        CallExamples.changed(
            CallExamples.newYork(), Quantity.RAIN_MM, LocalDate.of(2015, 4, 20), july, 0);
    Call call = MowingCall.of(CallExamples.fescue(), drought, List.of(), july);
    assertThat(call.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("hardly-growing");
  }

  @Test
  void aWeeklyLawnWaitsForItsDay() {
    List<LogEntry> log = List.of(new LogEntry.Mown(ON.minusDays(4), 100, 76, 1));
    Call call = MowingCall.of(CallExamples.lawn(7), MILD, log, ON);
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    assertThat(call.mowOn()).isEqualTo(ON.plusDays(3));
    assertThat(call.reasons())
        .extracting(Reason::headline)
        .contains("4 days since the last mowing");
  }

  @Test
  void fastGrowthIsMownBeforeItsDayRatherThanOverAThird() {
    WeatherSeries wetSpring =
        CallExamples.changed(MILD, Quantity.RAIN_MM, ON.minusDays(40), ON.minusDays(4), 5);
    List<LogEntry> log =
        List.of(
            new LogEntry.Fed(ON.minusDays(20), 9, 0, 0, 0),
            new LogEntry.Mown(ON.minusDays(2), Double.NaN, 76, 1));
    Call call = MowingCall.of(CallExamples.lawn(14), wetSpring, log, ON);
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    assertThat(bestOf(call).outcome().heightTakenFraction().middle()).isBetween(0.25, 0.354);
    assertThat(call.mowOn()).isBefore(ON.plusDays(12));
  }

  @Test
  void aPersonsOwnThirdTakesThreeCuts() {
    CallRules strict = CallRules.standard().with(Map.of("one-third", 0.2, "length", 60.0));
    SiteClimate climate = new SiteClimate(MILD, CallExamples.fescue().site());
    Call call =
        MowingCall.of(CallExamples.fescue(), climate, CallExamples.standingAt(ON, 127), ON, strict);
    assertThat(call.choice()).isEqualTo(Choice.RAISE_AND_CUT_TWICE);
    assertThat(call.sentence()).startsWith("Raise the deck and cut three times: to ");
    assertThat(call.reasons().get(0).ruleId()).isEqualTo("one-third");
    assertThat(call.reasons().get(0).threshold()).isEqualTo("limit a fifth");
  }

  @Test
  void aPersonsOwnDeckFactorTurnsOnePassIntoTwo() {
    Function<CallRules, Call> with =
        rules ->
            MowingCall.of(
                CallExamples.fescue(),
                new SiteClimate(MILD, CallExamples.fescue().site()),
                CallExamples.standingAt(ON, 114),
                ON,
                rules);
    CallRules sideDischarge = CallRules.standard().with(Map.of("deck-factor", 2.0));
    assertThat(with.apply(CallRules.standard()).choice()).isEqualTo(Choice.MOW_AND_RETURN);
    assertThat(with.apply(sideDischarge).choice()).isEqualTo(Choice.DOUBLE_PASS);
  }

  @Test
  void outcomesKeepTheirArithmetic() {
    Option.Outcome returned = standingAt(108, MILD).options().get(0).outcome();
    double dry = 0.95 * 0.6 * (108 - 76);
    assertThat(returned.dryGPerM2().middle()).isCloseTo(dry, within(1e-9));
    assertThat(returned.freshLitres()).isNotNull();
    assertThat(requireNonNull(returned.freshLitres()).middle())
        .isCloseTo(640 * dry / 40, within(1e-6));
    assertThat(requireNonNull(returned.minutes()).middle())
        .isCloseTo(640 / (0.9 * 0.53 * 4000 / 60), within(1e-9));
    assertThat(returned.bags()).isEqualTo(Spread.exactly(0));
  }

  @Test
  void returningKeepsWhatCollectingTakesAway() {
    Call call = standingAt(108, MILD);
    Option.Outcome returned = call.options().get(0).outcome();
    Option.Outcome collected = call.options().get(1).outcome();
    assertThat(returned.nitrogenG()).isEqualTo(collected.nitrogenG());
    assertThat(returned.thatchChangeMm().middle())
        .isGreaterThan(collected.thatchChangeMm().middle());
    assertThat(collected.clumpIndex()).isEqualTo(Spread.exactly(0));
    assertThat(collected.daysToHalf()).isNull();
    assertThat(returned.daysToHalf()).isNotNull();
  }

  @Test
  void daysThatCannotBeAnsweredSayWhichCan() {
    assertThatThrownBy(() -> CallExamples.fescueOn(MILD, LocalDate.of(2016, 1, 2)))
        .hasMessageContaining("must lie on 2016-01-01 or earlier");
    assertThatThrownBy(() -> CallExamples.fescueOn(MILD, LocalDate.of(2012, 1, 1)))
        .hasMessageContaining("must lie on 2012-01-02 or later");
  }
}
