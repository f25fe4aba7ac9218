package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.mixed.MixedFit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Certified values of NIST's Statistical Reference Datasets. */
class CertifiedValuesPublishedTest {

  @ParameterizedTest
  @CsvSource({
    "nist_sirstv,  1e-9",
    "nist_smls01,  1e-12",
    "nist_smls02,  1e-12",
    "nist_atmwtag, 1e-8",
    "nist_smls04,  1e-9",
    "nist_smls07,  1e-2"
  })
  @DisplayName("to 9 digits, fewer where the data lose digits in double precision")
  void oneWayAnalysesAreCertified(String name, double relative) {
    ReferenceCase reference = new ReferenceCase(name);
    MixedFit fit = Cases.fit(reference.table(), Models.of("y").factors("group").fixed("group"));
    MarginalTests.Test test = new MarginalTests(fit).all(new KenwardRoger(fit)).get(0);
    double f = reference.number("results/F");
    assertThat(test.f()).isCloseTo(f, within(relative * f));
    double within = reference.number("results/MS_within");
    assertThat(fit.residualVariance()).isCloseTo(within, within(relative * within));
    double df = reference.number("results/df_within");
    assertThat(test.denominatorDf()).isCloseTo(df, within(1e-6 * df));
  }

  @ParameterizedTest
  @CsvSource({"nist_norris, 1e-12", "nist_longley, 1e-9", "nist_pontius, 1e-11"})
  void regressionsAreCertified(String name, double relative) {
    ReferenceCase reference = new ReferenceCase(name);
    List<Coefficient> ours = fit(reference).coefficients(fit(reference).basisCovariance());
    double[] estimates = reference.numbers("results/coefficients");
    double[] errors = reference.numbers("results/standard_errors");
    assertThat(ours).hasSize(estimates.length);
    for (int i = 0; i < estimates.length; i++) {
      double size = Math.abs(estimates[i]);
      assertThat(ours.get(i).estimate()).isCloseTo(estimates[i], within(relative * size));
      assertThat(ours.get(i).se()).isCloseTo(errors[i], within(relative * errors[i]));
    }
    double sd = reference.number("results/residual_sd");
    assertThat(Math.sqrt(fit(reference).residualVariance())).isCloseTo(sd, within(relative * sd));
  }

  @Test
  void anExactPolynomialIsFoundExactly() {
    ReferenceCase reference = new ReferenceCase("nist_wampler1");
    List<Coefficient> ours = fit(reference).coefficients(fit(reference).basisCovariance());
    assertThat(ours).allSatisfy(own -> assertThat(own.estimate()).isCloseTo(1, within(1e-8)));
  }

  private static MixedFit fit(ReferenceCase reference) {
    TrialTable table = reference.table();
    List<String> terms = new ArrayList<>();
    List<String> covariates = table.columns().stream().filter(name -> !name.equals("y")).toList();
    terms.addAll(covariates);
    int powers = reference.at("results/coefficients").size() - 1;
    if (covariates.size() == 1) {
      for (int power = 2; power <= powers; power++) {
        terms.add(String.join("*", Collections.nCopies(power, covariates.get(0))));
      }
    }
    return Cases.fit(
        table,
        Models.of("y")
            .covariates(covariates.toArray(String[]::new))
            .fixed(terms.toArray(String[]::new)));
  }
}
