package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.Approximation;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.RandomTerm;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Mixed models beside the results that the README.md of each reference case names the source of.
 */
class MixedModelsPublishedTest {
  /** A model, its data and where its results stand. */
  record Check(String name, TrialTable table, String path, Models models, boolean balanced) {
    @Override
    public String toString() {
      return name + " " + path;
    }

    MixedFit fit() {
      return Cases.fit(table, models);
    }

    JsonNode at(String field) {
      return new ReferenceCase(name).at("results/" + path + "/" + field);
    }
  }

  static Stream<Check> checks() {
    return Stream.of(
        check("oats_splitplot", "lmer", Cases.oats(), true),
        check("oats_missing", "lmer", Cases.oats(), false),
        check("oats_as_stripplot", "lmer", Cases.oatsAsStrips(), false),
        check("gomez_stripplot", "lmer", Cases.strips(), true),
        check("machines", "lmer", Cases.machines(), true),
        new Check(
            "machines", Cases.machinesUnbalanced(), "unbalanced/lmer", Cases.machines(), false),
        check("machines", "unstructured_random", Cases.machinesUnstructured(), false),
        check("dyestuff", "lmer", Models.of("Yield").random("Batch"), true),
        check("dyestuff2", "lmer", Models.of("Yield").random("Batch"), false),
        check("penicillin", "lmer", Models.of("diameter").random("plate").random("sample"), true),
        check("sleepstudy", "lmer", Cases.sleep(true), true),
        check("sleepstudy", "lmer_uncorrelated", Cases.sleep(false), false),
        check("sleepstudy", "lmer_intercept_only", Cases.sleepMeans(), true),
        check("sleepstudy", "lmer_day_factor", Cases.sleepDays(), true),
        new Check(
            "karcher_turfgrass",
            Cases.turfScoresTable(),
            "lmer_interval_scale",
            Cases.turfScores(),
            false),
        check("orthodont", "lmer_slope", Cases.growthSlopes(), true),
        check("orthodont", "lmer_intercept", Cases.growth().random("Subject"), true),
        check("ergostool", "lmer", Cases.ergoStool(), true),
        check("npk", "lmer_two_way", Cases.factorial(), true),
        check("npk", "lmer_full", Cases.factorialFull(), true),
        check("bodyweight", "lmer", Cases.weights().random(slope("Rat", "Time")), false));
  }

  private static RandomTerm slope(String within, String slope) {
    return new RandomTerm(List.of(within), List.of(slope), true, true);
  }

  private static Check check(String name, String path, Models models, boolean balanced) {
    return new Check(name, Cases.table(name), path, models, balanced);
  }

  @ParameterizedTest
  @MethodSource("checks")
  void theLikelihoodIsTheReferences(Check check) {
    assertThat(check.fit().logLikelihood())
        .isCloseTo(check.at("logLik_REML").asDouble(), within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("checks")
  void variancesAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    double relative = check.balanced ? 1e-6 : 1e-5;
    double nearZero = 1e-6 * fit.residualVariance();
    for (JsonNode component : check.at("variance_components")) {
      double expected = component.get("value").asDouble();
      assertThat(variance(fit, component))
          .as("%s", component)
          .isCloseTo(expected, within(Math.max(nearZero, relative * Math.abs(expected))));
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void coefficientsAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    double relative = check.balanced ? 1e-7 : 1e-6;
    compare(check, fit, new KenwardRoger(fit), "coefficients_kenward_roger", relative);
    compare(check, fit, new Satterthwaite(fit), "coefficients_satterthwaite", relative);
  }

  private static void compare(
      Check check, MixedFit fit, Approximation by, String field, double relative) {
    List<Coefficient> ours = fit.coefficients(by.covariance());
    JsonNode theirs = check.at(field);
    assertThat(theirs).hasSameSizeAs(ours);
    for (JsonNode expected : theirs) {
      Coefficient own = named(ours, expected.get("term").asText());
      double se = expected.get("Std. Error").asDouble();
      assertThat(own.se()).as("%s", expected).isCloseTo(se, within(relative * se));
      double estimate = expected.get("Estimate").asDouble();
      assertThat(own.estimate())
          .as("%s", expected)
          .isCloseTo(estimate, within(relative * Math.max(Math.abs(estimate), se)));
    }
  }

  private static Coefficient named(List<Coefficient> ours, String term) {
    return ours.stream()
        .filter(coefficient -> foreign(coefficient.name()).equals(term))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void marginalTestsAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    List<MarginalTests.Test> kenwardRoger = new MarginalTests(fit).all(new KenwardRoger(fit));
    List<MarginalTests.Test> satterthwaite = new MarginalTests(fit).all(new Satterthwaite(fit));
    if (fit.model().fixed().isEmpty()) {
      assertThat(kenwardRoger).isEmpty();
      return;
    }
    double exact = check.balanced ? 1e-6 : 1e-5;
    compare(kenwardRoger, check.at("anova_type3_kenward_roger"), exact, exact);
    double one = check.balanced ? 1e-5 : 1e-4;
    compare(
        satterthwaite, check.at("anova_type3_satterthwaite"), one, check.balanced ? 1e-5 : 1e-3);
  }

  private static void compare(
      List<MarginalTests.Test> ours, JsonNode theirs, double one, double several) {
    assertThat(ours).hasSameSizeAs(theirs);
    for (MarginalTests.Test own : ours) {
      Set<String> variables = new HashSet<>(Arrays.asList(own.term().split("\\*")));
      for (JsonNode expected : theirs) {
        Set<String> names = new HashSet<>(Arrays.asList(expected.get("term").asText().split(":")));
        if (names.equals(variables) || theirs.size() == 1) {
          double f = expected.get("F value").asDouble();
          double df = expected.get("DenDF").asDouble();
          assertThat(own.numeratorDf()).isEqualTo(expected.get("NumDF").asDouble());
          assertThat(own.f()).as("F %s", expected).isCloseTo(f, within(one * f));
          double tolerance = own.numeratorDf() > 1 ? several : one;
          assertThat(own.denominatorDf()).as("%s", expected).isCloseTo(df, within(tolerance * df));
        }
      }
    }
  }

  private static double variance(MixedFit fit, JsonNode component) {
    String group = component.get("group").asText();
    if (group.equals("Residual")) {
      return fit.residualVariance();
    }
    if (group.equals("plot")) {
      return fit.variances().get(0).variance();
    }
    Set<String> factors = new HashSet<>(Arrays.asList(group.replaceAll("\\.\\d+$", "").split(":")));
    Set<String> effects = new HashSet<>();
    effects.add(component.get("effect1").asText());
    if (!component.get("effect2").isNull()) {
      effects.add(component.get("effect2").asText());
    }
    return fit.variances().stream()
        .filter(own -> new HashSet<>(own.within()).equals(factors))
        .filter(own -> effectsOf(own).equals(effects))
        .findFirst()
        .orElseThrow()
        .variance();
  }

  private static Set<String> effectsOf(MixedFit.Variance own) {
    Set<String> effects = new HashSet<>();
    effects.add(foreign(own.effect()));
    if (own.effect2() != null) {
      effects.add(foreign(own.effect2()));
    }
    return effects;
  }

  /** Our names as the reference writes them. */
  private static String foreign(String name) {
    return name.equals("(intercept)")
        ? "(Intercept)"
        : name.replace("Days[", "Day[").replace("[", "").replace("]", "").replace("*", ":");
  }
}
