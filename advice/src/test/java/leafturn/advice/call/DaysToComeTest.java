package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import leafturn.model.grass.Species;
import org.junit.jupiter.api.Test;

/** Weather that nobody knows yet rules no day out, and hours that are told can be mown in. */
class DaysToComeTest {
  private static final Circumstances NOTHING = Circumstances.NONE;

  private static Sighting at(Sight sight, LocalDate on, int hour) {
    return new Sighting(on, LocalTime.of(hour, 0), sight, true);
  }

  /** Twelve days into June: dry before, and nobody knows the days after tomorrow. */
  private static Situation june(double nowMm) {
    Situation june = Situation.of(Species.KENTUCKY_BLUEGRASS, 60, 6, 12).mown(6, nowMm);
    return june.dry(8, 1, 14, 26).saw(at(Sight.DRY_LEAVES, june.on(), 13));
  }

  @Test
  void tomorrowsDryAfternoonIsWaitedForRatherThanThreeCutsLater() {
    Situation may =
        Situation.of(Species.TALL_FESCUE, 80, 5, 20).mown(6, 104).dry(3, -1, 10, 20).rainToday(12);
    Call call = may.saw(at(Sight.WET_LEAVES, may.on(), 8)).call();
    assertThat(call.mowOn()).isEqualTo(may.on().plusDays(1));
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    Particulars.Hours tomorrow = call.particulars().hours().get(1);
    assertThat(call.sentence())
        .isEqualTo(
            "Wait for the dry hours of tomorrow, about %d to %d, then mow and return the clippings.",
            tomorrow.from(), tomorrow.to());
    assertThat(call.wouldChange()).anyMatch(text -> text.startsWith("If tomorrow stays wet"));
    assertThat(call.options())
        .filteredOn(option -> option.choice() == Choice.WAIT_AND_RETURN)
        .allMatch(option -> option.remark().isEmpty());
  }

  @Test
  void wetClippingsAreSaidToClumpOnlyWhereTheirIndexSaysSo() {
    String little = mownWet(92);
    assertThat(little).contains("collect", "clumps stay unlikely at an index of 0.");
    assertThat(little).doesNotContain("wet clippings clump");
    assertThat(mownWet(112)).isEqualTo("If it must be mown wet: collect, for wet clippings clump.");
  }

  private static String mownWet(double nowMm) {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, nowMm).dry(4, 8, 12, 22);
    return may.saw(at(Sight.WET_LEAVES, may.on(), 8)).call().wouldChange().stream()
        .filter(text -> text.startsWith("If it must be mown wet"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aContractorsDayIsNotTurnedIntoCollectingByACoinFlip() {
    Call call = june(75).facts(NOTHING.withVisits(Visits.every(DayOfWeek.WEDNESDAY))).call();
    assertThat(call.choice()).isEqualTo(Choice.WAIT_AND_RETURN);
    assertThat(call.sentence())
        .startsWith(
            "Wait until Wednesday, then mow and return the clippings. Leaves are dry on Wednesday")
        .contains("% of the possible seasons: return if they are, else", "or collect");
    assertThat(call.reasons()).extracting(Reason::ruleId).doesNotContain("wet", "wet-return");
  }

  @Test
  void howLikelyWetLeavesMustBeIsARule() {
    Situation wednesday =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 60, 6, 12)
            .mown(6, 75)
            .rule("wet", 0)
            .rule("wet-yesterday", 0)
            .facts(NOTHING.withVisits(Visits.every(DayOfWeek.WEDNESDAY)));
    assertThat(wednesday.call().sentence()).contains("Leaves are dry on Wednesday in");
    assertThat(wednesday.rule("wet-share", 0.5).call().sentence())
        .contains("the leaves are likely wet that day");
  }

  @Test
  void theFirstDayAfterTheLabelsWaitIsNamed() {
    for (int wait = 5; wait <= 7; wait++) {
      Situation treated = june(75);
      Call call = treated.facts(Treated.withHerbicide(treated.on().minusDays(1), wait)).call();
      assertThat(call.mowOn()).isEqualTo(treated.on().plusDays(wait - 1));
      assertThat(call.sentence()).contains("wait for dry hours").doesNotContain("collect");
    }
  }

  @Test
  void heldClippingsOfAWetDayAreSpread() {
    Situation rain = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(6, 104).dry(3, 8, 10, 21);
    Call call =
        rain.rainToday(20)
            .facts(
                Treated.withClopyralid(rain.on().minusDays(10), Treatment.Label.UNREAD)
                    .withVisits(Visits.on(rain.on())))
            .call();
    assertThat(call.mowOn()).isEqualTo(rain.on());
    assertThat(call.sentence())
        .contains("likely wet", "spread what clumps")
        .doesNotContain("collect");
  }

  @Test
  void aContractorsNextDayIsNamedWhereItIsInTime() {
    Call call =
        Situation.of(Species.TALL_FESCUE, 80, 10, 15)
            .mown(6, 90)
            .rule("due", 0.1)
            .rule("safe-day-share", 0.5)
            .facts(NOTHING.withVisits(Visits.every(DayOfWeek.SUNDAY, DayOfWeek.TUESDAY)))
            .call();
    assertThat(call.mowOn()).isEqualTo(LocalDate.of(2015, 10, 18));
    assertThat(call.sentence()).endsWith("else wait for dry hours that day, or for Tuesday.");
  }

  @Test
  void whereNothingIsDueNoSafeDayIsMissed() {
    for (double nowMm : new double[] {59, 66, 69}) {
      assertThat(june(nowMm).call().particulars().noSafeDay()).isEmpty();
    }
  }

  @Test
  void theRulesThatSpeakAgainstSafeDaysAreNamed() {
    Situation treated = june(84);
    Call call = treated.facts(Treated.withHerbicide(treated.on().minusDays(1), 7)).call();
    assertThat(call.particulars().noSafeDay())
        .contains("the label asks to wait today", "more than a third would come off")
        .doesNotContain("other rules");
  }

  @Test
  void spansTooShortToMowInAreNotTold() {
    Situation may = Situation.of(Species.TALL_FESCUE, 80, 5, 20).mown(6, 104).dry(3, 8, 10, 20);
    for (int rainMm = 1; rainMm <= 12; rainMm++) {
      Call call = may.rainToday(rainMm).saw(at(Sight.WET_LEAVES, may.on(), 8)).call();
      for (Particulars.Hours hours : call.particulars().hours()) {
        assertThat(hours.from() == null)
            .as(hours.words())
            .isEqualTo(hours.words().contains("dry hours"));
      }
    }
  }
}
