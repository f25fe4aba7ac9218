package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a call may know: the log and the weather up to its day, and other years after it. */
class ReplayAndWeatherTest {
  private static final LocalDate ON = LocalDate.of(2014, 5, 20);
  private static final WeatherSeries WEATHER = CallExamples.newYork();
  private static final List<LogEntry> LOG =
      List.of(
          new LogEntry.Mown(LocalDate.of(2014, 4, 24), 112, 76, 1),
          new LogEntry.Mown(LocalDate.of(2014, 5, 8), Double.NaN, Double.NaN, 0));

  private static Call call(WeatherSeries weather, List<LogEntry> log, LocalDate on) {
    return MowingCall.of(CallExamples.fescue(), weather, log, on);
  }

  @Test
  void theSameInputsGiveTheSameCall() {
    assertThat(call(WEATHER, LOG, ON)).isEqualTo(call(WEATHER, LOG, ON));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2014-05-20", "2014-10-20", "2013-11-02"})
  void theDaysThatReallyFollowedAreNotLookedAt(LocalDate on) {
    LocalDate next = on.plusDays(1);
    LocalDate last = on.plusDays(365);
    WeatherSeries wetter = CallExamples.changed(WEATHER, Quantity.RAIN_MM, next, last, 33);
    WeatherSeries warmer = CallExamples.changed(wetter, Quantity.MAXIMUM_C, next, last, 45);
    Call known = call(WEATHER, LOG, on);
    assertThat(call(warmer, LOG, on)).isEqualTo(known);
  }

  @Test
  void eachOtherYearOfTheRecordIsAPossibleSeason() {
    PossibleSeasons seasons = call(WEATHER, LOG, ON).possibleSeasons();
    assertThat(seasons)
        .isEqualTo(new PossibleSeasons(3, 42, "the days after 20 May in 2012, 2013 and 2015"));
  }

  @Test
  void daysThatStandInAreNoPossibleSeasons() {
    LocalDate next = ON.plusDays(1);
    Call call = onStandIns(WEATHER, next);
    assertThat(call.possibleSeasons().madeFrom())
        .isEqualTo("the days after 20 May in 2012 and 2013");
    WeatherSeries wetter =
        CallExamples.changed(WEATHER, Quantity.RAIN_MM, next, WEATHER.lastDay(), 33);
    assertThat(onStandIns(wetter, next)).isEqualTo(call);
  }

  @Test
  void aLawnThatLivesOnStandInsSaysSo() {
    WeatherSeries untilYesterday = between(WEATHER.firstDay(), ON.minusDays(1));
    assertThat(onStandIns(untilYesterday, ON.minusDays(9)).notes())
        .anyMatch(note -> note.contains("days that stand in"))
        .noneMatch(note -> note.contains("record ends yesterday"));
  }

  /** The call where the weather from a day on stands in for what was not measured. */
  private static Call onStandIns(WeatherSeries weather, LocalDate from) {
    SiteClimate climate =
        new SiteClimate(weather, CallExamples.fescue().site(), weather.indexOf(from));
    return MowingCall.of(
        CallExamples.fescue(), climate, LOG, new Asked(ON, CallRules.standard(), Units.METRIC));
  }

  @Test
  void weatherOfTheDayItselfCounts() {
    WeatherSeries rainy = CallExamples.changed(WEATHER, Quantity.RAIN_MM, ON, ON, 9);
    assertThat(call(WEATHER, LOG, ON).today().possiblyWet()).isFalse();
    assertThat(call(rainy, LOG, ON).today().possiblyWet()).isTrue();
  }

  @Test
  void onTheDayAfterTheRecordTodayIsUnknown() {
    Call call = call(WEATHER, LOG, WEATHER.lastDay().plusDays(1));
    assertThat(call.notes()).anyMatch(note -> note.contains("record ends yesterday"));
    assertThat(call.outlook().past())
        .last()
        .extracting(Outlook.PastDay::day)
        .isEqualTo(WEATHER.lastDay());
  }

  @Test
  void whatWasDoneTodayCountsBeforeTodaysWeatherIsKnown() {
    LocalDate on = WEATHER.lastDay().plusDays(1);
    List<LogEntry> grown = List.of(new LogEntry.Mown(on.minusDays(60), 130, 76, 1));
    List<LogEntry> mown = new ArrayList<>(grown);
    mown.add(new LogEntry.Mown(on, 120, 76, 1));
    assertThat(call(WEATHER, grown, on).today().heightMm()).isGreaterThan(77);
    Call done = call(WEATHER, mown, on);
    assertThat(done.today().heightMm()).isCloseTo(76, within(1e-9));
    assertThat(done.today().lastMown()).isEqualTo(on);
    assertThat(done.notes())
        .anyMatch(note -> note.contains("the log says 120 mm where the model had"));
  }

  @Test
  void whatIsFedTodayIsInTheSoilTestOfToday() {
    LocalDate on = WEATHER.lastDay().plusDays(1);
    List<LogEntry> fed = new ArrayList<>(LOG);
    fed.add(new LogEntry.Fed(on, 5, 0, 3, 2));
    assertThat(call(WEATHER, fed, on).today().soilPhosphorusPpm())
        .isGreaterThan(call(WEATHER, LOG, on).today().soilPhosphorusPpm());
  }

  @Test
  void aRecordOfOneYearAloneSaysThatItKnowsTooMuch() {
    WeatherSeries year = between(LocalDate.of(2014, 1, 1), LocalDate.of(2014, 12, 31));
    Call call = call(year, LOG, ON);
    assertThat(call.possibleSeasons().count()).isEqualTo(1);
    assertThat(call.notes()).anyMatch(note -> note.contains("knows what it should not"));
  }

  @Test
  void aRecordWithNothingAfterTheDayIsAFault() {
    WeatherSeries year = between(LocalDate.of(2013, 5, 1), LocalDate.of(2014, 5, 20));
    LocalDate on = LocalDate.of(2014, 5, 20);
    assertThat(call(year, LOG, on).possibleSeasons().madeFrom()).endsWith("in 2013");
    WeatherSeries late = between(LocalDate.of(2013, 5, 22), LocalDate.of(2014, 5, 22));
    assertThatThrownBy(() -> call(late, LOG, on))
        .hasMessageContaining("needs 42 days of weather after 20 May")
        .hasMessageContaining("2013-05-22 to 2014-05-22");
  }

  @Test
  void loggedHeightsSetTheModelAndAreShown() {
    Call call = call(WEATHER, LOG, ON);
    assertThat(call.today().lastMown()).isEqualTo(LocalDate.of(2014, 5, 8));
    assertThat(call.notes())
        .anyMatch(note -> note.startsWith("On 24 April the log says 112 mm where the model had"));
    Outlook.PastDay mown =
        call.outlook().past().stream()
            .filter(day -> day.day().equals(LocalDate.of(2014, 4, 24)))
            .findFirst()
            .orElseThrow();
    assertThat(mown.heightMm()).isCloseTo(76, within(1e-9));
    assertThat(mown.returned()).isEqualTo(1);
  }

  @Test
  void whatIsFedAndWateredActs() {
    List<LogEntry> fed = new ArrayList<>(LOG);
    fed.add(new LogEntry.Fed(LocalDate.of(2014, 4, 25), 5, 0, 3, 2));
    fed.add(new LogEntry.Watered(LocalDate.of(2014, 5, 19), 20));
    Call.Today plain = call(WEATHER, LOG, ON).today();
    Call.Today treated = call(WEATHER, fed, ON).today();
    assertThat(treated.soilPhosphorusPpm()).isGreaterThan(plain.soilPhosphorusPpm() + 2);
    assertThat(treated.soilWaterFraction()).isGreaterThan(plain.soilWaterFraction() + 0.05);
  }

  @Test
  void aMowingOfTheDayIsDoneAndLaterOnesAreLeftOut() {
    List<LogEntry> log = new ArrayList<>(LOG);
    log.add(new LogEntry.Mown(ON, Double.NaN, 76, 1));
    log.add(new LogEntry.Mown(ON.plusDays(9), 110, 76, 1));
    Call call = call(WEATHER, log, ON);
    assertThat(call.today().heightMm()).isCloseTo(76, within(1e-9));
    assertThat(call.choice()).isNotEqualTo(Choice.MOW_AND_RETURN);
    assertThat(call.notes()).contains("1 log entry after 2014-05-20 left out.");
  }

  @Test
  void aLeapDayHasItsPossibleSeasonsToo() {
    LocalDate leapDay = LocalDate.of(2012, 2, 29);
    assertThat(call(WEATHER, List.of(), leapDay).possibleSeasons().count()).isEqualTo(3);
  }

  @Test
  void inLateAutumnTheRunGoesOnIntoTheNewYear() {
    Call call = call(WEATHER, List.of(), LocalDate.of(2014, 11, 10));
    assertThat(call.outlook().toCome()).hasSize(28);
    assertThat(call.possibleSeasons().count()).isEqualTo(3);
  }

  private static WeatherSeries between(LocalDate first, LocalDate last) {
    int from = WEATHER.indexOf(first);
    int days = WEATHER.indexOf(last) - from + 1;
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      if (WEATHER.has(quantity)) {
        double[] column = new double[days];
        for (int day = 0; day < days; day++) {
          column[day] = WEATHER.value(quantity, from + day);
        }
        values.put(quantity, column);
      }
    }
    return new WeatherSeries(first, values);
  }

  @Test
  void aMeasuredHeightIsTakenAndIsNoMowing() {
    LocalDate on = LocalDate.of(2015, 5, 20);
    List<LogEntry> log =
        List.of(
            new LogEntry.Mown(on.minusDays(4), Double.NaN, 76, 1), new LogEntry.Measured(on, 93));
    Call call = MowingCall.of(CallExamples.fescue(), CallExamples.newYork(), log, on);
    assertThat(call.today().heightMm()).isCloseTo(93, within(1e-9));
    assertThat(call.today().lastMown()).isEqualTo(on.minusDays(4));
    assertThat(call.notes()).anyMatch(note -> note.contains("the log says 93 mm"));
  }
}
