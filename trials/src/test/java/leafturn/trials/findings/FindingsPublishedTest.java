package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.trials.analysis.ReferenceCase;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.multiplicity.LargestT;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Findings beside R's t.test, complete enumeration and lme4 (README.md of shoes_paired). */
class FindingsPublishedTest {
  private final ReferenceCase shoes = new ReferenceCase("shoes_paired");

  private Findings findings(@Nullable Double margin) {
    TrialTable wide = shoes.table();
    List<List<String>> rows = new ArrayList<>();
    List<Integer> lines = new ArrayList<>();
    for (List<String> row : wide.rows()) {
      for (int half = 1; half <= 2; half++) {
        rows.add(List.of(row.get(0), wide.columns().get(half), row.get(half)));
        lines.add(rows.size() + 1);
      }
    }
    Outcome wear =
        new Outcome(
            "wear",
            Outcome.Kind.MEASUREMENT,
            "",
            null,
            null,
            Outcome.Scale.IDENTITY,
            Outcome.Summary.SEASON_MEAN,
            margin,
            true);
    return TabledTrial.findings(
        new TrialTable(List.of("boy", "mat", "wear"), rows, lines),
        new AskedTrial(
            "",
            "",
            new AskedTrial.Columns("boy", "mat", null, null),
            List.of(new Contrast("B", "A")),
            null,
            wear,
            new AskedTrial.Scope(null, null, Double.NaN),
            null,
            PlanRecord.NONE,
            null));
  }

  private static Effect effect(Findings findings) {
    return findings.outcomes().get(0).effects().get(0);
  }

  @Test
  void thePairedResultIsTheReferences() {
    Effect.Estimated own = effect(findings(null)).estimated();
    assertThat(own.difference())
        .isCloseTo(shoes.number("results/paired_t/mean_diff"), within(1e-12));
    assertThat(own.t()).isCloseTo(shoes.number("results/paired_t/t"), within(1e-10));
    assertThat(own.df()).isEqualTo(9);
    assertThat(own.p()).isCloseTo(shoes.number("results/paired_t/p"), within(1e-10));
    assertThat(own.interval().lower())
        .isCloseTo(shoes.number("results/paired_t/ci95/0"), within(1e-9));
    assertThat(own.interval().upper())
        .isCloseTo(shoes.number("results/paired_t/ci95/1"), within(1e-9));
  }

  @Test
  void theExactTestIsTheReferences() {
    RandomisationTest drawn =
        Objects.requireNonNull(findings(null).outcomes().get(0).support().randomisation());
    assertThat(drawn.p()).isEqualTo(14.0 / 1024);
    assertThat(drawn.layouts()).isEqualTo(1024);
  }

  @Test
  void equivalenceIsTheReferencesForEachMargin() {
    for (JsonNode row : shoes.at("results/tost")) {
      double margin = row.get("margin").asDouble();
      Effect.Equivalence tests = Objects.requireNonNull(effect(findings(margin)).equivalence());
      assertThat(tests.p()).isCloseTo(row.get("p_tost").asDouble(), within(1e-10));
      assertThat(tests.interval().lower())
          .isCloseTo(row.get("ci90").get(0).asDouble(), within(1e-9));
      assertThat(tests.interval().upper())
          .isCloseTo(row.get("ci90").get(1).asDouble(), within(1e-9));
    }
  }

  @Test
  void verdictsFollowThePublishedProbabilities() {
    assertThat(effect(findings(0.5)).verdict()).isEqualTo(Verdict.DIFFERS);
    assertThat(effect(findings(0.6)).verdict()).isEqualTo(Verdict.DIFFERS);
    assertThat(effect(findings(0.75)).verdict()).isEqualTo(Verdict.DIFFERS_BUT_EQUIVALENT);
    assertThat(effect(findings(null)).verdict()).isEqualTo(Verdict.DIFFERS);
  }

  @Test
  void theMixedModelAgrees() {
    SelfCheck check =
        Objects.requireNonNull(findings(null).outcomes().get(0).support().selfCheck());
    assertThat(check.holds()).isTrue();
    assertThat(check.f()).isCloseTo(11.215, within(5e-4));
  }

  /** R, numbers_distributions: 12 dates, 9 df, by a recursion along the dates. */
  @Test
  void simultaneousIntervalsOfDatesAreTheReferences() {
    double[][] published = {{0, 3.650445}, {0.5, 3.586457}, {0.8, 3.372114}, {0.95, 2.967609}};
    for (double[] row : published) {
      double[][] correlation = new double[12][12];
      for (int i = 0; i < 12; i++) {
        for (int j = 0; j < 12; j++) {
          correlation[i][j] = Math.pow(row[0], Math.abs(i - j));
        }
      }
      assertThat(LargestT.ofDates(correlation).quantile(0.05, 9)).isCloseTo(row[1], within(5e-7));
    }
  }

  /**
   * R, power.t.test, in standard deviations of the difference, near tail; numbers_distributions.
   */
  @Test
  void theLeastDifferenceFoundIsTheReferences() {
    double[][] published = {
      {4, 2.12795},
      {6, 1.43455},
      {8, 1.15604},
      {10, .996002},
      {15, .778023},
      {20, .660442},
      {40, .454257}
    };
    for (double[] row : published) {
      assertThat(Detectable.shift(row[0] - 1) / Math.sqrt(row[0])).isCloseTo(row[1], within(5e-6));
    }
  }
}
