package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import leafturn.trials.analysis.model.OverTime.Correlation;
import leafturn.trials.analysis.model.RandomTerm;
import org.junit.jupiter.api.Test;

/** What cannot be analysed is said in a sentence; nothing silently becomes NaN or 0. */
class BadInputTest {

  private static void refused(String csv, Models models, String words) {
    TrialTable table = ReferenceCase.table(csv);
    assertThatThrownBy(() -> TrialAnalysis.of(table, models.model()))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining(words);
  }

  @Test
  void oneLevel() {
    refused("arm,y\na,1\na,2\na,3\n", oneWay(), "arm has one level");
  }

  @Test
  void oneUnit() {
    refused("yard,arm,y\n1,a,1\n1,b,2\n1,a,3\n1,b,5\n", oneWay().random("yard"), "a single group");
  }

  @Test
  void allEqual() {
    refused("arm,y\na,4\nb,4\na,4\nb,4\n", oneWay(), "All 4 values of y are 4;");
  }

  @Test
  void allMissing() {
    refused("arm,y\na,\nb,\n", oneWay(), "missing throughout");
  }

  @Test
  void unitsConfoundedWithTreatments() {
    refused("yard,arm,y\n1,a,1\n1,a,2\n2,b,3\n2,b,5\n", oneWay().random("yard"), "is confounded");
  }

  @Test
  void tenTreatmentsOnEightPlots() {
    StringBuilder csv = new StringBuilder("arm,y\n");
    for (int plot = 0; plot < 8; plot++) {
      csv.append("t").append(plot).append(',').append(plot * plot).append('\n');
    }
    refused(csv.toString(), oneWay(), "nothing is left to judge the error by");
  }

  @Test
  void datesOutOfOrder() {
    refused(
        "plot,day,y\n1,1,1\n1,2,2\n2,1,4\n2,2,3\n",
        Models.of("y").levels("day", "2", "1").overTime(Correlation.AR1, "day", "plot"),
        "from the first to the last");
  }

  @Test
  void twoRowsForOnePlotAndDate() {
    refused(
        "plot,day,y\n1,1,1\n1,1,2\n2,1,4\n2,2,3\n",
        Models.of("y").overTime(Correlation.AR1, "day", "plot"),
        "Lines 2 and 3 are both of plot 1 at day 1");
  }

  @Test
  void wordsForTimesWhereDistanceCounts() {
    refused(
        "plot,day,y\n1,spring,1\n1,summer,2\n2,spring,4\n2,summer,3\n",
        Models.of("y").overTime(Correlation.CAR1, "day", "plot"),
        "neither a number nor a date");
  }

  /** As words they would stand in the order of their letters, and be taken for positions. */
  @Test
  void aDateTheCalendarDoesNotHave() {
    refused(
        "plot,day,y\n1,2025-06-01,1\n1,2025-05-01,2\n1,2025-13-40,2\n2,2025-06-01,4\n2,2025-05-01,3\n2,2025-13-40,5\n",
        Models.of("y").overTime(Correlation.AR1, "day", "plot"),
        "Line 4: day is '2025-13-40', which is no date of the calendar");
    refused(
        "plot,day,y\n1,2025-9-1,1\n1,2025-10-1,2\n2,2025-9-1,4\n2,2025-10-1,3\n",
        Models.of("y").overTime(Correlation.HETEROGENEOUS_AR1, "day", "plot"),
        "Line 2: day is '2025-9-1', which is no date");
    refused(
        "plot,day,y\n1,2025-05-01,1\n1,2025-06-01,2\n1,July,2\n2,2025-05-01,4\n2,2025-06-01,3\n2,July,5\n",
        Models.of("y").overTime(Correlation.UNSTRUCTURED, "day", "plot"),
        "Line 4: day is 'July', which is no date");
  }

  /** Alphabetical order is no order of time, so it is said where positions count. */
  @Test
  void wordsForTimesWithoutAnOrderAreSaid() {
    String csv =
        "plot,visit,y\n1,May,1\n1,June,2.5\n1,July,2\n2,May,4\n2,June,3\n2,July,5\n3,May,2\n3,June,1\n3,July,4\n";
    Models words = Models.of("y").overTime(Correlation.AR1, "visit", "plot");
    assertThat(TrialAnalysis.of(ReferenceCase.table(csv), words.model()).warnings())
        .anySatisfy(
            warning ->
                assertThat(warning)
                    .startsWith("The times of visit are words without an order of their own")
                    .contains("July, June, May"));
    words.levels("visit", "May", "June", "July");
    assertThat(TrialAnalysis.of(ReferenceCase.table(csv), words.model()).warnings())
        .noneSatisfy(warning -> assertThat(warning).contains("words without an order"));
  }

  /** Two groups of four treatments each: the sentence holds for them, too. */
  @Test
  void groupsOfSeveralTreatmentsEach() {
    refused(
        "yard,arm,y\n1,a,1\n1,b,2\n1,a,3\n2,c,3\n2,d,5\n2,c,4\n",
        oneWay().random("yard"),
        "the fixed terms already tell its 2 groups apart");
  }

  /** A variance for each treatment of a yard is the residual again where each is seen once. */
  @Test
  void slopesOfAFactorSeenOnceInEachGroup() {
    String once =
        "yard,arm,y\n1,a,3.9\n1,b,5.4\n2,a,3.2\n2,b,3.7\n3,a,5.4\n3,b,5.5\n4,a,4\n4,b,5\n";
    RandomTerm slopes = new RandomTerm(List.of("yard"), List.of("arm"), true, true);
    refused(once, oneWay().random(slopes), "cannot be told from the residual");
    String twice = once + once.substring(11).replace(",5.", ",6.").replace(",3.", ",2.");
    assertThat(
            TrialAnalysis.of(ReferenceCase.table(twice), oneWay().random(slopes).model()).tests())
        .allMatch(test -> test.isEstimable());
  }

  @Test
  void aCellIsQuotedAsItStands() {
    refused("arm,y\na,<<3\nb,2\na,3\nb,7\n", oneWay(), "Line 2: y is '<<3'");
  }

  @Test
  void textInNumbers() {
    refused("arm,y\na,1\nb,2 ppm\na,3\n", oneWay(), "Line 3: y is '2 ppm', which is no number");
  }

  @Test
  void aResponseBeyondMeasure() {
    refused("arm,y\na,1\nb,1e300\na,3\n", oneWay(), "Line 3: y is 1e300");
  }

  @Test
  void aColumnOfMixedUnits() {
    refused(
        "arm,unit,y\na,mg/kg,1\nb,%,2\na,mg/kg,3\nb,%,5\n",
        oneWay(), "Column 'unit' holds 2 units (mg/kg, %)");
  }

  @Test
  void asManyGroupsAsRows() {
    refused(
        "plot,arm,y\n1,a,1\n2,b,2\n3,a,3\n4,b,5\n",
        oneWay().random("plot"),
        "one observation in each group");
  }

  @Test
  void aConstantCovariateIsNotEstimable() {
    Models models = Models.of("y").factors("arm").covariates("x").fixed("arm", "x");
    TrialTable table = ReferenceCase.table("arm,x,y\na,2,1\nb,2,2\na,2,4\nb,2,2\na,2,3\n");
    TrialAnalysis analysis = TrialAnalysis.of(table, models.model());
    assertThat(analysis.tests().get(1).isEstimable()).isFalse();
    assertThat(analysis.warnings()).anySatisfy(w -> assertThat(w).contains("x is not estimable"));
  }

  @Test
  void threeHundredColumnsAreNoHindrance() {
    StringBuilder csv = new StringBuilder("arm,y");
    for (int i = 0; i < 298; i++) {
      csv.append(",c").append(i);
    }
    for (String row : new String[] {"a,1", "b,2", "a,3", "b,5"}) {
      csv.append('\n').append(row).append(",1".repeat(298));
    }
    TrialAnalysis analysis = TrialAnalysis.of(ReferenceCase.table(csv + "\n"), oneWay().model());
    assertThat(analysis.tests().get(0).f()).isCloseTo(2.25 / 3.25, within(1e-12));
  }

  @Test
  void aLimitThatIsNotThereAndAValueTooSmall() {
    refused("arm,y\na,<\nb,2\na,3\n", oneWay(), "Line 2: y is '<' without a detection limit");
    refused("arm,y\na,1e-300\nb,2\na,3\n", oneWay(), "between 1e-40 and 1e40");
  }

  @Test
  void nothingLeftUnexplainedIsSaid() {
    TrialTable table = ReferenceCase.table("arm,y\na,1\nb,2\na,1\nb,2\na,1\nb,2\n");
    assertThat(TrialAnalysis.of(table, oneWay().model()).warnings())
        .anySatisfy(warning -> assertThat(warning).contains("no error to judge by"));
  }

  /** Pairs of six yards leave 5 degrees of freedom, whatever the last digit of their search. */
  @Test
  void fiveDegreesOfFreedomAreNotFewerThanFive() {
    String yards =
        "yard,arm,y\n1,a,5.1\n1,b,5.9\n2,a,6.3\n2,b,6.4\n3,a,4\n3,b,5.2\n4,a,5\n4,b,5.5\n";
    Models pairs = Models.of("y").factors("arm").fixed("arm").random("yard");
    String six = yards + "5,a,7.1\n5,b,7.3\n6,a,6\n6,b,7\n";
    assertThat(TrialAnalysis.of(ReferenceCase.table(six), pairs.model()).warnings())
        .noneSatisfy(warning -> assertThat(warning).contains("is judged on"));
    assertThat(TrialAnalysis.of(ReferenceCase.table(yards), pairs.model()).warnings())
        .anySatisfy(
            warning ->
                assertThat(warning)
                    .startsWith("arm is judged on 3 degrees of freedom; with fewer than 5"));
  }

  @Test
  void zeroOnTheLogScale() {
    refused("arm,y\na,1\nb,0\na,3\n", oneWay().log(), "no logarithm");
  }

  @Test
  void anUnknownColumnAndAnUnknownControl() {
    refused("arm,y\na,1\nb,2\na,3\n", Models.of("z").factors("arm"), "response names 'z'");
    refused(
        "arm,y\na,1\nb,2\na,3\nb,7\n",
        oneWay().compare("arm", "c", Multiplicity.DUNNETT),
        "no level of arm; its levels are a, b");
  }

  @Test
  void tooManyBelowDetection() {
    refused("arm,y\na,<1\nb,<1\na,3\nb,7\n", oneWay(), "above 15 %");
  }

  @Test
  void aNegativeDetectionLimit() {
    refused("arm,y\na,<-1\nb,2\na,3\nb,7\n", oneWay(), "Line 2: y is '<-1'");
  }

  @Test
  void aFactorWithALevelForEachOfManyRows() {
    StringBuilder csv = new StringBuilder("arm,y\n");
    for (int i = 0; i < 2_000; i++) {
      csv.append("t").append(i).append(',').append(i % 7).append('\n');
    }
    refused(csv.toString(), oneWay(), "belongs in random");
  }

  @Test
  void aFewBelowDetectionAreShownWithTheirSensitivity() {
    TrialTable table =
        ReferenceCase.table("arm,y\na,<1\nb,4\na,3\nb,7\na,2\nb,5\na,4\nb,6\na,1.5\nb,5\n");
    assertThat(TrialAnalysis.of(table, oneWay().model()).warnings())
        .anySatisfy(warning -> assertThat(warning).contains("stand at half of it"))
        .anySatisfy(warning -> assertThat(warning).contains("p of arm is"));
  }

  @Test
  void aConfoundedContrastIsNotEstimableRatherThanZero() {
    Models fixedBlocks =
        Models.of("yield")
            .factors("N", "P", "K", "block")
            .fixed("block", "N", "P", "K", "N*P", "N*K", "P*K", "N*P*K");
    TrialAnalysis analysis = TrialAnalysis.of(Cases.table("npk"), fixedBlocks.model());
    assertThat(analysis.coefficients())
        .filteredOn(coefficient -> coefficient.name().equals("N[1]*P[1]*K[1]"))
        .allSatisfy(coefficient -> assertThat(coefficient.isEstimable()).isFalse());
    assertThat(analysis.warnings()).anySatisfy(w -> assertThat(w).contains("not estimable"));
    assertThat(analysis.tests().get(7).isEstimable()).isFalse();
  }

  @Test
  void anEmptyCellMakesMarginalMeansNotEstimable() {
    String csv = "a,b,y\n1,1,1\n1,1,2\n1,2,3\n1,2,5\n2,1,4\n2,1,4.5\n";
    Models models =
        Models.of("y")
            .factors("a", "b")
            .fixed("a", "b", "a*b")
            .compare("a", null, Multiplicity.TUKEY);
    TrialAnalysis analysis = TrialAnalysis.of(ReferenceCase.table(csv), models.model());
    assertThat(analysis.means().get(1).estimate().isEstimable()).isFalse();
    assertThat(analysis.contrasts().get(0).estimate().isEstimable()).isFalse();
    assertThat(analysis.tests()).noneMatch(test -> test.f() == 0);
  }

  private static Models oneWay() {
    return Models.of("y").factors("arm").fixed("arm");
  }
}
