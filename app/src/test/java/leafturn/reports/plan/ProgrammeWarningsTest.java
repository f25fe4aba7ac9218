package leafturn.reports.plan;

import static leafturn.reports.plan.SamplePlan.USUAL;
import static leafturn.reports.plan.SamplePlan.plan;
import static leafturn.reports.plan.SamplePlan.result;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.util.List;
import java.util.Map;
import leafturn.advice.call.DeckHeights;
import leafturn.advice.season.PlannedProgramme.Origin;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.model.lawn.CutHeights;
import leafturn.quantity.Units;
import leafturn.reports.UnitWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said against programmes: each warning just on and just beyond its limit. */
class ProgrammeWarningsTest {
  private static final UnitWords METRIC = new UnitWords(Units.METRIC);
  private static final UnitWords US = new UnitWords(Units.US);

  private static List<String> own(UnitWords units, CutHeights heights, double mowings) {
    return ProgrammeWarnings.of(
        plan(result(Origin.PRESENT, "", USUAL, 30), result(Origin.GIVEN, "Mine", heights, mowings)),
        units);
  }

  @Test
  void nothingIsSaidAgainstASensibleProgramme() {
    assertThat(own(METRIC, USUAL, 28)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "3.5, 3.5 times a year",
    "3, 3 times a year",
    "1.5, 1.5 times a year",
    "1, once a year",
    "0, not once in a usual year"
  })
  void fewerMowingsThanALawnNeedsAreTold(double mowings, String told) {
    assertThat(own(METRIC, USUAL, mowings))
        .containsExactly(
            "“Mine” hardly mows (%s): fewer than 4 mowings a year keep a meadow and no lawn."
                .formatted(told));
  }

  @Test
  void asManyMowingsAsALawnNeedsAreNotTold() {
    assertThat(own(METRIC, USUAL, ProgrammeOutcome.FEWEST_MOWINGS)).isEmpty();
  }

  @Test
  void aHeightAboveDecksIsToldAndTheirHighestIsNot() {
    assertThat(own(METRIC, CutHeights.always(DeckHeights.HIGHEST_MM), 28)).isEmpty();
    assertThat(own(METRIC, CutHeights.always(DeckHeights.HIGHEST_MM + 1), 28))
        .containsExactly(
            "“Mine” cuts at 116\u202fmm: walk-behind and ride-on decks end at about 115\u202fmm (common practice, from memory); check that the mower can.");
    assertThat(own(US, CutHeights.always(DeckHeights.HIGHEST_MM + 3), 28))
        .singleElement()
        .asString()
        .contains("cuts at 4.6\u202fin", "about 4.5\u202fin");
  }

  @Test
  void aHeightThatReadsLikeThatOfDecksIsNotSetAgainstIt() {
    assertThat(own(METRIC, CutHeights.always(DeckHeights.HIGHEST_MM + 0.4), 28)).isEmpty();
    assertThat(own(US, CutHeights.always(DeckHeights.HIGHEST_MM + 0.5), 28)).isEmpty();
  }

  @Test
  void theHighestMonthCountsIfItIsMownInIt() {
    assertThat(own(METRIC, new CutHeights(90, Map.of(Month.JULY, 130.0)), 28))
        .singleElement()
        .asString()
        .contains("cuts at 130\u202fmm");
    assertThat(own(METRIC, new CutHeights(90, Map.of(Month.NOVEMBER, 130.0)), 28)).hasSize(1);
    assertThat(own(METRIC, new CutHeights(90, Map.of(Month.DECEMBER, 130.0)), 28)).isEmpty();
  }

  @Test
  void aDropOfMoreThanAThirdFromMonthToMonthIsTold() {
    assertThat(own(METRIC, new CutHeights(76, Map.of(Month.JUNE, 110.0)), 28)).isEmpty();
    assertThat(own(METRIC, new CutHeights(76, Map.of(Month.JUNE, 110.0, Month.JULY, 60.0)), 28))
        .containsExactly(
            "“Mine” goes down from 110\u202fmm in June to 60\u202fmm in July: lowering by more than a third at once scalps the turf; go down in steps some days apart (common practice, no source).");
    assertThat(own(METRIC, new CutHeights(76, Map.of(Month.DECEMBER, 20.0)), 28)).isEmpty();
  }

  @Test
  void aHeightBelowThatOfHomeLawnsOfTheGrassIsTold() {
    assertThat(own(METRIC, CutHeights.always(50), 28)).isEmpty();
    assertThat(own(METRIC, CutHeights.always(45), 28))
        .containsExactly(
            "“Mine” cuts at 45\u202fmm: home lawns of tall fescue are kept at 50\u202fmm or more (extension services); lower, the turf thins and weeds come in, which the model does not reckon with.");
    assertThat(own(US, CutHeights.always(49.8), 28)).isEmpty();
  }

  @Test
  void theProgrammeOfNowIsToldAndThoseOfTheSearchAreNot() {
    CutHeights high = CutHeights.always(150);
    assertThat(ProgrammeWarnings.of(plan(result(Origin.PRESENT, "", high, 2)), METRIC))
        .hasSize(2)
        .allSatisfy(warning -> assertThat(warning).startsWith("As now "));
    assertThat(
            ProgrammeWarnings.of(
                plan(result(Origin.PRESENT, "", USUAL, 30), result(Origin.SEARCH, "", high, 2)),
                METRIC))
        .isEmpty();
  }
}
