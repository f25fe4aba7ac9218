package leafturn.trials.analysis.paired;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.Models;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import org.junit.jupiter.api.Test;

/** The split-yard core beside R's t.test and complete enumeration (README.md of shoes_paired). */
class SplitYardPublishedTest {
  private final ReferenceCase shoes = new ReferenceCase("shoes_paired");

  private double[] differences() {
    String[] one = shoes.table().cells("A");
    String[] other = shoes.table().cells("B");
    double[] differences = new double[one.length];
    Arrays.setAll(differences, i -> Double.parseDouble(other[i]) - Double.parseDouble(one[i]));
    return differences;
  }

  @Test
  void thePairedTestIsTheReferences() {
    PairedDifference own = PairedDifference.of(differences());
    assertThat(own.mean()).isCloseTo(shoes.number("results/paired_t/mean_diff"), within(1e-12));
    assertThat(own.sd()).isCloseTo(shoes.number("results/paired_t/sd_diff"), within(1e-12));
    assertThat(own.t()).isCloseTo(shoes.number("results/paired_t/t"), within(1e-10));
    assertThat(own.p()).isCloseTo(shoes.number("results/paired_t/p"), within(1e-10));
    PairedDifference.Interval interval = own.interval(0.95);
    assertThat(interval.lower()).isCloseTo(shoes.number("results/paired_t/ci95/0"), within(1e-9));
    assertThat(interval.upper()).isCloseTo(shoes.number("results/paired_t/ci95/1"), within(1e-9));
  }

  @Test
  void equivalenceIsTheReferences() {
    PairedDifference own = PairedDifference.of(differences());
    for (JsonNode row : shoes.at("results/tost")) {
      PairedDifference.Equivalence test = own.equivalence(row.get("margin").asDouble());
      assertThat(test.lower()).isCloseTo(row.get("p_lower").asDouble(), within(1e-10));
      assertThat(test.upper()).isCloseTo(row.get("p_upper").asDouble(), within(1e-10));
      assertThat(test.p()).isCloseTo(row.get("p_tost").asDouble(), within(1e-10));
      assertThat(own.interval(0.9).lower())
          .isCloseTo(row.get("ci90").get(0).asDouble(), within(1e-9));
    }
  }

  @Test
  void theSignFlipTestIsExact() {
    double p = shoes.number("results/randomisation_two_sided_exact/p");
    assertThat(SignFlipTest.p(differences())).isEqualTo(p);
  }

  @Test
  void verdictsFollowIntervalAndMargin() {
    PairedDifference own = PairedDifference.of(differences());
    assertThat(own.verdict(0.05, 0.5)).isEqualTo(PairedDifference.Verdict.DIFFERS);
    assertThat(own.verdict(0.05, 0.75)).isEqualTo(PairedDifference.Verdict.DIFFERS_BUT_EQUIVALENT);
    PairedDifference none = PairedDifference.of(new double[] {-1, 1, -0.5, 0.6});
    assertThat(none.verdict(0.05, 0.1)).isEqualTo(PairedDifference.Verdict.UNDECIDED);
    assertThat(none.verdict(0.05, 5)).isEqualTo(PairedDifference.Verdict.EQUIVALENT);
  }

  @Test
  void oneYardSplitOnceGetsNoPValue() {
    assertThatThrownBy(() -> PairedDifference.of(new double[] {3}))
        .isInstanceOf(TrialFaultException.class)
        .hasMessageContaining("no replicates");
  }

  /** The self-check: in balanced data the mixed model says what the paired differences say. */
  @Test
  void theMixedModelAgrees() {
    TrialTable wide = shoes.table();
    List<List<String>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (List<String> row : wide.rows()) {
      for (int half = 1; half <= 2; half++) {
        rows.add(List.of(row.get(0), wide.columns().get(half), row.get(half)));
        lines.add(rows.size() + 1);
      }
    }
    TrialTable table = new TrialTable(List.of("boy", "mat", "wear"), rows, lines);
    TrialAnalysis mixed =
        TrialAnalysis.of(
            table, Models.of("wear").factors("mat").fixed("mat").random("boy").model());
    PairedDifference own = PairedDifference.of(differences());
    assertThat(mixed.tests().get(0).f()).isCloseTo(own.t() * own.t(), within(1e-7));
    assertThat(mixed.tests().get(0).denominatorDf()).isCloseTo(own.df(), within(1e-6));
    assertThat(mixed.tests().get(0).p()).isCloseTo(own.p(), within(1e-8));
    assertThat(mixed.fit().logLikelihood())
        .isCloseTo(shoes.number("results/lmer/logLik_REML"), within(1e-6));
  }

  @Test
  void aSeasonsMeanWeighsDaysNotDates() {
    double[] days = {0, 10, 40};
    double[] values = {1, 3, 3};
    assertThat(SeasonSummary.MEAN.of(days, values)).isCloseTo(110.0 / 40, within(1e-12));
    assertThat(SeasonSummary.LAST.of(days, values)).isEqualTo(3);
    assertThat(SeasonSummary.SLOPE.of(new double[] {0, 1, 2}, new double[] {5, 7, 9}))
        .isCloseTo(2, within(1e-12));
    assertThatThrownBy(() -> SeasonSummary.MEAN.of(new double[] {0, 5, 3}, values))
        .hasMessageContaining("out of order");
  }
}
