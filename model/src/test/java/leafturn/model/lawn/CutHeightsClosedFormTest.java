package leafturn.model.lawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.model.Flows;
import leafturn.model.Parameters;
import leafturn.model.Stores;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Programme.Mowing;
import org.junit.jupiter.api.Test;

/** A programme may cut higher in some months: the grass keeps its height when the deck is set. */
final class CutHeightsClosedFormTest {
  private static final CutHeights HIGH_IN_SUMMER =
      new CutHeights(64, Map.of(Month.JUNE, 90.0, Month.JULY, 90.0, Month.AUGUST, 90.0));

  private final LawnEquations equations = new LawnEquations(Parameters.of(Species.TALL_FESCUE));
  private final DailyTerms terms =
      StandingLawn.terms(RandomWeather.mild(5, LocalDate.of(2012, 1, 1), 1461), 40.78);
  private final List<String> wrong = new ArrayList<>();
  private double eveningMm;
  private int mown;

  @Test
  void theGrassKeepsItsHeightWhenTheDeckIsSetAndIsMownAtTheMonthsHeight() {
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 64), terms);
    Programme programme = programme(HIGH_IN_SUMMER, ReturnPractice.always(1));
    ProgrammeKeeper keeper = new ProgrammeKeeper(programme, equations);
    eveningMm = run.heightMm();

    run.live(0, terms.days(), watched(keeper), this::mownAtTheMonthsHeight);

    assertThat(wrong).isEmpty();
    assertThat(mown).isGreaterThan(40);
  }

  private Keeper watched(ProgrammeKeeper keeper) {
    return new Keeper() {
      @Override
      public void morning(LawnRun run) {
        keeper.morning(run);
        if (Math.abs(run.heightMm() - eveningMm) > 1e-9) {
          wrong.add(terms.date(run.day()) + " the height jumps");
        }
      }

      @Override
      public void evening(LawnRun run) {
        keeper.evening(run);
      }
    };
  }

  private void mownAtTheMonthsHeight(LawnRun run) {
    eveningMm = run.heightMm();
    LocalDate today = terms.date(run.day());
    double wantedMm = HIGH_IN_SUMMER.on(today);
    if (run.flow(Flows.MOWINGS) > 0) {
      mown++;
      if (Math.abs(run.heightMm() - wantedMm) > 1e-9
          || run.flow(Flows.HEIGHT_BEFORE_MM) < 1.5 * wantedMm) {
        wrong.add(today + " is mown to " + run.heightMm());
      }
    }
    if (run.store(Stores.CUT_HEIGHT_MM) > wantedMm) {
      wrong.add(today + " keeps a cut height above its month's");
    }
  }

  @Test
  void oneHeightForAllMonthsIsNoOtherProgramme() {
    CutHeights same = new CutHeights(76, Map.of(Month.JULY, 76.0));
    Programme named = programme(same, ReturnPractice.always(0.5));
    Programme plain =
        new Programme(
            new Mowing(76, 0, CalendarDay.ofYear(75), CalendarDay.ofYear(345), 0.5),
            TestLawns.quarters(14.7),
            0);

    assertThat(end(named)).isEqualTo(end(plain));
  }

  private double[] end(Programme programme) {
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 76), terms);
    run.live(0, 800, new ProgrammeKeeper(programme, equations), DayListener.NONE);
    return run.state().stores();
  }

  @Test
  void aProgrammeThatTakesOverRaisesTheDeckAsTheGrassGrows() {
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 40), terms);
    Programme programme = programme(CutHeights.always(76), ReturnPractice.always(1));
    ProgrammeKeeper keeper =
        new ProgrammeKeeper(
            programme, equations, (lawn, toMm) -> 1, true, ProgrammeKeeper.ONE_THIRD);
    eveningMm = run.heightMm();

    run.live(0, terms.days(), watched(keeper), lawn -> eveningMm = lawn.heightMm());

    assertThat(wrong).isEmpty();
    assertThat(run.store(Stores.CUT_HEIGHT_MM)).isCloseTo(76, within(1e-9));
  }

  @Test
  void aRuleDecidesAtEachMowing() {
    LawnRun run = new LawnRun(equations, LawnModel.startState(equations, 76), terms);
    Programme programme = programme(CutHeights.always(76), ReturnPractice.byTheRules());
    ReturnRule everySecond = (lawn, toMm) -> lawn.total(Flows.MOWINGS) % 2;

    run.live(
        0,
        terms.days(),
        new ProgrammeKeeper(programme, equations, everySecond, false, ProgrammeKeeper.ONE_THIRD),
        DayListener.NONE);

    assertThat(run.total(Flows.RETURNED_G) / run.total(Flows.CLIPPINGS_G))
        .isCloseTo(0.5, within(0.05));
  }

  @Test
  void wrongHeightsAndSharesAreRefused() {
    assertThatThrownBy(() -> new CutHeights(76, Map.of(Month.MAY, 2.0)))
        .hasMessageContaining("mowing.heightMmByMonth")
        .hasMessageContaining("3 to 200");
    assertThatThrownBy(() -> ReturnPractice.always(1.5)).hasMessageContaining("from 0 to 1");
  }

  private static Programme programme(CutHeights heights, ReturnPractice practice) {
    return new Programme(
        new Mowing(heights, 0, CalendarDay.ofYear(75), CalendarDay.ofYear(345), practice),
        TestLawns.quarters(14.7),
        0);
  }
}
