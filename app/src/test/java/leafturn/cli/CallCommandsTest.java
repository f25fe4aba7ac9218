package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.DailyRow;
import leafturn.records.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands call, season and demo on the example files. */
class CallCommandsTest {
  private static final String WEATHER = example("new-york-2012-2015.csv");
  private static final String LAWN = example("linden-house-back.lawn.json");
  private static final String LOG = example("linden-house-back.log.csv");

  static String example(String name) {
    return Examples.file(name).toString();
  }

  static Ran run(String... arguments) {
    DemoCommand demo =
        new DemoCommand(
            where ->
                (book, atTheEnd) -> {
                  book.close();
                  atTheEnd.run();
                  return URI.create("http://127.0.0.1:1/");
                },
            Clock.systemUTC());
    return Ran.with(demo, arguments);
  }

  private static Ran call(String... more) {
    List<String> arguments =
        new ArrayList<>(List.of("call", LAWN, "--weather", WEATHER, "--on", "2015-05-28"));
    arguments.addAll(List.of(more));
    return run(arguments.toArray(String[]::new));
  }

  @Test
  void aForecastIsFollowedAndMembersAndSeedAreTaken() throws JsonProcessingException {
    String forecast = example("forecast.csv");
    JsonNode free = call("--log", LOG, "--members", "60", "--json").json();
    JsonNode told = call("--log", LOG, "--members", "60", "--forecast", forecast, "--json").json();
    JsonNode other = call("--log", LOG, "--members", "60", "--seed", "2", "--json").json();
    assertThat(told.at("/possibleSeasons/count").intValue()).isEqualTo(60);
    assertThat(told.at("/possibleSeasons/madeFrom").textValue())
        .contains("following a forecast until 4 June");
    assertThat(told.at("/outlook/toCome/3/wetDayFraction").doubleValue())
        .isGreaterThan(free.at("/outlook/toCome/3/wetDayFraction").doubleValue() + 0.2);
    assertThat(other.get("mowBy")).isNotEqualTo(free.get("mowBy"));
  }

  @Test
  void aForecastThatCannotBeFollowedIsAFault() throws IOException {
    Path late = Files.createTempFile("late", ".csv");
    Files.writeString(late, "date,temp_max,temp_min,rain_mm\n2015-06-03,20,10,0\n");
    Ran run = call("--forecast", late.toString());
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains(
            "the forecast begins on 2015-06-03", "2015-05-29, the day after", "nothing is guessed");
    assertThat(call("--members", "0").err()).contains("--members", "from 1 to 2000, but is 0");
    assertThat(call("--seed", "x").err()).contains("\"x\" is not a whole number");
    assertThat(call("--rule", "wet").err())
        .contains("option '--rule'", "\"wet\" is not NAME=VALUE");
  }

  @Test
  void theCallStandsFirstThenItsReasonsChoicesAndNotes() {
    Ran ran = call("--log", LOG);
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.err()).isEmpty();
    List<String> lines = ran.out().lines().toList();
    assertThat(lines.get(0)).isEqualTo("Mow today and return the clippings.");
    assertThat(ran.out())
        .containsSubsequence(
            "Thursday 28 May 2015: stands at ",
            "Why",
            "of the height",
            "[limit a third; Crider 1955",
            "Choices",
            "A  Today, return  <- best choice",
            "B  Today, collect",
            "Clumps",
            "What would change this answer",
            "Take care",
            "Assumed, corrected, not known");
    assertThat(lines).allMatch(line -> line.length() <= 120);
  }

  @Test
  void anOptionThatIsGivenTwiceIsAFault() {
    assertThat(call("--rule", "clumps=0.5", "--rule", "clumps=1.5").err())
        .contains("--rule: clumps is set twice, to 0.5 and to 1.5; give it once.");
    assertThat(call("--rule", "clumps=x").err()).contains("\"x\" is not a number");
    for (String option : List.of("--seed=1", "--members=60", "--log=" + LOG, "--json")) {
      Ran twice = call(option, option);
      assertThat(twice.exitCode()).isEqualTo(2);
      assertThat(twice.err()).contains("should be specified only once");
      assertThat(twice.out()).isEmpty();
    }
  }

  @Test
  void theJsonOfACallHoldsAllThatThePageShows() throws JsonProcessingException {
    JsonNode call = call("--log", LOG, "--json").json();
    assertThat(call.get("on").textValue()).isEqualTo("2015-05-28");
    assertThat(call.get("choice").textValue()).isEqualTo("MOW_AND_RETURN");
    assertThat(call.at("/reasons/0/ruleId").textValue()).isEqualTo("one-third");
    assertThat(call.at("/options/0/best").booleanValue()).isTrue();
    assertThat(call.at("/options/0/outcome/clumpIndex/middle").doubleValue()).isBetween(0.3, 0.6);
    assertThat(call.at("/options/1/outcome/daysToHalf").isNull()).isTrue();
    assertThat(call.at("/possibleSeasons/count").intValue()).isEqualTo(200);
    assertThat(call.get("waits")).hasSize(7);
    assertThat(call.at("/outlook/past/0/heightBeforeCutMm").isNull()).isTrue();
  }

  @Test
  void aCallWithoutALogFollowsTheProgramme() {
    assertThat(call().words()).contains("the lawn was kept by its programme up to today");
  }

  @Test
  void aRuleThatIsSetIsUsedAndNamed() throws JsonProcessingException {
    JsonNode call =
        call("--log", LOG, "--rule", "deck-factor=2", "--rule", "clumps=0.5", "--json").json();
    assertThat(call.get("choice").textValue()).isEqualTo("RAISE_AND_CUT_TWICE");
    assertThat(call.at("/reasons/0/ruleId").textValue()).isEqualTo("clumps");
    assertThat(call.at("/reasons/0/source").textValue()).contains("set by hand; usual 1");
    assertThat(call.at("/limits/clumpIndex").doubleValue()).isEqualTo(0.5);
  }

  @Test
  void theSeasonHasTheFieldsThatScriptsRelyOn() throws JsonProcessingException {
    JsonNode season = run("season", LAWN, "--weather", WEATHER, "--json").json();
    assertThat(season.get("years")).hasSize(4);
    List<String> fields = new ArrayList<>();
    season.at("/years/0").fieldNames().forEachRemaining(fields::add);
    assertThat(fields)
        .startsWith(
            "year",
            "clippingsDryKgPerHa",
            "clippingsNKgPerHa",
            "mowings",
            "returnedDryKgPerHa",
            "leachedNKgPerHa",
            "volatilisedNKgPerHa",
            "denitrifiedNKgPerHa",
            "evapotranspirationMm",
            "drainageMm",
            "runoffMm",
            "irrigationMm",
            "thatchMm",
            "soilPhosphorusPpm",
            "soilPotassiumPpm");
    for (String balance : List.of("waterMm", "cGPerM2", "nGPerM2", "pGPerM2", "kGPerM2")) {
      assertThat(season.at("/balanceWorstError/" + balance).doubleValue()).isBetween(0.0, 1e-9);
    }
  }

  @Test
  void theSeasonAsTextHasALineForEachYearAndTheirMean() {
    Ran ran = run("season", LAWN, "--weather", WEATHER);
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out().lines().filter(line -> line.startsWith("2014"))).hasSize(2);
    assertThat(ran.out().lines().filter(line -> line.startsWith("mean"))).hasSize(2);
    assertThat(ran.out()).contains("Largest error of a day's balance");
  }

  @Test
  void aSeasonByTheRulesSaysThatAllWasReturned(@TempDir Path folder) throws IOException {
    Path byRules = folder.resolve("by-rules.json");
    String lawn = Files.readString(Path.of(LAWN));
    Files.writeString(
        byRules,
        lawn.replaceFirst("\"clippings\": *\\{[^}]*}", "\"clippings\": {\"byRules\": true}"));
    Ran ran = run("season", byRules.toString(), "--weather", WEATHER);
    assertThat(ran.out()).contains("Note: The clippings are decided by the rules at each mowing");
    assertThat(run("season", LAWN, "--weather", WEATHER).out()).doesNotContain("by the rules");
  }

  @Test
  void everyDayIsWrittenInFullPrecision(@TempDir Path folder) throws IOException {
    Path days = folder.resolve("days.csv");
    Ran ran = run("season", LAWN, "--weather", WEATHER, "--json", "--daily", days.toString());
    List<String> lines = Files.readAllLines(days);
    assertThat(lines).hasSize(1 + 1461);
    assertThat(lines.get(0)).isEqualTo("date," + String.join(",", DailyRow.names()));
    String[] last = lines.get(1461).split(",", -1);
    assertThat(last[0]).isEqualTo("2015-12-31");
    int thatch = DailyRow.names().indexOf("thatch_mm") + 1;
    assertThat(Double.parseDouble(last[thatch]))
        .isEqualTo(ran.json().at("/years/3/thatchMm").doubleValue());
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(days);
    }
  }

  @Test
  void nothingIsWrittenWhereAnInputIsWrong(@TempDir Path folder) {
    Path days = folder.resolve("days.csv");
    Ran ran = run("season", "none.json", "--weather", "none.csv", "--daily", days.toString());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err().lines()).hasSize(2);
    assertThat(days).doesNotExist();
  }

  @Test
  void aShortRecordCannotSpinUp(@TempDir Path folder) throws IOException {
    Path weather = folder.resolve("short.csv");
    Files.write(weather, Files.readAllLines(Path.of(WEATHER)).subList(0, 300));
    Ran ran = run("season", LAWN, "--weather", weather.toString());
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("spin-up needs a whole year", "spinUpYears to 0");
  }

  @Test
  void theDemoPrintsItsRound() {
    Ran ran = run("demo", "--print");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .startsWith("Wren Ashdown's round on Thursday 28 May 2015")
        .contains("invented", "Linden House, Front lawn", "Heron Bank, Play lawn", "no forecast");
  }

  @Test
  void theDemoTellsWhereItServes() {
    Ran ran = run("demo", "--port", "0");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out()).contains("Open http://127.0.0.1:1/ in a browser");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          call LAWN --weather WEATHER                       | --on is missing
          call LAWN --on 2015-05-28                         | --weather is missing
          call LAWN --weather WEATHER --on 2015-02-30       | give a day that exists
          call LAWN --weather WEATHER --on 2019-01-01       | must lie on 2016-01-01 or earlier
          call LAWN --weather WEATHER --on 2015-05-28 --rule half=7 | half is 7, but must lie from 0.4 to 0.7
          call LAWN --weather WEATHER --on 2015-05-28 --rule hlf=0.5 | no rule named hlf
          season LAWN --weather WEATHER --daily .           | this is a folder
          demo --port 70000                                 | must lie from 0 to 65535
          """)
  void wrongInputIsOneSentenceAndExitTwo(String line, String words) {
    Ran ran = run(line.replace("LAWN", LAWN).replace("WEATHER", WEATHER).split(" "));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(words);
    assertThat(ran.err().lines()).hasSize(1);
  }
}
