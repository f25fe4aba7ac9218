package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** A log that stops, or leaves years out, is told of. */
class LogGapsTest {
  private static final MowingSeason SEASON =
      new MowingSeason(CallExamples.fescue().programme().mowing());
  private static final LocalDate ON = LocalDate.of(2014, 7, 1);

  @Test
  void aLastMowingWeeksAgoIsTold() {
    assertThat(notes(ON, mown("2014-04-22"), mown("2014-05-20")))
        .containsExactly(
            "The last mowing in the log was on 20 May 2014, 6 weeks of mowing season ago: the model lets the grass stand since then. Log what was mown, or measure the height today.");
    assertThat(notes(ON, mown("2014-06-04"))).as("27 days ago").isEmpty();
    assertThat(notes(ON, mown("2014-06-03"))).as("28 days ago").hasSize(1);
  }

  @Test
  void winterDoesNotCount() {
    LocalDate inWinter = LocalDate.of(2014, 2, 1);
    assertThat(notes(inWinter, mown("2013-08-01"))).as("not in the season").isEmpty();
    LocalDate soonAfter = LocalDate.of(2014, 3, 25);
    assertThat(notes(soonAfter, mown("2013-12-01"))).isEmpty();
    assertThat(notes(LocalDate.of(2014, 5, 30), mown("2013-12-01"))).hasSize(1);
  }

  @Test
  void aHeightMeasuredLatelySetsTheModelRight() {
    LogEntry measured = new LogEntry.Measured(LocalDate.of(2014, 6, 20), 90);
    assertThat(notes(ON, mown("2014-05-01"), measured)).isEmpty();
  }

  @Test
  void aLogOfOtherThingsTellsThatItHoldsNoMowing() {
    LogEntry watered = new LogEntry.Watered(LocalDate.of(2014, 5, 1), 10);
    assertThat(notes(ON, watered))
        .containsExactly(
            "The log begins on 1 May 2014 and tells no mowing, for 8 weeks of mowing season: the model lets the grass stand since then. Log what was mown, or measure the height today.");
    assertThat(notes(ON)).isEmpty();
  }

  @Test
  void yearsWithoutAMowingAreTold() {
    assertThat(notes(ON, mown("2014-06-28"), mown("2012-05-03"), mown("2013-05-03")))
        .containsExactly(
            "Between 3 May 2013 and 28 June 2014 the log tells no mowing: the model let the grass stand all that time, which still shows in its soil and thatch. Add what was mown then.");
  }

  @Test
  void theAdviceSaysSo() {
    Call call =
        MowingCall.of(
            CallExamples.fescue(), CallExamples.newYork(), List.of(mown("2014-05-20")), ON);
    assertThat(call.notes()).anyMatch(note -> note.contains("was on 20 May 2014, 6 weeks"));
  }

  private static List<String> notes(LocalDate on, LogEntry... log) {
    return new LogGaps(SEASON, Arrays.asList(log), on).notes();
  }

  private static LogEntry mown(String day) {
    return new LogEntry.Mown(LocalDate.parse(day), Double.NaN, Double.NaN, 1);
  }
}
