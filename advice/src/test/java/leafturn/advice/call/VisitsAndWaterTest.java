package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import leafturn.model.grass.Species;
import leafturn.model.weather.generator.WeatherForecast.Day;
import org.junit.jupiter.api.Test;

/** Rain to come counts against watering, and the next visit against leaving it. */
class VisitsAndWaterTest {
  private static final Day DRY = new Day(10, 20, 0, 0.05, 3);
  private static final Circumstances FRIDAYS =
      Circumstances.NONE.withVisits(Visits.every(DayOfWeek.FRIDAY));

  private static Situation dryMay() {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20).mown(4, 74).dry(30, 0, 10, 22);
  }

  private static Day rain(double mm) {
    return new Day(11, 19, mm, 0.95, 3);
  }

  private static String water(Situation situation) {
    return String.join(" ", situation.call().particulars().watering());
  }

  @Test
  void waterIsWhatIsMissingLessTheRainThatIsLikely() {
    assertThat(water(dryMay().forecast(DRY, DRY, DRY, DRY)))
        .contains("hardly any rain is likely", "water 25 mm today");
    assertThat(water(dryMay().forecast(DRY, rain(35), DRY, DRY)))
        .containsPattern("lacks \\d+ mm; [23]\\d mm of rain is likely within three days")
        .contains("wait for it")
        .doesNotContain("if it is to stay green");
    String some = water(dryMay().forecast(DRY, rain(14), DRY, DRY));
    double[] mm =
        Pattern.compile("(\\d+) mm")
            .matcher(some)
            .results()
            .mapToDouble(found -> Double.parseDouble(found.group(1)))
            .toArray();
    assertThat(mm).as(some).hasSize(3);
    assertThat(mm[2]).isCloseTo(Math.min(25, mm[0] - mm[1]), within(1.0));
  }

  @Test
  void nobodyIsSentIntoTomorrowsRainForADayOfGrowth() {
    for (int nowMm = 73; nowMm <= 77; nowMm++) {
      Situation may = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20).mown(5, nowMm);
      Call call = may.dry(5, 5, 9, 21).forecast(rain(25), rain(25), rain(25), rain(25)).call();
      assertThat(call.mowOn()).as("%d mm", nowMm).isNotEqualTo(may.on().plusDays(1));
      assertThat(call.sentence()).doesNotContain("wet clippings");
    }
  }

  @Test
  void restingGrassWaitsForRainThatIsLikely() {
    Situation july =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 18).mown(17, 66).dry(30, 0, 22, 33);
    Situation rest = july.saw(Sighting.of(Sight.DORMANT, july.on()));
    assertThat(water(rest.forecast(DRY, DRY, DRY, DRY))).startsWith("To keep the crowns alive");
    assertThat(water(rest.forecast(DRY, rain(20), DRY, DRY))).contains("needs no water yet");
  }

  @Test
  void theOnlySafeVisitIsTakenThoughTheNextIsTooLateOnlyInSomeSeasons() {
    int openCases = 0;
    for (int nowMm = 64; nowMm <= 76; nowMm += 2) {
      Situation may = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20).mown(1, nowMm);
      Call call = may.dry(5, 20, 9, 21).facts(FRIDAYS).call();
      if (LocalDate.of(2015, 5, 22).equals(call.particulars().lastSafeDay())) {
        assertThat(call.mowOn()).as("%d mm", nowMm).isEqualTo("2015-05-22");
        openCases += call.mowBy() != null && call.mowBy().middle() > 9 ? 1 : 0;
      }
    }
    assertThat(openCases).isPositive();
  }

  @Test
  void aChosenDayLeavesTheLastSafeDayThatOfTheUsualDays() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 5).mown(4, 88).dry(5, 20, 9, 21);
    LocalDate usual = may.call().particulars().lastSafeDay();
    assertThat(usual).isAfter(may.on().plusDays(1));
    Call chosen =
        may.facts(Circumstances.NONE.withVisits(Visits.ANY_DAY.firstOn(may.on().plusDays(1))))
            .call();
    assertThat(chosen.mowOn()).isEqualTo(may.on().plusDays(1));
    assertThat(chosen.particulars().lastSafeDay()).isEqualTo(usual);
  }

  @Test
  void aNewLawnsWaitIsThatForItsFirstCut() {
    Place seeded = new Place(0, Place.Deck.NOT_KNOWN, Place.AnnualBluegrass.NOT_KNOWN, true);
    Situation may = Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 5, 20).mown(10, 74);
    Call call = may.dry(5, 20, 9, 21).facts(Circumstances.NONE.withPlace(seeded)).call();
    assertThat(call.reasons())
        .anyMatch(
            reason ->
                reason.ruleId().equals("first-cut")
                    && reason.meaning().contains("85 mm, 1.33 times the cut height"))
        .noneMatch(reason -> reason.meaning().contains("any good day will do"));
  }

  @Test
  void whatIsShownAsTheLimitIsDue() {
    Situation may = Situation.of(Species.TALL_FESCUE, 76, 5, 20).dry(5, 20, 9, 21);
    Call call = may.mown(4, 76 / (1 - 0.1655)).call(); // 16.55 %, told as 17 %
    assertThat(call.mowOn()).isEqualTo(may.on());
  }

  @Test
  void theReasonToLeaveItIsTrueOfTheDayItNames() {
    Set<String> told = new TreeSet<>();
    for (int nowMm = 64; nowMm <= 72; nowMm += 2) {
      Situation august =
          Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 8, 5).mown(2, nowMm).dry(20, 30, 17, 29);
      Call call = august.facts(FRIDAYS).call();
      Reason reason = call.reasons().get(0);
      told.add(call.choice() + " " + reason.ruleId());
      if (call.choice() == Choice.LEAVE_ALONE && reason.ruleId().equals("least-growth")) {
        assertThat(Integer.parseInt(reason.headline().split(" ", -1)[0])).isLessThan(6);
      }
    }
    assertThat(told).as("%s", told).contains("LEAVE_ALONE due", "LEAVE_ALONE least-growth");
  }

  @Test
  void theLastSafeDayLiesWithinTheMowingSeason() {
    int told = 0;
    for (int day = 1; day <= 10; day++) {
      for (double heightMm : new double[] {84, 90, 96, 102, 108}) {
        Call call =
            Situation.of(Species.TALL_FESCUE, 76, 12, day)
                .mown(7, heightMm)
                .dry(3, 21, 10, 20)
                .call();
        LocalDate safe = call.particulars().lastSafeDay();
        if (safe != null) {
          told++;
          assertThat(safe).as(call.sentence()).isBeforeOrEqualTo(LocalDate.of(2015, 12, 10));
        }
      }
    }
    assertThat(told).isGreaterThan(5);
  }
}
