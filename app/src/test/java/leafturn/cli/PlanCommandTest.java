package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.records.Examples;
import leafturn.records.LawnFile;
import leafturn.records.ProgrammesFile;
import leafturn.records.SourceText;
import leafturn.records.sheet.Schema;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command plan on the example files. */
class PlanCommandTest {
  private static final String WEATHER = Examples.file("new-york-2012-2015.csv").toString();
  private static final Path LAWN = Examples.file("linden-house-front.lawn.json");
  private static final Path PROGRAMMES = Examples.file("linden-house-front.programmes.json");
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  private static Ran plan(String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("plan", LAWN.toString(), "--weather", WEATHER));
    arguments.addAll(List.of(more));
    if (!arguments.contains("--members")) {
      arguments.addAll(List.of("--members", "10"));
    }
    return Ran.of(arguments);
  }

  /** The example without its search, which takes its time. */
  private String withoutSearch() throws IOException {
    Path file = folder.resolve("few.json");
    String text = Files.readString(PROGRAMMES).replace("\"search\": true", "\"search\": false");
    return Files.writeString(file, text).toString();
  }

  private String programmes(String text) throws IOException {
    return Files.writeString(folder.resolve("programmes.json"), text).toString();
  }

  @Test
  void theAnswerStandsFirstThenTheProgrammesTheTradeAndWhatToPutIntoTheLawn() throws IOException {
    Ran ran = plan("--programmes", withoutSearch(), "--adopt", "2");

    assertThat(ran.err()).isEmpty();
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).startsWith("By your aims");
    assertThat(ran.out())
        .containsSubsequence(
            "Against now it",
            "0  As now",
            "All returned, half the feed",
            "No.",
            "Of 4 programmes",
            "Over 10 possible seasons",
            "The record holds 4 years",
            "To adopt number 2",
            "\"byRules\" : true")
        .doesNotContain("members")
        .doesNotContain("\u202f");
  }

  @Test
  void jsonHoldsItsSchema() throws IOException {
    Ran ran = plan("--programmes", withoutSearch(), "--json", "--seed", "3");
    JsonNode document = JSON.readTree(ran.out());
    Schema schema = new Schema();

    assertThat(schema.faults("", schema.root("plan.schema.json"), document)).isEmpty();
    assertThat(document.path("members").intValue()).isEqualTo(10);
    assertThat(document.path("programmes")).hasSize(4);
    assertThat(document.at("/programmes/0/equalGrowthFeedNGPerM2/middle").doubleValue())
        .isEqualTo(document.at("/programmes/0/feedNGPerM2").doubleValue());
    assertThat(document.at("/programmes/1/bags/middle").doubleValue()).isZero();
    assertThat(document.at("/programmes/0/hours/low").doubleValue()).isPositive();
  }

  @Test
  void theSameSeedGivesTheSameDocument() throws IOException {
    String file = withoutSearch();

    assertThat(plan("--programmes", file, "--json").out())
        .isEqualTo(plan("--programmes", file, "--json", "--seed", "1").out());
    assertThat(plan("--programmes", file, "--json").out())
        .isNotEqualTo(plan("--programmes", file, "--json", "--seed", "2").out());
  }

  @Test
  void aProgrammeOfThePlanCanBePutIntoTheLawnDescription() throws IOException {
    JsonNode plan = JSON.readTree(plan("--programmes", withoutSearch(), "--json").out());
    JsonNode lawn = JSON.readTree(LAWN.toFile());
    JsonNode adopted = plan.at("/programmes/3/programme");
    ((ObjectNode) lawn).setAll((ObjectNode) adopted);

    Lawn read = LawnFile.read(new SourceText("LAWN.json", lawn.toString())).lawn();

    Programme present = LawnFile.read(LAWN).lawn().programme();
    assertThat(read.programme())
        .isEqualTo(ProgrammesFile.read(PROGRAMMES, present).programmes().get(2).programme());
  }

  @Test
  void theExampleHoldsItsSchema() throws IOException {
    Schema schema = new Schema();

    assertThat(
            schema.faults(
                "", schema.root("programmes.schema.json"), JSON.readTree(PROGRAMMES.toFile())))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"programmes\": [{}]} | name: it is missing",
        "{\"programmes\": [{\"name\": \"A\"}, {\"name\": \"A\"}]} | is taken by a programme above",
        "{\"programmes\": [{\"name\": \"A\", \"mowing\": {\"heightMm\": 2}}]} | from 3 to 200",
        "{\"programmes\": [{\"name\": \"A\", \"mowing\": {\"heightMmByMonth\": {\"juni\": 80}}}]} | did you mean june",
        "{\"programmes\": [{\"name\": \"A\", \"mowing\": {\"clippings\": {\"byRules\": true, \"returnedShare\": 1}}}]} | keep one of them",
        "{\"programmes\": [{\"name\": \"A\", \"mowing\": {\"from\": \"02-30\"}}]} | not a day of any year",
        "{\"programmes\": [{\"name\": \"Lean\", \"mowing\": {\"heightMm\": 200, \"trigger\": {\"oneThird\": true}, \"from\": \"01-02\", \"to\": \"01-05\"}, \"feeding\": [], \"irrigation\": {\"shareOfDemand\": 0}}], \"search\": false} | \"Lean\" is not mown in any possible season; lower its cut height",
        "{\"programmes\": [{\"name\": \"A\", \"mowing\": {\"from\": \"04-01\", \"to\": \"04-01\"}}]} | mowing.to: the mowing season ends on the day it begins on",
        "{\"rules\": {\"deck-factor\": 3}} | deck-factor-side (2) are out of order",
        "{\"aims\": {\"work\": 11}} | from 0 to 10",
        "{\"aims\": {\"work\": 0}} | no aim has a weight above 0",
        "{\"aims\": {\"wrok\": 1}} | did you mean work",
        "{\"rules\": {\"clump-limit-wet\": 60}} | clump-limit-dry (40) are out of order",
        "{\"rules\": {\"half\": 0.45, \"one-third\": 0.5}} | half (0.45) are out of order",
        "{\"search\": \"yes\"} | give true or false",
        "{\"search\": false} | it holds none, and search is false",
        "{\"programmes\": [], \"search\": false} | it holds none, and search is false",
      })
  void wrongProgrammesAreSentencesAndExitTwo(String text, String fault) throws IOException {
    Ran ran = plan("--programmes", programmes(text));

    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("programmes.json").contains(fault);
  }

  @Test
  void aWrongNameOfAnAimIsOneFault() throws IOException {
    assertThat(plan("--programmes", programmes("{\"aims\": {\"beauty\": 1}}")).err())
        .contains("aims.beauty: there is no such field")
        .doesNotContain("no aim has a weight above 0");
  }

  @Test
  void linesAreNoWiderThanATerminal() throws IOException {
    Ran ran = plan("--programmes", withoutSearch());
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(ran.out()).contains("Now is: ", "water");
  }

  @Test
  void wrongNumbersAreSentences() {
    assertThat(plan("--members", "1000000000").err())
        .contains("10 to 2000")
        .doesNotContain("whole");
    assertThat(plan("--members", "90000000000").err()).contains("is too far from 0");
    assertThat(plan("--members", "3").err()).contains("--members").contains("10 to 2000");
    assertThat(plan("--members", "3").exitCode()).isEqualTo(2);
  }

  @Test
  void aRecordWithoutAWholeYearIsASentence() throws IOException {
    List<String> days = Files.readAllLines(Path.of(WEATHER)).subList(0, 300);
    Path few = Files.write(folder.resolve("few.csv"), days);

    Ran ran = Ran.of("plan", LAWN.toString(), "--weather", few.toString());

    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("few.csv", "whole year", "2012-01-01 to 2012-10-25");
  }

  @Test
  void aNumberThatIsNoneIsASentence() throws IOException {
    Ran ran = plan("--programmes", withoutSearch(), "--adopt", "9");

    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("there is no programme 9").contains("from 0 to 3");
  }
}
