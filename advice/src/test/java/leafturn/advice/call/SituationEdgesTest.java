package leafturn.advice.call;

import static java.util.Objects.requireNonNull;
import static leafturn.advice.call.Situation.all;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** Where two answers meet, what is said must agree with itself: common practice, no source. */
class SituationEdgesTest {
  private static Situation greening(int month, int day) {
    LocalDate on = LocalDate.of(2015, month, day);
    return Situation.of(Species.BERMUDAGRASS, 38, month, day)
        .logged(new LogEntry.Mown(LocalDate.of(2014, 10, 20), Double.NaN, 38, 1))
        .logged(new LogEntry.Measured(on, 50))
        .saw(Sighting.of(Sight.GREENING_UP, on));
  }

  @Test
  void strawIsNotMownBeforeFrostIsPast() {
    Call frosty = greening(4, 25).dry(5, 20, -3, 16).call();
    assertThat(frosty.choice()).isEqualTo(Choice.LEAVE_ALONE);
    assertThat(frosty.sentence()).contains("Wait with the one low cut", "frost", "look again");
    assertThat(frosty.reasons().get(0).ruleId()).isEqualTo("green-up");
    assertThat(frosty.reasons().get(0).headline()).isEqualTo("Frost in all possible seasons");
    assertThat(frosty.wouldChange())
        .anyMatch(text -> text.contains("only the tips"))
        .anyMatch(text -> text.contains("Once frost is past"));
    assertThat(frosty.particulars().lastSafeDay()).isNull();
  }

  @Test
  void strawIsLoweredOnTheFirstDayPastFrost() {
    Call later = greening(4, 25).dry(5, 25, 12, 24).coldToday(-2, 15).call();
    assertThat(later.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(later.mowOn()).isAfter(later.on());
    assertThat(later.sentence()).contains("then lower it once");
  }

  /** A sighting outweighs mowings that are only reckoned from the programme. */
  @Test
  void strawSeenGreeningIsLoweredUnlessAMowingOfThisSpringIsLogged() {
    LocalDate on = LocalDate.of(2015, 5, 5);
    Situation bermuda =
        Situation.of(Species.BERMUDAGRASS, 38, 5, 5)
            .logged(new LogEntry.Measured(on, 50))
            .dry(5, 25, 12, 24);
    assertThat(bermuda.call().today().lastMownLogged()).isFalse();
    assertThat(bermuda.call().wouldChange())
        .anyMatch(text -> text.contains("turns green: lower it once to 25 mm and collect"));
    bermuda.saw(Sighting.of(Sight.GREENING_UP, on));
    Call call = bermuda.call();
    assertThat(call.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(call.mowOn()).isEqualTo(on);
    assertThat(call.particulars().cuts()).containsExactly(new Particulars.Cut(on, 25, false));
    bermuda.logged(new LogEntry.Mown(on.minusDays(20), Double.NaN, 38, 1));
    assertThat(bermuda.call().choice()).isNotEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
  }

  /** Grass that rested in a drought turns green again in summer, and is no straw of winter. */
  @Test
  void warmSeasonGrassTurningGreenInSummerIsNotLowered() {
    LocalDate on = LocalDate.of(2015, 8, 5);
    Call call =
        Situation.of(Species.BERMUDAGRASS, 38, 8, 5)
            .logged(new LogEntry.Measured(on, 50))
            .saw(Sighting.of(Sight.GREENING_UP, on))
            .call();
    assertThat(call.choice()).isNotEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(call.wouldChange()).noneMatch(text -> text.contains("lower it once"));
  }

  @Test
  void grassThatIsNotCutNeverGetsShorter() {
    LocalDate on = LocalDate.of(2015, 5, 27);
    Call call =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 27)
            .logged(new LogEntry.Mown(on.minusDays(14), 85, 64, 1))
            .logged(new LogEntry.Measured(on, 125))
            .call();
    double before = 125;
    assertThat(call.outlook().toCome()).hasSize(28);
    for (var day : call.outlook().toCome()) {
      assertThat(day.heightMm().low()).isGreaterThanOrEqualTo(125);
      assertThat(day.heightMm().middle()).isGreaterThanOrEqualTo(before);
      before = day.heightMm().middle();
    }
  }

  @Test
  void whatCountsAsFrostPastCanBeSet() {
    Situation frosty = greening(4, 25).dry(5, 25, -0.5, 16);
    Reason shorter = frosty.rule("green-up-days", 7).call().reasons().get(0);
    assertThat(shorter.meaning()).contains("within 7 days");
    assertThat(shorter.threshold()).isEqualTo("past in 90 % of them");
    Reason less = frosty.rule("green-up-free", 0.7).call().reasons().get(0);
    assertThat(less.threshold()).isEqualTo("past in 70 % of them");
    Call hardy = frosty.rule("green-up-frost", -4).call();
    assertThat(hardy.choice()).isEqualTo(Choice.LOWER_ONCE_AND_COLLECT);
    assertThat(hardy.mowOn()).isEqualTo(hardy.on());
  }

  @Test
  void howSureASafeDayMustBeCanBeSet() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(4, 92).dry(3, 8, 10, 21);
    LocalDate usual = requireNonNull(may.call().particulars().lastSafeDay());
    LocalDate bold = may.rule("safe-day-share", 0.5).call().particulars().lastSafeDay();
    assertThat(bold).isAfter(usual);
  }

  @Test
  void frostSeenIsAReasonThoughRainKeepsTheDayWet() {
    Situation april =
        Situation.of(Species.TALL_FESCUE, 76, 4, 10)
            .mown(9, 106)
            .dry(3, 8, 4, 15)
            .coldToday(0, 12)
            .rainToday(8);
    Sighting frost = new Sighting(april.on(), LocalTime.of(8, 0), Sight.GROUND_FROST, true);
    Call call = april.saw(frost).call();
    assertThat(call.mowOn()).isAfter(april.on());
    assertThat(call.reasons()).extracting(Reason::ruleId).contains("frost", "wet");
    assertThat(call.reasons().get(0).headline()).isEqualTo("Frost on the ground");
    Call only = april.facts(Circumstances.NONE.withVisits(Visits.on(april.on()))).saw(frost).call();
    assertThat(only.sentence()).startsWith("Wait until the frost has gone").contains(", then ");
  }

  @Test
  void theChosenDayIsNeverAfterTheLastSafeDay() {
    int both = 0;
    for (int heightMm = 84; heightMm <= 120; heightMm += 6) {
      for (double rainMm : new double[] {0, 12, 30}) {
        Call call =
            Situation.of(Species.TALL_FESCUE, 76, 5, 20).mown(7, heightMm).rainToday(rainMm).call();
        LocalDate safe = call.particulars().lastSafeDay();
        LocalDate chosen = call.mowOn();
        if (safe != null && chosen != null) {
          both++;
          assertThat(chosen).as(call.sentence()).isBeforeOrEqualTo(safe);
          assertThat(call.particulars().noSafeDay()).isEmpty();
        }
      }
    }
    assertThat(both).isGreaterThan(5);
  }

  @Test
  void whereNoDayIsSafeThatIsSaid() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).dry(3, 8, 10, 21);
    Call past = may.mown(12, 121).call();
    assertThat(past.particulars().lastSafeDay()).isNull();
    assertThat(past.particulars().noSafeDay())
        .isEqualTo("No safe day is left: more than a third would come off in one cut today");
    Call wet =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20)
            .mown(8, 113)
            .dry(3, 8, 10, 21)
            .rainToday(9)
            .call();
    assertThat(wet.mowOn()).isAfter(wet.on());
    assertThat(wet.particulars().lastSafeDay()).isNull();
    assertThat(wet.particulars().noSafeDay()).contains("in one cut tomorrow in");
  }

  @Test
  void aCutHeightOutsideTheUsualRangeIsRemarkedOnce() {
    for (Species grass : Species.values()) {
      assertThat(remarks(grass, 5)).as(grass.commonName()).hasSize(1);
      assertThat(remarks(grass, 64)).as(grass.commonName()).isEmpty();
      assertThat(remarks(grass, 110)).as(grass.commonName()).hasSize(1);
    }
    assertThat(remarks(Species.ST_AUGUSTINEGRASS, 25))
        .singleElement()
        .asString()
        .contains("Cut to 25 mm", "below the 64 mm to 102 mm usual", "Texas A&M", "raise the cut");
  }

  private static List<String> remarks(Species grass, double cutMm) {
    Call call = Situation.of(grass, cutMm, 6, 20).mown(6, 1.3 * cutMm).dry(3, 8, 16, 27).call();
    return call.notes().stream().filter(note -> note.contains("usual for lawns of it")).toList();
  }

  @Test
  void wetLeavesAreToldWithTheFigureThatMakesThemWet() {
    Call damp =
        Situation.of(Species.TALL_FESCUE, 76, 5, 20)
            .mown(6, 102)
            .dry(3, 8, 8, 10)
            .rule("wet-humidity", 80)
            .call();
    assertThat(damp.reasons())
        .filteredOn(reason -> reason.ruleId().equals("wet"))
        .isNotEmpty()
        .allSatisfy(
            reason ->
                assertThat(reason.meaning())
                    .contains("dry and free of frost in 75 %")
                    .doesNotContain("0.0 mm of rain"));
  }

  @Test
  void annualBluegrassIsNamedOnlyWhereItsWindowIsOpenOrNear() {
    Call july = Situation.of(Species.BERMUDAGRASS, 38, 7, 10).mown(5, 50).dry(3, 8, 20, 31).call();
    assertThat(all(july)).doesNotContain("annual bluegrass");
    Call may = Situation.of(Species.TALL_FESCUE, 76, 5, 10).mown(6, 100).dry(3, 8, 10, 21).call();
    assertThat(may.wouldChange()).anyMatch(text -> text.contains("annual bluegrass is in seed"));
  }
}
