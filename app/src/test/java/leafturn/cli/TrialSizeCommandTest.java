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
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command trial size on its examples and on what is wrong. */
class TrialSizeCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static Ran run(Path file, String... more) {
    return Ran.of(List.of("trial", "size", file.toString()), more);
  }

  private Ran asked(String json, String... more) throws IOException {
    return run(Files.writeString(folder.resolve("asked.size.json"), json), more);
  }

  private JsonNode answer(String json) throws IOException {
    return JSON.readTree(asked(json, "--json").out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "soil-potassium",
        "quality",
        "mowing-by-feed",
        "split-yard-model",
        "yards-and-years"
      })
  void examplesFollowTheSchemaAndAreAnswered(String name) throws IOException {
    Path file = Examples.file(name + ".size.json");
    Schema schema = new Schema();
    assertThat(schema.faults("$", schema.root("size.schema.json"), JSON.readTree(file.toFile())))
        .isEmpty();
    Ran ran = run(file);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("power", "Variances");
  }

  @Test
  void aPowerThatFallsShortIsNotRoundedUpToWhatIsWanted() throws IOException {
    Ran ran =
        asked(
            "{\"design\": \"split-yard\", \"units\": 10, \"sdOfDifference\": 1, \"difference\": 1, \"margin\": 1}");
    assertThat(ran.out().replaceAll("\\s+", " "))
        .contains(
            "takes 11 yards",
            "10 yards show a difference within ±1 with a power of just under 80 %");
  }

  /** A power below 1 is never told as 1, and a wanted 99.9 % stays what was asked for. */
  @Test
  void aPowerNearOneIsOverNinetyNinePerCent() throws IOException {
    String sure =
        "{\"design\": \"split-yard\", \"units\": 10, \"sdOfDifference\": 1, \"difference\": 1.9, \"margin\": 1.8, \"power\": 0.9999, \"alpha\": 0.025}";
    assertThat(asked(sure).out().replaceAll("\\s+", " "))
        .contains(
            "a power of 99.99 % takes",
            "10 yards find a difference of 1.9 with a power of just under 99.99 %",
            "t tests at 2.5 % each")
        .doesNotContain("100 %", "just under over");
    double power = answer(sure).get("planned").get("equivalencePower").asDouble();
    assertThat(power).isBetween(0.99, 0.9999);
  }

  @Test
  void theAnswerInWordsAndNumbers() throws IOException {
    JsonNode report = JSON.readTree(run(Examples.file("soil-potassium.size.json"), "--json").out());
    assertThat(report.get("words").toString())
        .contains(
            "More cores or dates help down to a floor, beyond which they cannot replace yards",
            "minimum detectable difference",
            "smallest margin of equivalence",
            "where a coin draws each yard's side");
    assertThat(report.get("variances").get(0).get("source").asText()).isNotBlank();
    assertThat(report.get("planned").get("detectableRatio").asDouble())
        .isCloseTo(Math.exp(report.get("planned").get("detectable").asDouble()), within(1e-12));
    double plot = report.get("plotMeanVariance").asDouble();
    assertThat(report.get("differenceVariancePerUnit").asDouble())
        .isCloseTo(2 * plot, within(1e-12));
    assertThat(report.get("moreSampling").get("floor").asDouble())
        .isCloseTo(2 * Math.log(1.04), within(1e-12));
    assertThat(report.get("neededForDifference").get("whole").asInt())
        .isBetween(
            report.get("neededForDifference").get("low").asInt(),
            report.get("neededForDifference").get("high").asInt());
    assertThat(report.get("cores").get("byT").asInt()).isEqualTo(50);
  }

  /** Rows of the reference tables through the command: see README.md of numbers_power. */
  @Test
  void referenceValuesThroughTheCommand() throws IOException {
    JsonNode pairs =
        answer(
            """
            {"design": "split-yard", "sdOfDifference": 1, "difference": 1, "units": 10,
             "rejections": "near-tail"}
            """);
    assertThat(pairs.get("planned").get("powerBothTails").asDouble())
        .isCloseTo(0.803096857, within(5e-10));
    assertThat(pairs.get("neededForDifference").get("exact").asDouble())
        .isCloseTo(9.93786, within(1e-3));
    assertThat(pairs.get("planned").get("detectable").asDouble()).isCloseTo(0.996002, within(1e-4));
    JsonNode yards =
        answer(
            """
            {"design": "split-yard", "difference": 0.3, "units": 20, "dates": 12, "cores": 3,
             "dateCorrelation": 0.5,
             "variances": {"plot": 0.05, "plotByDate": 0.1, "core": 0.3}}
            """);
    assertThat(yards.get("planned").get("power").asDouble()).isCloseTo(0.886756, within(5e-7));
    JsonNode blocks =
        answer(
            """
            {"design": "randomised-block", "arms": 3, "sd": 1, "test": "any", "difference": 1,
             "units": 10}
            """);
    assertThat(blocks.get("planned").get("power").asDouble())
        .isCloseTo(0.4362569301707592, within(1e-9));
    JsonNode groups =
        answer(
            """
            {"design": "independent-groups", "arms": 3, "sd": 1, "test": "any",
             "betweenVariance": 0.5, "units": 3}
            """);
    assertThat(groups.get("planned").get("power").asDouble())
        .isCloseTo(0.21086673235807976, within(1e-9));
  }

  @Test
  void theSameSeedGivesTheSameAnswer() throws IOException {
    String question =
        """
        {"design": "split-yard", "sdOfDifference": 1, "difference": 1, "margin": 1.5, "units": 9,
         "simulate": {"trials": 2000, "seed": %d}}
        """;
    String first = asked(question.formatted(5), "--json").out();
    assertThat(asked(question.formatted(5), "--json").out()).isEqualTo(first);
    assertThat(asked(question.formatted(6), "--json").out()).isNotEqualTo(first);
    JsonNode simulation = JSON.readTree(first).get("simulation");
    assertThat(simulation.get("found").get("error").asDouble()).isBetween(0.005, 0.012);
    assertThat(simulation.get("equivalent").get("share").asDouble()).isBetween(0.5, 1.0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "margin": 0                     | margin: 0 is out of range
          "margin": -1                    | margin: -1 is out of range
          "difference": "0.5"             | difference: "0.5" is not a number
          "difference": 1e300             | difference: 1.0E300 is out of range
          "power": 1                      | power: 1 is out of range
          "alpha": 0                      | alpha: 0 is out of range
          "alpha": 1e-9                   | alpha: 0.000000001 is out of range
          "units": 1                      | 1 yard leaves nothing to judge
          "units": 2.5                    | 2.5 is not a whole number
          "dates": 0                      | dates: 0 is out of range
          "sd": -2                        | sd: -2 is out of range
          "variances": {"plot": -1}       | variances.plot: -1 is out of range
          "variances": {"plod": 1}        | did you mean plot?
          "variances": {"plot": 0}        | where nothing varies
          "outcome": "soil pottasium"     | did you mean soil potassium?
          "design": "split-yrd"           | did you mean split-yard?
          "unitz": 5                      | did you mean units?
          "arms": 3                       | arms: 3 is out of range
          "ratio": 1.2, "scale": "identity" | give difference instead
          "observedDifference": 0.3       | power from an observed difference
          "difference": "from results"    | power from an observed difference
          "trueDifference": 2, "margin": 1 | equivalence is not true
          "simulate": {"trials": 10, "seed": 1} | trials: 10 is out of range
          "simulate": {"trials": 1000}    | simulate.seed: it is missing
          "sides": 3                      | sides: 3 is out of range
          """)
  void everyFaultIsASentence(String fields, String sentence) throws IOException {
    String design = fields.contains("\"design\"") ? "" : "\"design\": \"split-yard\", ";
    Ran ran = asked("{" + design + fields + "}");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(sentence).doesNotContain("\tat ", "Exception");
  }

  @Test
  void allFaultsAreToldAtOnce() throws IOException {
    Ran ran =
        asked("{\"design\": \"latin-squair\", \"alpha\": 0.7, \"sd\": 1, \"cv\": 0.2, \"x\": 1}");
    assertThat(ran.err().lines().count()).isGreaterThanOrEqualTo(4);
    assertThat(ran.err()).contains("did you mean latin-square?", "alpha", "beside sd", "x:");
  }

  @Test
  void aModelThatDoesNotFitTheDesignIsAFault() throws IOException {
    Ran ran =
        asked(
            """
            {"design": "split-yard", "sd": 1, "difference": 1, "units": 8,
             "simulate": {"seed": 1, "model": {"response": "y", "factors": ["treatment"],
               "fixed": ["treatment"]}}}
            """);
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("treatment", "yard, practice, date").doesNotContain("\tat ");
  }

  /** The integrals' steps do not follow the size of a difference that is seen for certain. */
  @Test
  @Timeout(60)
  void anAbsurdDifferenceIsAnsweredAtOnce() throws IOException {
    Ran ran = asked("{\"design\": \"split-yard\", \"sd\": 1, \"difference\": 1e9}");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("2 yards");
  }

  @Test
  void fewYardsAreWarnedOf() throws IOException {
    String question = "{\"design\": \"split-yard\", \"sd\": 1, \"difference\": 5, \"units\": %d}";
    assertThat(asked(question.formatted(4)).out()).contains("Fewer than 6 yards");
    assertThat(asked(question.formatted(7)).out()).contains("Fewer than 8 yards");
    assertThat(asked(question.formatted(8)).out()).doesNotContain("Fewer than");
  }

  @Test
  void theSmallestPIsThatOfTheTestAskedFor() throws IOException {
    String groups =
        "{\"design\": \"independent-groups\", \"sd\": 1.3, \"difference\": 1.7, \"units\": 4, \"sides\": %d}";
    assertThat(asked(groups.formatted(1)).out().replaceAll("\\s+", " "))
        .contains("The smallest one-sided p that drawing lots anew could give", "is 0.0143");
    assertThat(asked(groups.formatted(2)).out().replaceAll("\\s+", " "))
        .contains("The smallest p that drawing lots anew could give", "is 0.0286");
    assertThat(answer(groups.formatted(1)).findValue("smallestP").asDouble())
        .isCloseTo(1 / 70.0, within(1e-12));
    String yards =
        "{\"design\": \"split-yard\", \"sd\": 1, \"difference\": 5, \"units\": 4, \"sides\": 1}";
    assertThat(asked(yards).out().replaceAll("\\s+", " "))
        .contains("Fewer than 5 yards cannot reach p below 0.05", "5 or more by coin, 8 or more");
  }
}
