package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.Approximation;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.OverTime.Correlation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Degrees of freedom with correlated dates beside case ddf_ar1, whose README.md says how. */
class SmallSampleAr1PublishedTest {
  /** One of the case's models, with all rows or without ten of them. */
  record Check(String path, Models models) {
    @Override
    public String toString() {
      return path;
    }

    MixedFit fit() {
      ReferenceCase reference = new ReferenceCase("ddf_ar1");
      Set<Integer> removed = new HashSet<>();
      if (path.startsWith("unbalanced")) {
        reference.at("results/unbalanced_rows_removed").forEach(row -> removed.add(row.asInt()));
      }
      return Cases.fit(reference.tableWithout(removed), models);
    }

    JsonNode at(String field) {
      return new ReferenceCase("ddf_ar1").at("results/" + path + "/" + field);
    }
  }

  static Stream<Check> checks() {
    return Stream.of(
        new Check("balanced/cs", growth().random("Subject")),
        new Check("balanced/ar1", growth().overTime(Correlation.AR1, "occ", "Subject")),
        new Check(
            "balanced/subject_plus_ar1",
            growth().random("Subject").overTime(Correlation.AR1, "occ", "Subject")),
        new Check("unbalanced/cs", growth().random("Subject")),
        new Check("unbalanced/ar1", growth().overTime(Correlation.AR1, "occ", "Subject")));
  }

  private static Models growth() {
    return Cases.growthByAge();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void testsAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    compare(check, fit, new KenwardRoger(fit), "kenward_roger_firstorder", 1e-5, 1e-5);
    compare(check, fit, new Satterthwaite(fit), "satterthwaite", 1e-4, 1e-3);
  }

  private static void compare(
      Check check, MixedFit fit, Approximation by, String field, double one, double several) {
    List<MarginalTests.Test> tests = new MarginalTests(fit).all(by);
    List<String> names = List.of("Sex", "Age", "Sex:Age");
    for (int i = 0; i < names.size(); i++) {
      JsonNode expected = check.at(field).get(names.get(i));
      double df = expected.get("den_df").asDouble();
      double f = expected.get("F").asDouble();
      double tolerance = expected.get("num_df").asInt() > 1 ? several : one;
      assertThat(tests.get(i).denominatorDf())
          .as(names.get(i))
          .isCloseTo(df, within(tolerance * df));
      assertThat(tests.get(i).f()).as(names.get(i)).isCloseTo(f, within(one * f));
    }
  }

  @ParameterizedTest
  @MethodSource("checks")
  void standardErrorsAreTheReferences(Check check) {
    MixedFit fit = check.fit();
    List<Coefficient> adjusted = fit.coefficients(new KenwardRoger(fit).covariance());
    List<Coefficient> plain = fit.coefficients(fit.basisCovariance());
    JsonNode coding = check.at("treatment_coding");
    assertThat(fit.logLikelihood()).isCloseTo(coding.get("REML_logLik").asDouble(), within(1e-6));
    for (int i = 0; i < plain.size(); i++) {
      String name = foreign(plain.get(i).name());
      double se = coding.get("se").get(name).asDouble();
      assertThat(plain.get(i).se()).as(name).isCloseTo(se, within(1e-6 * se));
      double kenwardRoger = coding.get("se_kenward_roger_firstorder").get(name).asDouble();
      assertThat(adjusted.get(i).se())
          .as(name)
          .isCloseTo(kenwardRoger, within(1e-6 * kenwardRoger));
    }
  }

  private static String foreign(String name) {
    return name.equals("(intercept)")
        ? "(Intercept)"
        : name.replace("age[8]", "")
            .replaceAll("age\\[(\\d+)\\]", "Age$1")
            .replaceAll("\\[|\\]", "")
            .replace("*", ":");
  }
}
