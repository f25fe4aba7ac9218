package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** Seasons, spin-up years and start of a programme, by the calendar. */
class ProgrammeClosedFormTest {
  private static final WeatherSeries FOUR_YEARS =
      RandomWeather.mild(5, LocalDate.of(2012, 1, 1), 1461);

  @Test
  void aSeasonOverTheNewYearIsMownOnBothSidesOfIt() {
    Programme southern =
        new Programme(
            new Programme.Mowing(
                76, 7, CalendarDay.on(MonthDay.of(9, 20)), CalendarDay.on(MonthDay.of(4, 10)), 1),
            TestLawns.quarters(20),
            1);
    LawnEquations equations =
        new LawnEquations(Parameters.of(Species.TALL_FESCUE).with(Map.of("mincut", 0.0)));
    DailyTerms terms =
        StandingLawn.terms(StandingLawn.weather(LocalDate.of(2011, 7, 1), 800, 17, 3), -36);
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 76), terms);
    TreeSet<Integer> mown = new TreeSet<>();
    run.live(
        0,
        800,
        new ProgrammeKeeper(southern, equations),
        today -> {
          if (today.flow(Flows.MOWINGS) > 0) {
            LocalDate date = terms.date(today.day());
            mown.add(100 * date.getMonthValue() + date.getDayOfMonth());
          }
        });

    assertThat(mown).isNotEmpty().allMatch(day -> day >= 920 || day <= 410);
    assertThat(mown.first()).isLessThan(110);
    assertThat(mown.last()).isGreaterThan(1220);
  }

  @Test
  void theReproductivePhaseComesHalfAYearLaterInTheSouth() {
    LawnEquations equations = new LawnEquations(Parameters.of(Species.TALL_FESCUE));
    List<Integer> northern = new ArrayList<>();
    List<Integer> southern = new ArrayList<>();
    for (int day = 1; day <= 366; day++) {
      if (equations.reproductiveFactor(day, false) == 1.25) {
        northern.add(day);
      }
      if (equations.reproductiveFactor(day, true) == 1.25) {
        southern.add(day);
      }
    }

    assertThat(northern).hasSize(61).startsWith(91).endsWith(151);
    assertThat(southern).hasSize(61).startsWith(91 + 182).endsWith(151 + 182);
  }

  @Test
  void spinUpCyclesWholeYearsWithTheirLeapDays() {
    assertThat(SpinUp.days(FOUR_YEARS, 0)).isZero();
    assertThat(SpinUp.days(FOUR_YEARS, 1)).isEqualTo(366);
    assertThat(SpinUp.days(FOUR_YEARS, 4)).isEqualTo(1461);
    assertThat(SpinUp.days(FOUR_YEARS, 6)).isEqualTo(1461 + 366 + 365);

    DailyTerms terms =
        SpinUp.terms(new SiteClimate(FOUR_YEARS, Site.at(40.78, 40)), 5, FOUR_YEARS.days());

    assertThat(terms.days()).isEqualTo(1461 + 366 + 1461);
    assertThat(terms.date(0)).isEqualTo("2012-01-01");
    assertThat(terms.date(1461)).isEqualTo("2012-01-01");
    assertThat(terms.date(1461 + 59)).isEqualTo("2012-02-29");
    assertThat(terms.date(1461 + 365)).isEqualTo("2012-12-31");
    assertThat(terms.date(1461 + 366)).isEqualTo("2012-01-01");
    assertThat(terms.rainMm(1461 + 100)).isEqualTo(terms.rainMm(100));
  }

  @Test
  void aPartialLastYearIsNotCycledAndAShorterRecordNotAtAll() {
    WeatherSeries yearAndAHalf = StandingLawn.weather(LocalDate.of(2013, 4, 1), 550, 15, 2);
    assertThat(SpinUp.days(yearAndAHalf, 3)).isEqualTo(3 * 365);

    WeatherSeries halfAYear = StandingLawn.weather(LocalDate.of(2013, 4, 1), 180, 15, 2);
    assertThat(SpinUp.days(halfAYear, 0)).isZero();
    assertThatThrownBy(() -> SpinUp.days(halfAYear, 1))
        .hasMessageContaining("2013-04-01")
        .hasMessageContaining("spinUpYears");
  }

  @Test
  void soilTemperatureGoesOnFromOneCycledYearToTheNext() {
    DailyTerms terms = SpinUp.terms(new SiteClimate(FOUR_YEARS, Site.at(40.78, 40)), 4, 1);

    assertThat(terms.soilC(0)).isEqualTo(terms.meanC(0));
    assertThat(terms.soilC(1461))
        .isCloseTo(0.8 * terms.soilC(1460) + 0.2 * terms.meanC(0), within(1e-12));
  }

  @Test
  void aRunBeginsWithTheMiddlingLawn() {
    LawnEquations equations = new LawnEquations(Parameters.of(Species.KENTUCKY_BLUEGRASS));
    LawnState start = LawnModel.startState(equations, 64);

    double leafEquivalentG = 5 + 0.5 * 250 + 0.35 * 350;
    double soilG = 1000 * 10 * 15 * 1.33;
    assertThat(start.store(Stores.LEAF_C)).isCloseTo(0.42 * 5, within(1e-12));
    assertThat(start.store(Stores.PLANT_N)).isCloseTo(0.034 * leafEquivalentG, within(1e-12));
    assertThat(start.store(Stores.PLANT_P))
        .isCloseTo(0.125 * start.store(Stores.PLANT_N), within(1e-12));
    assertThat(start.store(Stores.PLANT_K))
        .isCloseTo(0.5 * start.store(Stores.PLANT_N), within(1e-12));
    assertThat(start.store(Stores.FRESH_N)).isCloseTo(0.012 * 120, within(1e-12));
    assertThat(start.store(Stores.THATCH_C)).isCloseTo(0.42 * 700, within(1e-12));
    assertThat(start.store(Stores.HUMUS_C)).isCloseTo(0.05 * soilG * 0.58, within(1e-9));
    assertThat(start.store(Stores.HUMUS_N)).isCloseTo(0.05 * 0.05 * soilG, within(1e-9));
    assertThat(start.store(Stores.HUMUS_P)).isCloseTo(0.12 * 0.0025 * soilG, within(1e-9));
    assertThat(start.store(Stores.MICROBE_N)).isCloseTo(25.0 / 8, within(1e-12));
    assertThat(start.store(Stores.AMMONIUM_N)).isEqualTo(0.3);
    assertThat(start.store(Stores.DEPLETION_MM)).isZero();
    assertThat(start.store(Stores.CUT_HEIGHT_MM)).isEqualTo(64);
    assertThat(equations.soilPhosphorusPpm(start.stores())).isCloseTo(45, within(1e-9));
    assertThat(equations.soilPotassiumPpm(start.stores())).isCloseTo(120, within(1e-9));
  }

  @Test
  void theNumberOfThreadsDoesNotChangeTheResult() {
    DailyTerms terms =
        SpinUp.terms(new SiteClimate(FOUR_YEARS, Site.at(40.78, 40)), 1, FOUR_YEARS.days());
    List<Lawn> lawns = new ArrayList<>();
    for (int number = 0; number < 24; number++) {
      Species grass = Species.values()[number % 4];
      lawns.add(TestLawns.weekly(grass, 40 + number, 2 * number, number % 3 / 2.0));
    }

    List<SeasonAccount> one = LawnModel.runAll(lawns, terms, 366, 1);
    List<SeasonAccount> two = LawnModel.runAll(lawns, terms, 366, 2);

    for (int number = 0; number < lawns.size(); number++) {
      assertThat(two.get(number).years()).isEqualTo(one.get(number).years());
      assertThat(two.get(number).end().stores()).containsExactly(one.get(number).end().stores());
    }
    assertThat(one.get(1).years()).isNotEqualTo(one.get(5).years());
  }

  @Test
  void aProgrammesAccountIsTheSameByEitherWayIn() {
    Lawn lawn = TestLawns.weekly(Species.TALL_FESCUE, 76, 14.7, 1);
    DailyTerms terms = SpinUp.terms(new SiteClimate(FOUR_YEARS, lawn.site()), 4, FOUR_YEARS.days());

    assertThat(LawnModel.runAll(List.of(lawn), terms, 1461, 2).get(0).years())
        .isEqualTo(LawnModel.run(lawn, FOUR_YEARS).years());
  }
}
