package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import leafturn.trials.analysis.data.TrialFaultException;
import org.junit.jupiter.api.Test;

/** Levels that are most likely one level, and cells that hold what no text has. */
class SpellingTest {
  private static void refused(String csv, String... words) {
    Models model = Models.of("y").factors("arm").fixed("arm");
    assertThatThrownBy(() -> TrialAnalysis.of(ReferenceCase.table(csv), model.model()))
        .isInstanceOf(TrialFaultException.class)
        .satisfies(
            refused ->
                assertThat(String.join("\n", ((TrialFaultException) refused).faults()))
                    .contains(words));
  }

  @Test
  void controlCharacters() {
    refused("arm,y\na,1\na\u0000,2\nb,3\nb,4\n", "Line 3, arm: the cell holds", "U+0000");
  }

  @Test
  void levelsThatAreAlikeButForCapitalsOrSpaces() {
    refused(
        "arm,y\nreturned,1\nReturned,2\nleft,3\nleft,4\n",
        "'Returned' (first on line 3) beside 'returned' (line 2), which differ only in capitals;");
    refused(
        "arm,y\nby rule,1\nby\u00a0rule,2\nleft\u200b,3\nleft,4\n",
        "which differ only in spaces, some of which cannot be seen",
        "'left' (first on line 5) beside 'left\u200b' (line 4)");
    refused(
        "arm,y\nby rule,1\nBy  rule,2\nleft,3\nleft,4\n",
        "which differ only in capitals and spaces");
  }

  @Test
  void levelsThatTheModelNamesAreTwo() {
    Models model = Models.of("y").levels("arm", "A", "a").factors("arm").fixed("arm");
    assertThat(
            TrialAnalysis.of(ReferenceCase.table("arm,y\na,1\na,2\nA,3\nA,5\n"), model.model())
                .tests())
        .hasSize(1);
  }
}
