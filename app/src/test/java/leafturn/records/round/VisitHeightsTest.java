package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import leafturn.model.lawn.LogEntry;
import leafturn.records.LogReading;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.VisitSheet;
import org.junit.jupiter.api.Test;

/** Heights of visits beside those of the log. */
class VisitHeightsTest {
  private static final String LAWN = "00000000-0000-0000-0000-000000000001";
  private static final LocalDate DAY = LocalDate.of(2015, 5, 28);

  private static VisitSheet visit(LocalDate day, Double... heightsMm) {
    return new VisitSheet(
        LAWN, day, List.of(heightsMm), null, null, List.of(), List.of(), "a visit");
  }

  private static LogSheet mown(LocalDate day) {
    return LogSheet.of(
        LAWN, new LogReading.Line(2, new LogEntry.Mown(day, Double.NaN, 76, 1), null));
  }

  @Test
  void theMeanOfAVisitIsAMeasuredHeight() {
    List<VisitSheet> visits = List.of(visit(DAY, 74.0, 80.0), visit(DAY.plusDays(3)));
    assertThat(new VisitHeights(visits, List.of(mown(DAY.minusDays(9)))).entries())
        .containsExactly(new LogEntry.Measured(DAY, 77, true));
  }

  @Test
  void onADayWithAMowingOrAHeightOfTheLogItCountsForNothing() {
    List<VisitSheet> visits = List.of(visit(DAY, 74.0));
    VisitHeights beside = new VisitHeights(visits, List.of(mown(DAY)));
    assertThat(beside.entries()).isEmpty();
    assertThat(beside.notes(DAY.plusDays(2)))
        .singleElement()
        .asString()
        .contains("visit on 28 May 2015 are left aside", "which came first");
    assertThat(beside.notes(DAY.plusDays(20))).isEmpty();
    LogSheet height =
        LogSheet.of(LAWN, new LogReading.Line(2, new LogEntry.Measured(DAY, 90), null));
    VisitHeights measured = new VisitHeights(visits, List.of(mown(DAY.minusDays(9)), height));
    assertThat(measured.entries()).isEmpty();
    assertThat(measured.notes(DAY)).isEmpty();
  }

  @Test
  void noVisitBeginsALogThatBeginsLater() {
    List<VisitSheet> visits = List.of(visit(DAY.minusDays(90), 60.0), visit(DAY, 74.0));
    assertThat(new VisitHeights(visits, List.of(mown(DAY.minusDays(9)))).entries())
        .containsExactly(new LogEntry.Measured(DAY, 74, true));
    assertThat(new VisitHeights(visits, List.of(mown(DAY.plusDays(1)))).notes(DAY.plusDays(1)))
        .singleElement()
        .asString()
        .contains("visit on 28 May 2015 are left aside: the log begins later");
    assertThat(new VisitHeights(visits, List.of()).entries())
        .as("without a log the last one tells where the grass stands")
        .containsExactly(new LogEntry.Measured(DAY, 74, true));
  }
}
