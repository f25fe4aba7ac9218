package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.model.lawn.ReturnPractice;
import org.junit.jupiter.api.Test;

/** A programme as its sheet has it. */
class ProgrammeFieldsTest {
  @Test
  void daysAreToldAsDatesAndOfNothingNoFeedingIsMade() {
    UsualSeason south = UsualSeason.of(true);
    Programme programme =
        new Programme(
            new Programme.Mowing(
                CutHeights.always(64), 7, south.from(), south.to(), ReturnPractice.always(1)),
            List.of(
                new Programme.Feeding(CalendarDay.ofYear(292), 0, 5, 0, 0),
                new Programme.Feeding(CalendarDay.ofYear(332), 0, 0, 0, 0),
                new Programme.Feeding(CalendarDay.ofYear(366), 0, 0, 0, 4)),
            0);

    ProgrammeFields told = ProgrammeFields.told(programme);

    assertThat(told.mowing().from()).isEqualTo(CalendarDay.on(MonthDay.of(9, 14)));
    assertThat(told.mowing().to()).isEqualTo(CalendarDay.on(MonthDay.of(6, 12)));
    assertThat(told.feeding())
        .extracting(ProgrammeFields.Feeding::on)
        .containsExactly(CalendarDay.on(MonthDay.of(10, 19)), CalendarDay.on(MonthDay.of(12, 31)));
    assertThat(told.feeding().get(0).slowNGPerM2()).isEqualTo(5);
  }
}
