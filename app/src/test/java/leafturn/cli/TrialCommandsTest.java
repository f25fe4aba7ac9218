package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leafturn.records.Examples;
import leafturn.records.sheet.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command trial analyse on the example and on what is wrong. */
class TrialCommandsTest {
  private static final Path DATA = Examples.file("split-yard.csv");
  private static final Path MODEL = Examples.file("split-yard.model.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static Ran analyse(Path data, Path model, String... more) {
    return Ran.of(List.of("trial", "analyse", data.toString(), model.toString()), more);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void decimalCommasBetweenSemicolonsAreReadAndBothMarksRefused() throws IOException {
    String points = Files.readString(DATA).replaceAll("(\\d\\d)(?m)$", "$1.5");
    String commas = points.replace(',', ';').replace('.', ',');
    assertThat(commas).contains("2026-04-20;115,5");
    Ran ran = analyse(file("c.csv", commas), MODEL);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out()).isEqualTo(analyse(file("p.csv", points), MODEL).out());
    Ran mixed = analyse(file("m.csv", commas.replaceFirst("124,5", "124.5")), MODEL);
    assertThat(mixed.exitCode()).isEqualTo(2);
    assertThat(mixed.err()).contains("line 3", "124.5", "potassium_ppm", "use one of them");
    String tabs = points.replace(',', '\t');
    assertThat(analyse(file("t.csv", tabs), MODEL).out()).isEqualTo(ran.out());
  }

  @Test
  void onTheLogScaleRatiosAreTold() throws IOException {
    JsonNode first = JSON.readTree(analyse(DATA, MODEL, "--json").out()).path("contrasts").get(0);
    String told = analyse(DATA, MODEL).out();
    assertThat(told)
        .contains("Geometric means (fitted on the log scale)", "Ratios (differences on the log")
        .contains(
            "%s / %s".formatted(first.path("first").asText(), first.path("second").asText()),
            String.format(
                java.util.Locale.ROOT,
                "%.5g (%.5g to %.5g)",
                first.path("ratio").asDouble(),
                first.path("ratioLower").asDouble(),
                first.path("ratioUpper").asDouble()));
  }

  @Test
  void theExampleGivesEveryFieldOfTheContract() throws IOException {
    JsonNode report = JSON.readTree(analyse(DATA, MODEL, "--json").out());
    assertThat(report.fieldNames())
        .toIterable()
        .contains(
            "observations",
            "logLikelihoodReml",
            "tests",
            "coefficients",
            "variances",
            "correlation",
            "residualVariance",
            "boundary",
            "means",
            "contrasts",
            "warnings");
    assertThat(report.get("observations").asInt()).isEqualTo(64);
    assertThat(report.get("coefficients").get(0).get("name").asText()).isEqualTo("(intercept)");
    JsonNode test = report.get("tests").get(0);
    assertThat(test.get("term").asText()).isEqualTo("practice");
    assertThat(test.get("denDf").asDouble()).isCloseTo(7, within(1e-6));
    JsonNode contrast = report.get("contrasts").get(3);
    assertThat(contrast.get("first").asText()).isEqualTo("returned");
    assertThat(contrast.get("ratio").asDouble())
        .isCloseTo(Math.exp(contrast.get("difference").asDouble()), within(1e-12));
    assertThat(report.get("means").get(0).get("levels").get("practice").asText())
        .isEqualTo("collected");
    assertThat(report.get("means").get(0).get("letters").isNull()).isTrue();
  }

  @Test
  void theExampleInWords() {
    Ran ran = analyse(DATA, MODEL);
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("practice*date", "returned / collected at 2026-10-05", "Note:");
  }

  @Test
  void theExampleFollowsItsSchema() throws IOException {
    Schema schema = new Schema();
    JsonNode model = JSON.readTree(MODEL.toFile());
    assertThat(schema.faults("$", schema.root("trial-model.schema.json"), model)).isEmpty();
  }

  @Test
  void correlationOverTimeAndRatingsHaveTheirOwnFields() throws IOException {
    Path overTime =
        file(
            "ar1.json",
            """
            {"response": "potassium_ppm", "scale": "log", "factors": ["practice", "date"],
             "fixed": ["practice", "date"], "random": [{"within": ["yard"]}],
             "overTime": {"unit": ["yard", "practice"], "time": "date", "correlation": "ar1"}}
            """);
    JsonNode correlation =
        JSON.readTree(analyse(DATA, overTime, "--json").out()).get("correlation");
    assertThat(correlation.get("structure").asText()).isEqualTo("ar1");
    assertThat(correlation.get("rho").isNumber()).isTrue();
    assertThat(correlation.get("matrix")).hasSize(4);
    Path ratings =
        file(
            "ratings.csv",
            "plot,arm,colour\n1,a,low\n2,a,low\n3,a,high\n4,b,high\n5,b,high\n6,b,low\n7,b,high\n");
    Path ordinal =
        file(
            "ordinal.json",
            """
            {"response": "colour", "scale": "ordinal", "factors": ["arm"], "fixed": ["arm"],
             "levels": {"colour": ["low", "high"]}}
            """);
    JsonNode report = JSON.readTree(analyse(ratings, ordinal, "--json").out());
    assertThat(report.get("coefficients").get(0).get("name").asText()).isEqualTo("low|high");
    assertThat(report.get("tests").get(0).get("chiSquared").isNumber()).isTrue();
  }

  @Test
  void whatIsWrongIsSaidInSentences() throws IOException {
    Path wrong =
        file(
            "wrong.json",
            """
            {"response": "height", "fixed": ["practise"], "df": "magic", "extra": 1}
            """);
    Ran model = analyse(DATA, wrong);
    assertThat(model.exitCode()).isEqualTo(2);
    assertThat(model.err())
        .contains("kenward-roger", "there is no such field")
        .doesNotContain("\tat ");
    Path names = file("names.json", "{\"response\": \"height\", \"fixed\": [\"practise\"]}");
    Ran data = analyse(DATA, names);
    assertThat(data.exitCode()).isEqualTo(2);
    assertThat(data.err()).contains("response names 'height'", "'practise'");
    Ran missing = analyse(folder.resolve("none.csv"), names);
    assertThat(missing.exitCode()).isEqualTo(2);
  }
}
