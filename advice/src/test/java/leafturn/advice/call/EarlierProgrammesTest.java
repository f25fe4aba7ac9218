package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.Programme;
import org.junit.jupiter.api.Test;

/** A programme holds from its day on: what was done before it is not done over. */
class EarlierProgrammesTest {
  private static final LocalDate ON = LocalDate.of(2014, 5, 20);
  private static final Lawn BEFORE = CallExamples.fescue();
  private static final Programme LOW_AND_FED = lowAndFed(0);
  private static final Programme LOW_FED_AND_WATERED = lowAndFed(1);

  private static Programme lowAndFed(double irrigationShareOfDemand) {
    CalendarDay from = CalendarDay.on(MonthDay.of(4, 1));
    CalendarDay to = CalendarDay.on(MonthDay.of(11, 15));
    return new Programme(
        new Programme.Mowing(51, 4, from, to, 0),
        List.of(new Programme.Feeding(CalendarDay.ofYear(100), 9, 0, 0, 0)),
        irrigationShareOfDemand);
  }

  private static Call call(Lawn lawn, LogEntry... log) {
    return MowingCall.of(lawn, CallExamples.newYork(), List.of(log), ON);
  }

  private static Lawn keptFrom(LocalDate day, Programme programme) {
    return BEFORE.keptBy(programme).keptBefore(List.of(new Lawn.Earlier(BEFORE.programme(), day)));
  }

  @Test
  void aProgrammeAdoptedTodayChangesNothingOfTheDaysBefore() {
    Call before = call(BEFORE);
    Call adopted = call(keptFrom(ON, LOW_AND_FED));
    assertThat(untilYesterday(adopted)).isEqualTo(untilYesterday(before)).isNotEmpty();
    assertThat(adopted.today().heightMm()).isCloseTo(before.today().heightMm(), within(1.0));
    assertThat(adopted.today().cutHeightMm()).isEqualTo(51);
    assertThat(call(BEFORE.keptBy(LOW_AND_FED)).today().heightMm())
        .isNotCloseTo(before.today().heightMm(), within(5.0));
  }

  private static List<Outlook.PastDay> untilYesterday(Call call) {
    return call.outlook().past().stream().filter(day -> day.day().isBefore(ON)).toList();
  }

  @Test
  void eachDayIsKeptByTheProgrammeThatHeldThen() {
    LocalDate change = LocalDate.of(2014, 5, 5);
    List<Outlook.PastDay> before = call(BEFORE).outlook().past();
    List<Outlook.PastDay> changed = call(keptFrom(change, LOW_FED_AND_WATERED)).outlook().past();
    assertThat(changed).hasSameSizeAs(before);
    for (int day = 0; day < before.size(); day++) {
      boolean same = changed.get(day).equals(before.get(day));
      assertThat(same)
          .as("%s", before.get(day).day())
          .isEqualTo(before.get(day).day().isBefore(change));
    }
    assertThat(changed)
        .filteredOn(day -> !day.day().isBefore(change) && !Double.isNaN(day.returned()))
        .isNotEmpty()
        .allMatch(day -> day.returned() == 0 && Math.abs(day.heightMm() - 51) < 1e-6);
  }

  @Test
  void aLoggedCutWithoutItsHeightWasToThatOfItsDay() {
    LocalDate mown = ON.minusDays(8);
    LogEntry cut = new LogEntry.Mown(mown, Double.NaN, Double.NaN, 1);
    assertThat(heightOn(mown, call(keptFrom(ON.minusDays(2), LOW_AND_FED), cut)))
        .isCloseTo(76, within(0.5));
    assertThat(heightOn(mown, call(BEFORE.keptBy(LOW_AND_FED), cut))).isCloseTo(51, within(0.5));
  }

  private static double heightOn(LocalDate day, Call call) {
    return past(day, call).heightMm();
  }

  private static Outlook.PastDay past(LocalDate day, Call call) {
    return call.outlook().past().stream()
        .filter(one -> one.day().equals(day))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theHeightBeforeALoggedCutIsTheMeasuredOne() {
    LocalDate mown = ON.minusDays(8);
    Call call = call(BEFORE, new LogEntry.Mown(mown, 131, 76, 1));
    assertThat(past(mown, call).heightBeforeCutMm()).isCloseTo(131, within(1e-6));
  }
}
