package leafturn.trials.analysis;

import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.fixed.Coefficient;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts.Contrast;
import leafturn.trials.analysis.inference.Satterthwaite;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import org.assertj.core.api.SoftAssertions;

/** Compares our results with a folder that variants.R has written. */
final class VariantChecks {
  private final Path folder;
  private final Map<String, Map<String, Double>> expected = new LinkedHashMap<>();
  private final SoftAssertions all = new SoftAssertions();

  VariantChecks(Path folder) throws IOException {
    this.folder = folder;
    List<String> lines = Files.readAllLines(folder.resolve("expected.csv"));
    for (String line : lines.subList(1, lines.size())) {
      List<String> cells = List.of(line.split(",", -1));
      expected
          .computeIfAbsent(cells.get(0), name -> new HashMap<>())
          .put(cells.get(1), Double.parseDouble(cells.get(2)));
    }
  }

  void run() throws IOException {
    for (Map.Entry<String, Models> one : Variants.mixed().entrySet()) {
      mixed(one.getKey(), one.getValue());
    }
    for (Map.Entry<String, Models> one : Variants.correlated().entrySet()) {
      correlated(one.getKey(), one.getValue());
    }
    List<String> none = List.of();
    compared("machines_cut", Cases.machines(), "Machine", none, Multiplicity.TUKEY);
    compared("machines_cut", Cases.machines(), "Machine", none, Multiplicity.HOMMEL);
    Models cake = Objects.requireNonNull(Variants.mixed().get("cake"));
    compared("cake", cake, "temperature", none, Multiplicity.HOLM);
    compared("cake", cake, "temperature", List.of("recipe"), Multiplicity.SIDAK);
    Models oats = Objects.requireNonNull(Variants.mixed().get("oats_cut"));
    compared("oats_cut", oats, "nitro", List.of("Variety"), Multiplicity.TUKEY);
    Models yields = Objects.requireNonNull(Variants.mixed().get("npk_log"));
    compared("npk_log", yields, "N", none, Multiplicity.NONE);
    Models crossed = Objects.requireNonNull(Variants.mixed().get("nested_and_crossed"));
    compared("nested_and_crossed", crossed, "practice", none, Multiplicity.HOMMEL);
    Models varied = Objects.requireNonNull(Variants.mixed().get("arms_vary"));
    compared("arms_vary", varied, "arm", none, Multiplicity.BONFERRONI);
    for (Multiplicity adjust : Multiplicity.values()) {
      if (adjust != Multiplicity.DUNNETT && adjust != Multiplicity.NONE) {
        compared("anorexia", Variants.anorexia(), "Treat", none, adjust);
      }
    }
    dunnett();
    all.assertAll();
  }

  private TrialTable table(String name) throws IOException {
    return ReferenceCase.table(Files.readString(folder.resolve(name + ".csv")));
  }

  private double expected(String name, String quantity) {
    Double value = Objects.requireNonNull(expected.get(name), name).get(quantity);
    return Objects.requireNonNull(value, name + " " + quantity);
  }

  private void near(String name, String quantity, double own, double relative) {
    double value = expected(name, quantity);
    all.assertThat(own)
        .as(name + " " + quantity)
        .isCloseTo(value, within(relative * Math.abs(value)));
  }

  private void mixed(String name, Models models) throws IOException {
    MixedFit fit = Cases.fit(table(name), models);
    all.assertThat(fit.logLikelihood())
        .as(name + " logLik")
        .isCloseTo(expected(name, "logLik"), within(1e-6));
    double residual = expected(name, "residual");
    near(name, "residual", fit.residualVariance(), 1e-5);
    List<Double> published = new ArrayList<>();
    Objects.requireNonNull(expected.get(name))
        .forEach(
            (quantity, value) -> {
              if (quantity.startsWith("variance|")) {
                published.add(value);
              }
            });
    List<Double> own =
        new ArrayList<>(fit.variances().stream().map(MixedFit.Variance::variance).toList());
    published.sort(null);
    own.sort(null);
    all.assertThat(own).as(name + " variances").hasSameSizeAs(published);
    for (int i = 0; i < Math.min(own.size(), published.size()); i++) {
      double tolerance = 2e-5 * Math.abs(published.get(i)) + 1e-6 * residual;
      all.assertThat(own.get(i))
          .as(name + " variance")
          .isCloseTo(published.get(i), within(tolerance));
    }
    MarginalTests tests = new MarginalTests(fit);
    tested(name, "Kenward-Roger", tests.all(new KenwardRoger(fit)), 1e-5);
    tested(name, "Satterthwaite", tests.all(new Satterthwaite(fit)), 1e-3);
  }

  private void tested(String name, String kind, List<MarginalTests.Test> tests, double ofDf) {
    for (int i = 0; i < tests.size(); i++) {
      String path = kind + "|" + (i + 1) + "|";
      near(name, path + "F", tests.get(i).f(), 2e-5);
      near(name, path + "df", tests.get(i).denominatorDf(), ofDf);
    }
  }

  private void correlated(String name, Models models) throws IOException {
    MixedFit fit = Cases.fit(table(name), models);
    all.assertThat(fit.logLikelihood())
        .as(name + " logLik")
        .isCloseTo(expected(name, "logLik"), within(1e-5));
    near(name, "sigma2", fit.residualVariance(), 1e-3);
    Double rho = fit.rho();
    if (rho != null) {
      near(name, "rho|1", rho, 1e-4);
    }
    double[] ratios = fit.sdRatios();
    for (int i = 1; ratios != null && i < ratios.length; i++) {
      near(name, "ratio|" + i, ratios[i], 1e-3);
    }
    List<Coefficient> own = fit.coefficients(fit.basisCovariance());
    for (int i = 0; i < own.size(); i++) {
      near(name, "coefficient|" + (i + 1), own.get(i).estimate(), 1e-4);
      near(name, "se|" + (i + 1), own.get(i).se(), 1e-4);
    }
  }

  private void compared(
      String name, Models models, String factor, List<String> within, Multiplicity adjust)
      throws IOException {
    models.compare(Variants.compare(factor, within, adjust));
    List<Contrast> own = TrialAnalysis.of(table(name), models.model()).contrasts();
    String word = adjust == Multiplicity.BENJAMINI_HOCHBERG ? "BH" : adjust.word();
    for (int i = 0; i < own.size(); i++) {
      String path = word + "|" + (i + 1) + "|";
      near(name, path + "estimate", own.get(i).estimate().value(), 1e-5);
      near(name, path + "SE", own.get(i).estimate().se(), 1e-5);
      near(name, path + "df", own.get(i).estimate().df(), 1e-5);
      double p = expected(name, path + "p.value");
      all.assertThat(own.get(i).pAdjusted())
          .as(name + " " + path + "p")
          .isCloseTo(p, within(1e-6 + 1e-4 * p));
    }
  }

  private void dunnett() throws IOException {
    Models models = Variants.anorexia().compare("Treat", "Cont", Multiplicity.DUNNETT);
    List<Contrast> own = TrialAnalysis.of(table("anorexia"), models.model()).contrasts();
    for (int i = 0; i < own.size(); i++) {
      double p = expected("anorexia", "dunnett|" + (i + 1) + "|p.value");
      all.assertThat(own.get(i).pAdjusted()).as("dunnett").isCloseTo(p, within(1e-5));
    }
  }
}
