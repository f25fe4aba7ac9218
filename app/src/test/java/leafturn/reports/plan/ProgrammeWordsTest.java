package leafturn.reports.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.util.List;
import java.util.Map;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.CutHeights;
import leafturn.model.lawn.Programme;
import leafturn.quantity.Units;
import leafturn.reports.UnitWords;
import org.junit.jupiter.api.Test;

/** A programme in words. */
class ProgrammeWordsTest {
  private static final ProgrammeWords WORDS =
      new ProgrammeWords(new UnitWords(Units.METRIC), "a third");

  private static Programme programme(CutHeights heights, int everyDays, double nGPerM2) {
    return SamplePlan.programme(
        heights,
        everyDays,
        List.of(new Programme.Feeding(CalendarDay.ofYear(110), nGPerM2, 0, 0, 0)));
  }

  @Test
  void oneDayIsNoNumberOfDays() {
    assertThat(WORDS.parts(programme(CutHeights.always(20), 1, 5))).startsWith("every day to 20");
    assertThat(WORDS.parts(programme(CutHeights.always(20), 2, 5))).startsWith("every 2 days to");
    assertThat(WORDS.parts(programme(CutHeights.always(20), 0, 5)))
        .startsWith("when a third is due to");
  }

  @Test
  void theElementStaysOnTheLineOfItsUnit() {
    assertThat(WORDS.parts(programme(CutHeights.always(76), 7, 7.4)))
        .endsWith("7.4\u202fg/m²\u00a0N a year");
  }

  @Test
  void monthsOfOneHeightAreToldTogether() {
    CutHeights heights =
        new CutHeights(76, Map.of(Month.JUNE, 90.0, Month.JULY, 90.0, Month.AUGUST, 95.0));
    assertThat(WORDS.parts(programme(heights, 7, 0)))
        .startsWith(
            "every 7 days to 76\u202fmm (90\u202fmm in June and July) (95\u202fmm in August)")
        .endsWith("no feed");
  }
}
