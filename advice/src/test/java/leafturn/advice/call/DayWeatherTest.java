package leafturn.advice.call;

import static leafturn.advice.call.Situation.reason;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogEntry;
import org.junit.jupiter.api.Test;

/** A day that more than half of the possible seasons rule out is told as that, not as a fact. */
class DayWeatherTest {
  private static Situation july() {
    return Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 15).mown(6, 86).dry(8, -1, 14, 24);
  }

  @Test
  void heatToComeIsToldWithItsShareOfTheSeasons() {
    Situation july = july().rule("heat", 28);
    Call call = july.facts(Circumstances.NONE.withVisits(Visits.on(july.on().plusDays(4)))).call();

    assertThat(call.sentence())
        .startsWith(
            "Do not mow: in more than half of the possible seasons it is too hot in the days ahead");
    assertThat(reason(call, "heat").meaning())
        .contains("to grow on Sunday")
        .containsPattern("That is so in [56]\\d % of the possible seasons");
    assertThat(call.options())
        .filteredOn(option -> option.title().startsWith("Sunday"))
        .isNotEmpty()
        .allMatch(option -> option.remark().equals("likely too hot"));
  }

  @Test
  void afterAChosenDayTheNextLookCountsFromThatDay() {
    Situation july = july().rule("heat", 28);
    Visits chosen = Visits.ANY_DAY.firstOn(july.on().plusDays(4));
    assertThat(july.facts(Circumstances.NONE.withVisits(chosen)).call().sentence())
        .startsWith("Do not mow: ")
        .endsWith("look again about 26 July.");
  }

  @Test
  void heatOfAMeasuredDayIsAFact() {
    Situation hot = july().coldToday(18, 37);
    Call call = hot.facts(Circumstances.NONE.withVisits(Visits.on(hot.on()))).call();

    assertThat(call.sentence()).startsWith("Do not mow: it is too hot today; ");
    assertThat(reason(call, "heat").meaning()).doesNotContain("possible seasons");
    assertThat(call.options())
        .filteredOn(option -> option.title().startsWith("Today"))
        .isNotEmpty()
        .allMatch(option -> option.remark().equals("too hot"));
  }

  @Test
  void groundAndFrostToComeAreToldWithTheirShareOfTheSeasons() {
    Situation wet =
        Situation.of(Species.PERENNIAL_RYEGRASS, 40, 3, 14).mown(12, 60).rule("soft-ground", 15);
    Call soft = wet.facts(Circumstances.NONE.withVisits(Visits.on(wet.on().plusDays(3)))).call();
    Situation cold =
        Situation.of(Species.PERENNIAL_RYEGRASS, 40, 3, 14).mown(12, 60).dry(8, 14, -6, 1);
    Call frost = cold.facts(Circumstances.NONE.withVisits(Visits.on(cold.on().plusDays(2)))).call();

    assertThat(soft.sentence())
        .contains("in more than half of the possible seasons the ground is too wet");
    assertThat(reason(soft, "soft-ground").meaning())
        .containsPattern("That is so in (all|[5-9]\\d % of the) possible seasons");
    assertThat(frost.sentence())
        .contains("in more than half of the possible seasons frost does not leave");
    assertThat(reason(frost, "frost").meaning())
        .containsPattern("That is so in (all|[5-9]\\d % of the) possible seasons");
  }

  @Test
  void safeDaysThatMostSeasonsRuleOutAreNotToldAsFacts() {
    Situation july =
        Situation.of(Species.KENTUCKY_BLUEGRASS, 64, 7, 15)
            .mown(6, 93)
            .dry(8, -1, 14, 24)
            .rule("heat", 28.5);
    Visits twice = Visits.on(july.on().plusDays(2), july.on().plusDays(5));

    assertThat(july.facts(Circumstances.NONE.withVisits(twice)).call().particulars().noSafeDay())
        .contains(
            "nobody can come today and tomorrow, likely too hot Friday (in more than half of the possible seasons); ");
  }

  @Test
  void loadsOfTwoWeightsAreOneReason() {
    Situation tall =
        Situation.of(Species.TALL_FESCUE, 51, 5, 28)
            .mown(8, 138)
            .logged(new LogEntry.Fed(LocalDate.of(2015, 5, 10), 9, 0, 0, 0))
            .dry(3, 14, 12, 24);
    for (int days = 0; days <= 8; days++) {
      Call call =
          tall.facts(Circumstances.NONE.withVisits(Visits.on(tall.on().plusDays(days)))).call();
      assertThat(call.reasons())
          .filteredOn(reason -> reason.headline().startsWith("Clump index"))
          .hasSizeLessThan(2);
    }
  }
}
