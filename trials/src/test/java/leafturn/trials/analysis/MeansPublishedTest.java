package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.inference.Approximation;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.inference.MeansAndContrasts.Contrast;
import leafturn.trials.analysis.inference.MeansAndContrasts.Mean;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Means and comparisons beside emmeans, as the cases' README.md files say. */
class MeansPublishedTest {
  /** R's own tail of the studentized range is good to about 1e-10. */
  private static final double RANGE_OF_R = 1e-10;

  /** A factor's means and where they stand. */
  record Check(String name, TrialTable table, String path, Models models, String factor) {
    @Override
    public String toString() {
      return name + " " + path;
    }

    JsonNode at(String field) {
      return new ReferenceCase(name).at("results/" + path + "/" + field);
    }

    MeansAndContrasts means(Multiplicity multiplicity, @Nullable String control) {
      MixedFit fit = Cases.fit(table, models);
      Approximation by =
          path.contains("satterthwaite") ? new Satterthwaite(fit) : new KenwardRoger(fit);
      return new MeansAndContrasts(
          fit, by, new Comparison(factor, List.of(), control, 0.95, multiplicity));
    }
  }

  static Stream<Check> checks() {
    return Stream.of(
        check("oats_splitplot", "emm_nitro/kenward-roger", Cases.oats(), "nitro"),
        check("oats_splitplot", "emm_nitro/satterthwaite", Cases.oats(), "nitro"),
        check("oats_splitplot", "emm_variety/kenward-roger", Cases.oats(), "Variety"),
        check("oats_missing", "emm_nitro/kenward-roger", Cases.oats(), "nitro"),
        check("oats_missing", "emm_variety/satterthwaite", Cases.oats(), "Variety"),
        check("gomez_stripplot", "emm_gen/kenward-roger", Cases.strips(), "gen"),
        check("machines", "emm_machine/kenward-roger", Cases.machines(), "Machine"),
        check(
            "machines", "emm_unstructured/kenward-roger", Cases.machinesUnstructured(), "Machine"),
        new Check(
            "machines",
            Cases.machinesUnbalanced(),
            "unbalanced/emm_machine/kenward-roger",
            Cases.machines(),
            "Machine"),
        check("ergostool", "emm_type/kenward-roger", Cases.ergoStool(), "Type"),
        check("npk", "emm_N/kenward-roger", Cases.factorial(), "N"),
        check("plantgrowth", "emm/lm", plants(), "group"),
        check("warpbreaks", "emm_tension_log/lm", Cases.warpBreaks(), "tension"),
        new Check(
            "karcher_turfgrass",
            Cases.turfScoresTable(),
            "emm_manage_interval/kenward-roger",
            Cases.turfScores(),
            "manage"));
  }

  private static Models plants() {
    return Models.of("weight").factors("group").fixed("group");
  }

  private static Check check(String name, String path, Models models, String factor) {
    return new Check(name, Cases.table(name), path, models, factor);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void meansAreTheReferences(Check check) {
    List<Mean> means = check.means(Multiplicity.NONE, null).means();
    JsonNode expected = check.at("emmeans");
    assertThat(means).hasSameSizeAs(expected);
    for (int i = 0; i < means.size(); i++) {
      JsonNode theirs = expected.get(i);
      Mean own = means.get(i);
      close(own.estimate().value(), theirs.get("emmean"), 1e-7);
      close(own.estimate().se(), theirs.get("SE"), 1e-6);
      close(own.estimate().df(), theirs.get("df"), 1e-4);
      close(own.lower(), theirs.get("lower.CL"), 1e-5);
      close(own.upper(), theirs.get("upper.CL"), 1e-5);
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void differencesAreTheReferences(Check check) {
    List<Contrast> pairs = check.means(Multiplicity.NONE, null).contrasts();
    JsonNode expected = check.at("pairs");
    assertThat(pairs).hasSameSizeAs(expected);
    for (int i = 0; i < pairs.size(); i++) {
      Contrast own = pairs.get(i);
      double se = expected.get(i).get("SE").asDouble();
      assertThat(own.estimate().value())
          .isCloseTo(expected.get(i).get("estimate").asDouble(), within(1e-7 * se));
      close(own.estimate().se(), expected.get(i).get("SE"), 1e-6);
      close(own.estimate().df(), expected.get(i).get("df"), 1e-4);
      close(own.lower(), expected.get(i).get("lower.CL"), 1e-5);
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void adjustedPValuesAreTheReferences(Check check) {
    JsonNode byAdjustment = check.at("pairs_p_by_adjustment");
    for (Multiplicity multiplicity : Multiplicity.values()) {
      JsonNode expected = byAdjustment.get(multiplicity.word());
      if (expected != null) {
        List<Contrast> pairs = check.means(multiplicity, null).contrasts();
        for (int i = 0; i < pairs.size(); i++) {
          double p = expected.get(i).asDouble();
          assertThat(pairs.get(i).pAdjusted())
              .as("%s %d", multiplicity, i)
              .isCloseTo(p, within(RANGE_OF_R + 1e-4 * p));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void tukeysIntervalsAreTheReferences(Check check) {
    List<Contrast> pairs = check.means(Multiplicity.TUKEY, null).contrasts();
    for (int i = 0; i < pairs.size(); i++) {
      close(pairs.get(i).lower(), check.at("pairs_tukey_CI/lower/" + i), 1e-5);
      close(pairs.get(i).upper(), check.at("pairs_tukey_CI/upper/" + i), 1e-5);
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void comparisonsWithAControlAreTheReferences(Check check) {
    if (new ReferenceCase(check.name).at("results/" + check.path).has("dunnett")) {
      String control = check.means(Multiplicity.NONE, null).contrasts().get(0).first();
      List<Contrast> ours = check.means(Multiplicity.DUNNETT, control).contrasts();
      for (int i = 0; i < ours.size(); i++) {
        double monteCarlo = check.at("dunnett/p_mvt_montecarlo/" + i).asDouble();
        assertThat(ours.get(i).pAdjusted()).isCloseTo(monteCarlo, within(1e-3));
        close(
            ours.get(i).estimate().value(),
            check.at("dunnett/unadjusted/" + i + "/estimate"),
            1e-7);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void meansShareALetterExactlyIfTheyDoNotDiffer(Check check) {
    MeansAndContrasts result = check.means(Multiplicity.TUKEY, null);
    for (Contrast contrast : result.contrasts()) {
      String first = letters(result, check.factor, contrast.first());
      String second = letters(result, check.factor, contrast.second());
      boolean share = first.chars().anyMatch(letter -> second.indexOf(letter) >= 0);
      assertThat(share).as("%s", contrast).isEqualTo(contrast.pAdjusted() >= 0.05);
    }
  }

  private static String letters(MeansAndContrasts result, String factor, String level) {
    return Objects.requireNonNull(
        result.means().stream()
            .filter(mean -> level.equals(mean.levels().get(factor)))
            .findFirst()
            .orElseThrow()
            .letters());
  }

  private static void close(double own, JsonNode theirs, double relative) {
    double expected = theirs.asDouble();
    assertThat(own).isCloseTo(expected, within(relative * Math.max(Math.abs(expected), 1e-3)));
  }
}
