package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import org.junit.jupiter.api.Test;

/** Each lack of the data is told once, by its cause. */
class FaultCausesTest {
  private static void faults(String csv, Models models, String... sentences) {
    TrialTable table = ReferenceCase.table(csv);
    assertThatThrownBy(() -> TrialAnalysis.of(table, models.model()))
        .isInstanceOfSatisfying(
            TrialFaultException.class,
            wrong -> assertThatList(wrong.faults()).containsExactly(sentences));
  }

  /** What follows from a lack is no second one. */
  @Test
  void oneSentenceForEachCause() {
    faults(
        "yard,arm,y\n1,a,1\n1,b,2\n",
        oneWay().random("yard").random("yard", "arm"),
        "The random term within yard has a single group; a variance needs at least two. Leave the term out, or observe another group.");
    faults(
        "yard,arm,y\n1,a,1\n2,b,2\n3,c,4\n",
        oneWay().random("yard").random("yard", "arm"),
        "3 observations carry 3 coefficients, so nothing is left to judge the error by; leave terms out or observe more plots.");
    faults(
        "arm,y\na,1e300\nb,2e300\na,3e300\nb,4e300\nb,5e300\n",
        oneWay(),
        "Lines 2, 3, 4 and 2 more: y is 1e300, beyond what can be measured or computed; use a unit in which it lies between 1e-40 and 1e40.");
    faults(
        "arm,y\na,n.d.\nb,2\na,n.d.\n",
        oneWay(),
        "Lines 2 and 4: y is 'n.d.', which is no number; write it with a decimal point and no unit, or leave the cell empty if it is missing.");
  }

  /** Equal differences in every yard are seldom measured, and rounding is no error to judge by. */
  @Test
  void noErrorIsLeftWhereEveryYardDiffersAlike() {
    String exact =
        "The model fits every value of y exactly, so that no error is left to judge differences by; look whether values were copied or reckoned from one another.";
    faults(
        "yard,arm,y\n1,a,5\n1,b,6\n2,a,6\n2,b,7\n3,a,7\n3,b,8\n", oneWay().random("yard"), exact);
    faults(
        "yard,arm,y\n1,a,5\n1,b,5\n2,a,6\n2,b,6\n3,a,7\n3,b,7\n", oneWay().random("yard"), exact);
  }

  @Test
  void yardsOfOneTreatmentEach() {
    faults(
        "yard,arm,y\n1,a,1\n1,a,2\n2,b,3\n2,b,5\n3,a,2\n3,a,1\n4,b,4\n4,b,6\n",
        oneWay().random("yard").random("yard", "arm"),
        "The random terms within yard and within yard*arm form the same groups: no yard has two levels of arm, so they cannot be compared within any yard, only between them; leave one out.");
  }

  private static Models oneWay() {
    return Models.of("y").factors("arm").fixed("arm");
  }
}
