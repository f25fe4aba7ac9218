package leafturn.records.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import leafturn.records.sheet.TrialEventSheet.Exclusion;
import leafturn.records.sheet.TrialEventSheet.Happening;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Who decided on an event, and when, however often it is kept anew. */
class TrialEventSheetTest {
  private static final LocalDate DAY = LocalDate.of(2015, 5, 10);
  private static final Exclusion ADAS =
      new Exclusion(true, true, "Ada", LocalDate.of(2015, 5, 11), "Rule 2");

  private static TrialEventSheet dog(
      LocalDate day, String plot, @Nullable Exclusion exclusion, String note) {
    return new TrialEventSheet(
        "00000000-0000-4000-8000-000000000001",
        day,
        Happening.DOG_URINE,
        List.of(plot),
        0.3,
        null,
        exclusion,
        note);
  }

  private static TrialEventSheet bos(boolean leftOut, boolean blind, String why) {
    Exclusion decided = new Exclusion(leftOut, blind, "Bo", LocalDate.of(2015, 10, 20), why);
    return dog(DAY, "B1-1", decided, "a brown patch");
  }

  @Test
  void aNoteThatIsAddedLeavesTheDecisionToWhoMadeIt() {
    TrialEventSheet before = dog(DAY, "B1-1", ADAS, "");
    TrialEventSheet after = bos(true, true, "Rule 2").decidedAs(before);
    assertThat(after.exclusion()).isEqualTo(ADAS);
    assertThat(after.note()).isEqualTo("a brown patch");
    assertThat(before.isTakenBackBy(after)).isFalse();
  }

  @Test
  void anotherDecisionIsOfWhoeverMakesIt() {
    TrialEventSheet before = dog(DAY, "B1-1", ADAS, "");
    for (TrialEventSheet after :
        List.of(
            bos(false, true, "Rule 2"), bos(true, false, "Rule 2"), bos(true, true, "Rule 1"))) {
      assertThat(after.decidedAs(before)).isEqualTo(after);
      assertThat(before.isTakenBackBy(after)).isTrue();
    }
  }

  @Test
  void theSameDecisionOnOtherPlotsOrAnotherDayIsNew() {
    TrialEventSheet after = bos(true, true, "Rule 2");
    assertThat(after.decidedAs(dog(DAY, "B1-2", ADAS, ""))).isEqualTo(after);
    assertThat(after.decidedAs(dog(DAY.minusDays(1), "B1-1", ADAS, ""))).isEqualTo(after);
  }

  @Test
  void whereNothingWasDecidedOrNothingIsTheEventStaysAsItIs() {
    TrialEventSheet first = bos(true, true, "Rule 2");
    assertThat(first.decidedAs(dog(DAY, "B1-1", null, ""))).isEqualTo(first);
    TrialEventSheet open = dog(DAY, "B1-1", null, "");
    assertThat(open.decidedAs(dog(DAY, "B1-1", ADAS, ""))).isEqualTo(open);
  }
}
