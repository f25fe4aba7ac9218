package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleBiFunction;
import leafturn.reports.JsonReport;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.PlotReading;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.findings.TrialFacts.Randomisation;
import org.junit.jupiter.api.Test;

/**
 * What is said where data are at an edge: a sentence each time, and never a number that is none.
 */
class FindingsEdgesTest {
  private static final Outcome QUALITY =
      new Outcome(
          "quality",
          Outcome.Kind.MEASUREMENT,
          "",
          null,
          null,
          Outcome.Scale.IDENTITY,
          Outcome.Summary.SEASON_MEAN,
          0.5,
          true);
  private static final Contrast MAIN = new Contrast("returned", "collected");
  private static final List<String> TWO = List.of("collected", "returned");

  /**
   * @param values of a plot on a date, from 0; NaN where it was not read
   */
  private static Findings findings(
      int yards,
      List<String> arms,
      List<Contrast> contrasts,
      ToDoubleBiFunction<Plot, Integer> values) {
    return findings(yards, arms, contrasts, values, Randomisation.free(1L));
  }

  private static Findings findings(
      int yards,
      List<String> arms,
      List<Contrast> contrasts,
      ToDoubleBiFunction<Plot, Integer> values,
      Randomisation randomisation) {
    List<Plot> plots = new ArrayList<>();
    List<PlotReading> readings = new ArrayList<>();
    for (int yard = 1; yard <= yards; yard++) {
      for (String arm : arms) {
        Plot plot = Plot.of(yard + arm, "yard " + yard, arm);
        plots.add(plot);
        for (int date = 0; date < 3; date++) {
          double value = values.applyAsDouble(plot, date);
          if (!Double.isNaN(value)) {
            readings.add(
                new PlotReading(
                    plot.code(), "2026-0%d-15".formatted(5 + date), date, value, false));
          }
        }
      }
    }
    TrialFacts facts =
        new TrialFacts(
            "Linden Street",
            "",
            Design.UNITS,
            "practice",
            "yard",
            contrasts,
            yards,
            yards,
            true,
            Double.NaN,
            randomisation,
            PlanRecord.NONE);
    return Findings.of(facts, plots, List.of(QUALITY), Map.of("quality", readings));
  }

  /** The document without its marks, which never has a number that is none. */
  private static String words(Findings findings) {
    String words =
        new FindingsDocument(findings, null, List.of())
            .paper()
            .html()
            .replaceAll("(?s)<style>.*?</style>", "")
            .replaceAll("<[^>]+>", " ")
            .replaceAll("\\s+", " ");
    assertThat(words).doesNotContainPattern("\\b(NaN|Infinity|null)\\b");
    assertThat(JsonReport.of(FindingsReport.of(findings, List.of(), "leafturn")))
        .doesNotContain("NaN", "Infinity");
    return words;
  }

  private static ToDoubleBiFunction<Plot, Integer> noisy(double effect) {
    Random random = new Random(20260401);
    return (plot, date) ->
        6 + (plot.arm().equals("returned") ? effect : 0) + 0.3 * random.nextGaussian();
  }

  /** Of 64 layouts four are as far apart as what was drawn: p is 0.0625, by the t test less. */
  @Test
  void theTableTellsWhatTheHeadlineTells() {
    var noise = noisy(0);
    Findings found =
        findings(
            6,
            TWO,
            List.of(MAIN),
            (plot, date) -> {
              double effect = plot.unit().equals("yard 6") ? -0.1 : 1;
              double own = plot.arm().equals("returned") ? effect : 0;
              return 6 + own + 0.001 * noise.applyAsDouble(plot, date);
            });
    String unconfirmed =
        "differs, but the exact test by the layouts does not confirm it (p = 0.0625)";
    assertThat(words(found))
        .contains("Verdict " + unconfirmed, "p, exact test by the layouts 0.0625");
  }

  @Test
  void anArmThatWasNotReadOnADateLeavesTermsOutAndNoDashesBetween() {
    var noise = noisy(1);
    Findings found =
        findings(
            8,
            TWO,
            List.of(MAIN),
            (plot, date) ->
                date == 2 && plot.arm().equals("returned")
                    ? Double.NaN
                    : noise.applyAsDouble(plot, date));
    assertThat(words(found))
        .contains("not estimable")
        .doesNotContain("NaN and", "– to –", "like the 0 ", "– and –");
  }

  @Test
  void whereTheExactTestCannotShowADifferenceNoneIsClaimed() {
    Findings few = findings(5, TWO, List.of(MAIN), noisy(3));
    assertThat(new FindingsView(few).headline())
        .startsWith("Undecided: quality of 'returned' is")
        .contains("the t test alone shows a difference", "with 5 yards the exact test")
        .containsPattern("cannot go below p = 0\\.06\\d*, so that none is claimed")
        .doesNotContain("differs");
    assertThat(few.outcomes().get(0).effects().get(0).verdict()).isEqualTo(Verdict.UNDECIDED);
    Findings alike = findings(5, TWO, List.of(MAIN), noisy(0));
    assertThat(new FindingsView(alike).headline()).startsWith("Quality is equivalent within");
    List<String> three = List.of("returned", "collected", "mixed");
    Findings blocks = findings(5, three, List.of(MAIN), noisy(3));
    assertThat(new FindingsView(blocks).headline())
        .containsPattern(
            "^Quality differs by the t test, but with 5 yards .* cannot go below p = 0\\.06");
    Findings more = findings(8, TWO, List.of(MAIN), noisy(3));
    assertThat(new FindingsView(more).headline())
        .startsWith("Quality differs:")
        .doesNotContain("confirm", "Holm", "Bonferroni");
  }

  @Test
  void aListThatCanShowNothingLeavesTheAnswerUndecided() {
    List<String> codes = new ArrayList<>();
    List<String> own = new ArrayList<>();
    List<String> turned = new ArrayList<>();
    for (int yard = 1; yard <= 8; yard++) {
      codes.addAll(List.of(yard + "collected", yard + "returned"));
      own.addAll(TWO);
      turned.addAll(List.of("returned", "collected"));
    }
    Findings found =
        findings(
            8,
            TWO,
            List.of(MAIN),
            noisy(3),
            new Randomisation(1L, TrialFacts.Sides.LISTED, codes, List.of(own, turned), List.of()));
    assertThat(new FindingsView(found).headline())
        .startsWith("Undecided: quality of 'returned' is")
        .contains("of the 2 listed layouts the exact test cannot go below p = 1.00")
        .doesNotContain("differs");
    assertThat(words(found)).containsOnlyOnce("cannot go below").doesNotContain("differs:");
  }

  @Test
  void theSelfCheckNeverContradictsItself() {
    var noise = noisy(1);
    for (int apart : List.of(0, 3)) {
      String words =
          words(
              findings(
                  6,
                  TWO,
                  List.of(MAIN),
                  (plot, date) ->
                      noise.applyAsDouble(plot, date) + apart * (plot.code().charAt(0) - '0')));
      assertThat(words.contains("need not agree")).isEqualTo(apart == 0);
      assertThat(words.contains("Self-check: ")).isEqualTo(apart != 0);
    }
  }

  @Test
  void nothingIsToldTwice() {
    for (Findings found :
        List.of(
            findings(4, TWO, List.of(MAIN), noisy(0)),
            findings(4, TWO, List.of(MAIN), noisy(3)),
            findings(8, TWO, List.of(MAIN), noisy(3)))) {
      String words = words(found);
      assertThat(words)
          .containsOnlyOnce(new FindingsView(found).result().replace("<", "&lt;"))
          .containsOnlyOnce("cannot go below");
    }
  }

  @Test
  void severalArmsNameHowTheirComparisonsAreAdjusted() {
    List<Contrast> pairs =
        List.of(MAIN, new Contrast("mixed", "collected"), new Contrast("returned", "mixed"));
    Findings found = findings(6, List.of("collected", "mixed", "returned"), pairs, noisy(3));
    assertThat(found.outcomes().get(0).effects()).hasSize(3);
    assertThat(new FindingsView(found).headline())
        .contains("interval (for 3 comparisons at once, Bonferroni)", " by Holm.")
        .contains("'mixed' is", "that of 'mixed'");
    assertThat(words(found)).contains("p, Holm", "returned against mixed");
  }

  @Test
  void anArmWithoutValuesIsToldAndNotTested() {
    Findings found =
        findings(
            6,
            TWO,
            List.of(MAIN),
            (plot, date) -> plot.arm().equals("returned") ? Double.NaN : 6 + date);
    assertThat(words(found)).contains("Not tested: quality; the warnings say why");
    assertThat(found.outcomes().get(0).effects()).isEmpty();
    assertThatThrownBy(() -> findings(6, TWO, List.of(MAIN), (plot, date) -> Double.NaN))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("There are no readings of quality");
  }

  @Test
  void equalValuesAreToldAndNotTested() {
    Findings equal = findings(6, TWO, List.of(MAIN), (plot, date) -> 6);
    assertThat(words(equal)).contains("Not tested: quality; the warnings say why");
    Findings shifted =
        findings(6, TWO, List.of(MAIN), (plot, date) -> plot.arm().equals("returned") ? 7 : 6);
    assertThat(words(shifted)).contains("Not tested: quality; the warnings say why");
  }

  @Test
  void aValueFarFromAllOthersIsNamedAndStays() {
    ToDoubleBiFunction<Plot, Integer> noise = noisy(0);
    Findings found =
        findings(
            6,
            TWO,
            List.of(MAIN),
            (plot, date) ->
                plot.code().equals("2returned") && date == 1
                    ? 1e12
                    : noise.applyAsDouble(plot, date));
    assertThat(words(found)).contains("yard 2 lies apart from the others", "it stays in");
  }
}
