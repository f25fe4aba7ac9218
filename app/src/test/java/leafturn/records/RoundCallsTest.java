package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.LawnOnRound;
import leafturn.advice.call.RoundOfLawns;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

class RoundCallsTest {
  private static final LocalDate DAY = LocalDate.of(2015, 5, 28);

  @Test
  void theExamplesMakeARoundWithACallForEachLawn() {
    RoundOfLawns round = RoundCalls.ofTheExamples();
    assertThat(round.today()).isEqualTo(DAY);
    assertThat(round.standing()).containsIgnoringCase("invented");
    assertThat(round.lawns()).hasSize(6);
    LawnOnRound front = round.lawn("linden-house-front").orElseThrow();
    assertThat(front.description().soil())
        .isEqualTo("holds 130 mm of water for plants in a metre, 5 % organic matter");
    assertThat(front.lastEntry()).isEqualTo("Mown on 21 May, collected");
    assertThat(front.call().notes()).contains("Columns not used: \"weather\".");
  }

  @Test
  void theLastEntryUpToTheDayIsTold() {
    List<LogEntry> log =
        List.of(
            new LogEntry.Mown(DAY.minusDays(9), 100, 76, 0.5),
            new LogEntry.Fed(DAY.minusDays(3), 4, 0, 0, 0),
            new LogEntry.Mown(DAY.plusDays(1), 100, 76, 1));
    assertThat(RoundCalls.lastEntry(log, DAY)).isEqualTo("Fed on 25 May");
    assertThat(RoundCalls.lastEntry(log.subList(0, 1), DAY))
        .isEqualTo("Mown on 19 May, 50 % returned");
    assertThat(RoundCalls.lastEntry(log.subList(2, 3), DAY)).isEmpty();
  }

  @Test
  void aDayThatTheWeatherDoesNotReachIsAFaultOfTheRound() {
    RoundFile.Round round = RoundFile.read(Examples.text("round.json"));
    RoundFile.Round later =
        new RoundFile.Round(
            round.adviser(),
            round.standing(),
            LocalDate.of(2020, 5, 28),
            round.weather(),
            round.weatherOrigin(),
            round.site(),
            round.lawns());
    assertThatThrownBy(() -> RoundCalls.of(later, Examples::text))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("new-york-2012-2015.csv: the day of the call is 2020-05-28");
  }
}
