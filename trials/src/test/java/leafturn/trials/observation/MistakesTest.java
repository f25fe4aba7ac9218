package leafturn.trials.observation;

import static leafturn.trials.observation.ObservedYards.MAY;
import static leafturn.trials.observation.ObservedYards.half;
import static leafturn.trials.observation.ObservedYards.rating;
import static leafturn.trials.observation.ObservedYards.sentences;
import static leafturn.trials.observation.ObservedYards.yards;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.paired.PairedDifference;
import leafturn.trials.design.Protocol;
import leafturn.trials.observation.Remark.Weight;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The mistakes of field trials on lawns, a test for each, named after the mistake. */
class MistakesTest {
  @Test
  void coresDatesOrRatersUsedAsReplicates() {
    ExperimentalUnits one = ExperimentalUnits.of(yards(1));
    assertThat(one.judgesTreatments()).isFalse();
    assertThat(sentences(one.remarks(360), Weight.REFUSED).get(0))
        .contains("0 degrees of freedom", "360 readings", "no p value", "difference between");
    ExperimentalUnits four = ExperimentalUnits.of(yards(4));
    assertThat(four.treatmentErrorDf()).isEqualTo(3);
    assertThat(sentences(four.remarks(48), Weight.WARNING).get(0)).contains("4 units", "below 5");
    ExperimentalUnits ten = ExperimentalUnits.of(yards(10));
    assertThat(ten.treatmentErrorDf()).isEqualTo(9);
    assertThat(sentences(ten.remarks(120), Weight.WARNING)).isEmpty();
    assertThat(sentences(ten.remarks(120), Weight.NOTE).get(0)).contains("9 degrees", "12 or more");
    assertThat(ExperimentalUnits.of(yards(13)).remarks(26)).isEmpty();
  }

  @Test
  void squaresAndLostPlotsHaveTheDegreesOfFreedomOfTheirLayout() {
    List<ObservedPlot> square = new ArrayList<>();
    for (int row = 0; row < 4; row++) {
      for (int column = 0; column < 4; column++) {
        square.add(
            ObservedPlot.of(
                "R%d-%d".formatted(row, column), "row " + row, "arm " + (row + column) % 4));
      }
    }
    assertThat(ExperimentalUnits.ofSquare(square, 4).treatmentErrorDf()).isEqualTo(3 * 2);
    assertThat(ExperimentalUnits.of(square).treatmentErrorDf()).isEqualTo(3 * 3);
    assertThat(ExperimentalUnits.of(square.subList(1, 16)).treatmentErrorDf()).isEqualTo(8);
  }

  @Test
  void treatmentConfoundedWithSideSlopeMowerOperatorLaboratoryOrDate() {
    List<ObservedPlot> always = new ArrayList<>();
    for (int yard = 1; yard <= 6; yard++) {
      always.add(half(yard, 1, "collected", "west"));
      always.add(half(yard, 2, "returned", "east"));
    }
    assertThat(sentences(new Confounding(always).remarks(List.of()), Weight.REFUSED).get(0))
        .contains("side", "collected with west", "returned with east");
    assertThat(new Confounding(yards(6)).remarks(List.of())).isEmpty();
    List<Reading> byRater =
        yards(4).stream()
            .map(
                plot ->
                    Reading.own(
                        plot.code(),
                        MAY,
                        "quality",
                        "6",
                        plot.arm().equals("returned") ? "Ada" : "Bo"))
            .toList();
    assertThat(sentences(new Confounding(yards(4)).remarks(byRater), Weight.REFUSED).get(0))
        .contains("rater", "always go together");
    List<Reading> onOneDay = new ArrayList<>(byRater);
    yards(4).stream()
        .filter(plot -> plot.arm().equals("returned"))
        .forEach(plot -> onOneDay.add(rating(plot.code(), MAY.plusDays(7), "6")));
    assertThat(sentences(new Confounding(yards(4)).remarks(onOneDay), Weight.WARNING))
        .anySatisfy(each -> assertThat(each).contains("collected never goes with date 2026-05-11"));
  }

  @Test
  void halvesNotRandomisedOrLayoutChangedLater() {
    assertThat(new RecordedLayout(7L, "a", "a", "l", "l").remarks()).isEmpty();
    assertThat(sentences(new RecordedLayout(null, "a", "a", null, null).remarks(), Weight.WARNING))
        .allSatisfy(each -> assertThat(each).contains("No seed"));
    assertThat(sentences(new RecordedLayout(7L, null, "a", null, null).remarks(), Weight.REFUSED))
        .allSatisfy(each -> assertThat(each).contains("never frozen"));
    assertThat(sentences(new RecordedLayout(7L, "a", "b", "l", "l").remarks(), Weight.WARNING))
        .allSatisfy(each -> assertThat(each).contains("changed after it was frozen"));
    assertThat(sentences(new RecordedLayout(7L, "a", "a", "l", "m").remarks(), Weight.REFUSED))
        .allSatisfy(each -> assertThat(each).contains("not the one that was drawn"));
  }

  @Test
  void dateAsRandomOrAsAnOrdinarySplitPlotFactor() {
    Models random =
        Models.of("quality").factors("practice", "date").fixed("practice").random("date");
    assertThat(sentences(DateRole.remarks(random.model(), "date"), Weight.WARNING))
        .allSatisfy(each -> assertThat(each).contains("drawn at random"))
        .hasSize(1);
    Models plain =
        Models.of("quality").factors("practice", "date").fixed("practice", "date", "practice*date");
    assertThat(sentences(DateRole.remarks(plain.model(), "date"), Weight.WARNING).get(0))
        .contains("never given out by chance", "overTime");
    TrialTable table =
        new TrialTable(
            List.of("quality", "practice", "date"),
            List.of(
                List.of("6", "returned", "2026-05-04"), List.of("5", "collected", "2026-06-04")),
            List.of(2, 3));
    assertThat(DateRole.remarks(table, random.model()))
        .isEqualTo(DateRole.remarks(random.model(), "date"));
  }

  private static Reading potassium(@Nullable String sample) {
    return MeasuredReading.of("B1-1", MAY, "soil_potassium", "120", "ppm").sample(sample).reading();
  }

  @Test
  void aValueWithoutCodeBesideOneOfTheSamePlotIsTold() {
    assertThat(ReadingKeys.remarks(List.of(potassium("ABCDEF2"), potassium("ABCDEG3")))).isEmpty();
    assertThat(
            sentences(
                ReadingKeys.remarks(List.of(potassium("ABCDEF2"), potassium(null))),
                Weight.WARNING))
        .singleElement()
        .asString()
        .contains("both with the code of a bag (1) and without one (1)");
  }

  @Test
  void missingPlotsOrUnequalAreas() {
    List<Reading> most = new ArrayList<>();
    for (ObservedPlot plot : yards(3)) {
      most.add(rating(plot.code(), MAY, "6"));
      if (!plot.code().equals("B2-1")) {
        most.add(rating(plot.code(), MAY.plusDays(7), "6"));
      }
    }
    assertThat(sentences(Completeness.missing(yards(3), most), Weight.NOTE).get(0))
        .contains("quality: 1 of 12", "B2-1 on 2026-05-11", "never filled in");
    List<ObservedPlot> unequal =
        List.of(
            new ObservedPlot("B1-1", "yard 1", "returned", 100, Map.of()),
            new ObservedPlot("B1-2", "yard 1", "collected", 130, Map.of()));
    assertThat(sentences(Completeness.areas(unequal, "kg"), Weight.REFUSED).get(0))
        .contains("100 to 130 m²", "g/m2");
    assertThat(Completeness.areas(unequal, "g/m2")).isEmpty();
  }

  @Test
  void anUndecidedResultReportedAsNoDifference() {
    PairedDifference shoes =
        PairedDifference.of(new double[] {0.8, -0.3, 0.2, -0.6, 0.9, -0.4, 0.5, 0.1});
    PairedDifference.Verdict verdict = shoes.verdict(0.05, 0.2);
    assertThat(verdict).isEqualTo(PairedDifference.Verdict.UNDECIDED);
    assertThat(verdict.words()).isEqualTo("undecided");
  }

  @Test
  void stoppingEarlyPickingTheBestDateOrManyOutcomes() {
    List<LocalDate> planned = List.of(MAY, MAY.plusDays(14), MAY.plusDays(28));
    assertThat(
            sentences(
                    new Looks(planned, null, 1, 1).remarks(planned.subList(0, 2), false),
                    Weight.REFUSED)
                .get(0))
        .contains("under way", "no test");
    assertThat(
            sentences(
                    new Looks(planned, MAY.plusDays(15), 1, 1).remarks(planned.subList(0, 2), true),
                    Weight.WARNING)
                .get(0))
        .contains("before its last planned day", "finds too much");
    List<Remark> more =
        new Looks(planned, MAY.plusDays(30), 6, 1).remarks(List.of(MAY, MAY.plusDays(9)), true);
    assertThat(sentences(more, Weight.WARNING).get(0))
        .contains("2026-05-13", "not on the best day");
    assertThat(sentences(more, Weight.NOTE).get(0))
        .contains("5 outcomes", "exploratory", "adjusted");
    assertThat(new Looks(planned, MAY.plusDays(30), 1, 1).remarks(planned, true)).isEmpty();
    assertThat(new Looks(planned, null, 1, 1).remarks(planned.subList(0, 2), true))
        .as("once findings test, no check says that nothing is tested")
        .isEmpty();
  }

  /** That the power page and command refuse it is TrialSizeCommandTest's. */
  @Test
  void powerAfterwardsFromTheObservedEffect() {
    assertThat(PowerFromResults.isAskedBy("what we found")).isTrue();
    assertThat(PowerFromResults.isAskedBy("0.5")).isFalse();
    assertThat(sentences(List.of(PowerFromResults.refusal()), Weight.REFUSED).get(0))
        .contains("only says its p value again", "minimum detectable difference");
  }

  @Test
  void singularFitIgnored() {
    TrialAnalysis analysis =
        TrialAnalysis.of(
            new ReferenceCase("dyestuff2").table(),
            Models.of("Yield").factors("Batch").random("Batch").model());
    assertThat(analysis.fit().boundary()).isNotEmpty();
    assertThat(analysis.warnings())
        .anySatisfy(each -> assertThat(each).contains("Held at the boundary"));
  }

  @Test
  void testsWithEmptyCellsOrAliasedTerms() {
    String csv = "arm,feed,y\na,low,1\na,low,1.2\na,high,2\na,high,2.3\nb,low,1.5\nb,low,1.1\n";
    TrialAnalysis analysis =
        TrialAnalysis.of(
            ReferenceCase.table(csv),
            Models.of("y").factors("arm", "feed").fixed("arm", "feed", "arm*feed").model());
    assertThat(analysis.warnings())
        .anySatisfy(each -> assertThat(each).contains("arm*feed", "not estimable"));
  }

  @Test
  void clippingsDriftOrTheCollectedHalfMownLaterOrShorter() {
    Protocol asked = new Protocol(null, 70.0, true, true, true, true, Protocol.Feed.EQUAL);
    MowingRecord wrong = new MowingRecord(MAY, List.of(), false, false, false, 70.0, 55.0);
    List<String> warnings = sentences(MowingRecord.remarks(asked, List.of(wrong)), Weight.WARNING);
    assertThatList(warnings)
        .anySatisfy(each -> assertThat(each).contains("different days", "longer grass"))
        .anySatisfy(each -> assertThat(each).contains("not mown first", "carried into"))
        .anySatisfy(each -> assertThat(each).contains("deck was not cleaned", "drift"))
        .anySatisfy(each -> assertThat(each).contains("70 mm (returned) and 55 mm (collected)"));
    MowingRecord right = new MowingRecord(MAY, List.of(), true, true, true, 70.0, 70.0);
    assertThat(MowingRecord.remarks(asked, List.of(right))).isEmpty();
  }

  private static MowingRecord mown(LocalDate day, String... plots) {
    return new MowingRecord(day, List.of(plots), null, null, null, null, null);
  }

  @Test
  void oneHalfMownWithoutTheOther() {
    List<MowingRecord> one = List.of(mown(MAY, "B1-1"), mown(MAY.plusDays(7)));
    assertThatList(sentences(MowingRecord.onOnePartOnly(one, yards(2)), Weight.WARNING))
        .satisfiesExactly(
            each -> assertThat(each).contains("On 2026-05-04", "yard 1: B1-1 mown, B1-2 not"));
    List<MowingRecord> both = List.of(mown(MAY, "B1-1"), mown(MAY, "B1-2"), mown(MAY.plusDays(7)));
    assertThat(MowingRecord.onOnePartOnly(both, yards(2))).isEmpty();
    List<MowingRecord> yard = List.of(mown(MAY, "B1-1", "B1-2"));
    assertThat(MowingRecord.onOnePartOnly(yard, yards(2))).isEmpty();
  }

  @Test
  void irrigationDogUrineOrSpreaderOverlapOnOneHalf() {
    Mishap open = new Mishap(MAY, "dog urine", List.of("B1-1"), 0.4, null);
    assertThat(sentences(Mishap.remarks(List.of(open), yards(2)), Weight.WARNING).get(0))
        .contains("dog urine on 2026-05-04", "B1-1", "0.4 m²", "nobody has decided");
    Mishap seen =
        new Mishap(MAY, "spreader overlap", List.of("B1-1"), 4.0, new Mishap.Decision(true, false));
    assertThat(sentences(Mishap.remarks(List.of(seen), yards(2)), Weight.WARNING).get(0))
        .contains("results in sight", "with and without");
    Mishap doubted =
        new Mishap(
            MAY,
            "dog urine",
            List.of("B1-1"),
            null,
            new Mishap.Decision(true, true, "2 of its readings stood in the book", false));
    assertThat(sentences(Mishap.remarks(List.of(doubted), yards(2)), Weight.WARNING).get(0))
        .contains("told to be decided blind, but 2 of its readings stood in the book");
    assertThat(seen.leavesOut("B1-1", MAY)).isTrue();
    assertThat(seen.leavesOut("B1-1", MAY.minusDays(1))).isFalse();
    assertThat(seen.leavesOut("B1-2", MAY)).isFalse();
    Mishap kept =
        new Mishap(
            MAY, "irrigation fault", List.of("B1-1"), null, new Mishap.Decision(false, true));
    assertThat(sentences(Mishap.remarks(List.of(kept), yards(2)), Weight.WARNING).get(0))
        .contains("only plots of one treatment");
  }
}
