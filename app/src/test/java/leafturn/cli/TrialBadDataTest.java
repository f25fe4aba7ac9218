package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import leafturn.records.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with the data of a trial is a sentence: no trace of the program, no silent NaN. */
class TrialBadDataTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private Ran analyse(String data, String model, String... more) throws IOException {
    Path table = Files.writeString(folder.resolve("data.csv"), data);
    Path asked = Files.writeString(folder.resolve("model.json"), model);
    Ran ran = Ran.of(List.of("trial", "analyse", table.toString(), asked.toString()), more);
    assertThat(ran.err()).doesNotContain("\tat ", "Exception");
    assertThat(ran.out()).doesNotContain("NaN", "Infinity");
    return ran;
  }

  private static String data() throws IOException {
    return Files.readString(Examples.file("split-yard.csv"));
  }

  private static String model() throws IOException {
    return Files.readString(Examples.file("split-yard.model.json"));
  }

  /** The rows of the example, each changed; an empty one is left out. */
  private static String changed(UnaryOperator<String> change) throws IOException {
    List<String> lines = data().lines().toList();
    StringBuilder text = new StringBuilder(lines.get(0)).append('\n');
    for (String line : lines.subList(1, lines.size())) {
      String row = change.apply(line);
      text.append(row).append(row.isEmpty() ? "" : "\n");
    }
    return text.toString();
  }

  private void refused(String data, String... sentence) throws IOException {
    Ran ran = analyse(data, model());
    assertThat(ran.exitCode()).as(ran.out()).isEqualTo(2);
    assertThat(ran.err()).contains(sentence);
    Path report = folder.resolve("report.html");
    assertThat(analyse(data, model(), "--report", report.toString()).exitCode()).isEqualTo(2);
    assertThat(report).doesNotExist();
  }

  private static String with(String row, String value) {
    return row.substring(0, row.lastIndexOf(',') + 1) + value;
  }

  @Test
  void aPlotAndDateThatStandTwiceAreTold() throws IOException {
    refused(
        data() + "yard 1,collected,2026-06-15,130\n",
        "yard 1, practice collected, date 2026-06-15: potassium_ppm stands on lines 3 and 66 as 124 and 130");
  }

  /** The example has no overTime: its dates are levels of a factor, all of which must be dates. */
  @Test
  void aDateThatTheCalendarHasNotIsRefused() throws IOException {
    refused(
        changed(row -> row.startsWith("yard 2,") ? row.replace("2026-06-15", "2026-13-01") : row),
        "date is '2026-13-01', which is no date of the calendar");
  }

  @Test
  void oneLevelOneYardOrAnArmWithoutValues() throws IOException {
    refused(changed(row -> row.contains("returned") ? "" : row), "one level", "'collected'");
    refused(changed(row -> row.startsWith("yard 1,") ? row : ""), "a single group");
    refused(
        changed(row -> row.contains("returned") ? with(row, "") : row),
        "practice has one level among the usable rows, 'collected'");
  }

  /** Dates of one yard are no replicates of what its halves were given. */
  @Test
  void oneYardSplitOnceGetsNoTestOfItsTreatment() throws IOException {
    String one = changed(row -> row.startsWith("yard 1,") ? row : "");
    String model =
        model()
            .replaceFirst("\"random\": .*\n", "\"random\": [],\n")
            .replace(", \"practice*date\"", "")
            .replace("\"kind\"", "\"yard\": \"yard\", \"kind\"");
    JsonNode told = JSON.readTree(analyse(one, model, "--json").out());
    assertThat(told.path("tests").get(0).path("term").asText()).isEqualTo("practice");
    assertThat(told.path("tests").get(0).path("p").isNull()).isTrue();
    assertThat(told.path("tests").get(1).path("p").isNumber()).isTrue();
    assertThat(told.path("contrasts").get(0).path("difference").isNumber()).isTrue();
    assertThat(told.path("contrasts").get(0).path("pAdjusted").isNull()).isTrue();
    assertThat(told.path("warnings").get(0).asText()).contains("There is one yard");
    assertThat(told.path("means")).isNotEmpty();
    for (JsonNode mean : told.path("means")) {
      assertThat(mean.path("mean").isNumber()).isTrue();
      for (String left : List.of("se", "lower", "upper", "letters")) {
        assertThat(mean.path(left).isNull()).as(left).isTrue();
      }
    }
    assertThat(told.path("warnings").toString()).doesNotContain("share a letter");
    assertThat(analyse(one, model).out())
        .contains("not tested", "There is one yard", "that of the model's means, to which every");
    Path report = folder.resolve("one.html");
    assertThat(analyse(one, model, "--report", report.toString()).exitCode()).isZero();
    assertThat(Files.readString(report))
        .contains("One yard split once", "The tests and intervals of this model are left out")
        .contains("(mean over the season by trapezoids between dates; ")
        .doesNotContain("p =", "adjusted p");
  }

  @Test
  void allEqualOrAllMissing() throws IOException {
    refused(changed(row -> with(row, "120")), "All 64 values of potassium_ppm are 120");
    refused(changed(row -> with(row, "")), "No row has potassium_ppm");
  }

  @Test
  void treatmentAndYardThatAlwaysGoTogether() throws IOException {
    refused(
        changed(row -> row.charAt(5) < '5' == row.contains("collected") ? row : ""),
        "form the same groups");
  }

  @Test
  void textOrOtherUnitsAmongNumbers() throws IOException {
    refused(changed(row -> row.endsWith(",124") ? with(row, "high") : row), "ine 3", "high");
    refused(changed(row -> row.endsWith(",124") ? with(row, "124 mg/kg") : row), "124 mg/kg");
    String units =
        changed(row -> row + (row.startsWith("yard 1,") ? ",lb/acre" : ",mg/kg"))
            .replaceFirst("\n", ",unit\n");
    refused(units, "Column 'unit' holds 2 units (lb/acre, mg/kg)");
  }

  @Test
  void moreTreatmentsThanPlotsCanTell() throws IOException {
    StringBuilder plots = new StringBuilder("plot,arm,quality\n");
    for (int plot = 1; plot <= 8; plot++) {
      plots.append("%d,arm %d,%d\n".formatted(plot, plot, 3 + plot % 5));
    }
    String arms =
        "[\"arm 1\",\"arm 2\",\"arm 3\",\"arm 4\",\"arm 5\",\"arm 6\",\"arm 7\",\"arm 8\"";
    String model = "{\"response\": \"quality\", \"factors\": [\"arm\"], \"fixed\": [\"arm\"]";
    Ran each = analyse(plots.toString(), model + "}");
    assertThat(each.exitCode()).isEqualTo(2);
    assertThat(each.err()).contains("8 observations carry 8 coefficients");
    Ran ten =
        analyse(
            plots.toString(),
            model + ", \"levels\": {\"arm\": " + arms + ",\"arm 9\",\"arm 10\"]}}");
    assertThat(ten.exitCode()).isEqualTo(2);
    assertThat(ten.err()).contains("'arm 9', which no row of the data holds", "'arm 10'");
  }

  @Test
  void aHugeValueIsTold() throws IOException {
    refused(
        changed(row -> row.endsWith(",124") ? with(row, "1e300") : row),
        "Line 3: potassium_ppm is 1e300, beyond what can be measured");
  }

  @Test
  void theOrderOfRowsAndDatesDoesNotMatter() throws IOException {
    List<String> lines = data().lines().toList();
    List<String> rows = new ArrayList<>(lines.subList(1, lines.size()));
    Collections.shuffle(rows, new Random(20260401));
    String shuffled = lines.get(0) + "\n" + String.join("\n", rows) + "\n";
    JsonNode inOrder = JSON.readTree(analyse(data(), model(), "--json").out());
    JsonNode other = JSON.readTree(analyse(shuffled, model(), "--json").out());
    for (int i = 0; i < 4; i++) {
      JsonNode one = inOrder.path("contrasts").get(i);
      JsonNode two = other.path("contrasts").get(i);
      assertThat(two.path("within")).isEqualTo(one.path("within"));
      assertThat(two.path("difference").asDouble())
          .isCloseTo(one.path("difference").asDouble(), within(1e-9));
    }
  }

  /** The section of the trial is for the document: a model that cannot fill it is analysed. */
  @Test
  void aPlainAnalysisDoesWithoutTheColumnsOfTheTrial() throws IOException {
    String bare =
        """
        {"response": "potassium_ppm", "factors": ["practice", "date"],
         "fixed": ["practice", "date", "practice*date"], "random": [],
         "compare": {"factor": "practice", "within": "date"},
         "trial": {"margin": 10, "kind": "soil", "unit": "mg/kg"}}
        """;
    Ran plain = analyse(data(), bare);
    assertThat(plain.exitCode()).as(plain.err()).isZero();
    assertThat(plain.out().replaceAll("\\s+", " "))
        .contains("no random term holds the rows of one unit together");
    String report = folder.resolve("bare.html").toString();
    assertThat(analyse(data(), bare, "--report", report).err())
        .contains("trial.yard", "it is missing");
    String log = bare.replace("[],", "[], \"scale\": \"log\",").replace("10,", "1.1,");
    Ran negative = analyse(changed(line -> line.replaceAll(",115$", ",-115")), log);
    assertThat(negative.exitCode()).isEqualTo(2);
    assertThat(negative.err()).contains("is -115, which has no logarithm");
    assertThat(analyse(data(), log.replace("1.1,", "0.5,")).err()).contains("trial.margin");
  }
}
