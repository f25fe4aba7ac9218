package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import leafturn.records.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine.Command;

class CommandsTest {
  private static final String WEATHER = Examples.file("new-york-2012-2015.csv").toString();

  @Test
  void tellsWeatherByMonthAndYear() {
    Ran ran = Ran.of("weather", WEATHER, "--latitude", "40.78", "--elevation", "40");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .contains("New York: 1461 days from 2012-01-01 to 2015-12-31")
        .contains("No day is missing.", "2012-03-27", "2012-11-06", "1012.5")
        .contains("January", "December", "temperatures alone");
  }

  @Test
  void aServerThatCannotStartBeginsNoBook(@TempDir Path folder) {
    Path book = folder.resolve("book");
    ServeCommand serve =
        new ServeCommand(
            where -> (opened, atTheEnd) -> URI.create("https://x/"), Clock.systemUTC());
    String[] tls = {"serve", "--book", book.toString(), "--tls", "cert.pem", "key.pem"};
    Ran others = Ran.with(serve, tls);
    assertThat(others.exitCode()).isEqualTo(2);
    assertThat(others.err()).contains("Nobody can sign in to this book yet", "leafturn book owner");
    Ran proxied = Ran.with(serve, "serve", "--book", book.toString(), "--behind-proxy", "::1");
    assertThat(proxied.exitCode()).isEqualTo(2);
    Ran nowhere = Ran.with(serve, "serve", "--book", " ");
    assertThat(nowhere.exitCode()).isEqualTo(2);
    assertThat(nowhere.err()).contains("The place of the book is empty; give a folder");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void tellsWeatherAsOneJsonDocument() throws JsonProcessingException {
    Ran ran = Ran.of("weather", "--json", WEATHER);
    JsonNode report = new ObjectMapper().readTree(ran.out());
    assertThat(ran.exitCode()).isZero();
    assertThat(report.get("days").intValue()).isEqualTo(1461);
    assertThat(report.get("months")).hasSize(48);
    assertThat(report.at("/months/0/referenceEtMm").isNull()).isTrue();
    assertThat(report.at("/years/3/firstFrostFromJuly").textValue()).isEqualTo("2015-11-24");
  }

  @Test
  void tellsDegreeDaysAndTheHoursOfTheLastDay() throws JsonProcessingException {
    String[] place = {
      "--latitude", "40.78", "--longitude", "-73.97", "--time-zone", "America/New_York"
    };
    List<String> arguments = new ArrayList<>(List.of("weather", WEATHER));
    arguments.addAll(List.of(place));
    assertThat(Ran.of(arguments).out())
        .contains("5120.5", "2140.5", "Grass on 2015-12-31: wet with rain until about 13")
        .contains("clock of America/New_York");
    arguments.add("--json");
    JsonNode hours = new ObjectMapper().readTree(Ran.of(arguments).out()).at("/lastDayHours/hours");
    assertThat(hours.at("/days/0/hours")).hasSize(24);
    assertThat(hours.at("/days/0/fit/0/from").intValue()).isEqualTo(13);
    assertThat(hours.at("/timeZone").textValue()).isEqualTo("America/New_York");
    Ran wrong = Ran.of("weather", WEATHER, "--latitude", "40", "--time-zone", "Foo/Bar");
    assertThat(wrong.exitCode()).isEqualTo(2);
    assertThat(wrong.err()).contains("--time-zone", "Foo/Bar", "IANA name");
  }

  @Test
  void tellsAParameterAndItsSource() throws JsonProcessingException {
    assertThat(Ran.of("sources", "gmax").out()).contains("tall fescue: 19", "(12 to 24)", "tuned");
    JsonNode all = new ObjectMapper().readTree(Ran.of("sources", "--json").out());
    assertThat(all.get("parameters").size()).isGreaterThan(100);
    assertThat(all.at("/parameters/0/source").textValue()).isNotBlank();
  }

  @Test
  void tellsARuleOfTheCallAndItsSource() throws JsonProcessingException {
    assertThat(Ran.of("sources", "clump-limit-dry").out())
        .contains("40 g/m2 (10 to 100)", "assumed", "our judgement");
    JsonNode rules = new ObjectMapper().readTree(Ran.of("sources", "--json").out()).get("rules");
    assertThat(rules.get(0).get("name").textValue()).isEqualTo("season");
    assertThat(rules.get(0).get("threshold").isNull()).isTrue();
  }

  @Test
  void tellsWhatTheModelGetsWrong() throws JsonProcessingException {
    assertThat(Ran.of("sources", "saving").out())
        .contains("saving: Returning clippings saves too much feed", "upper bound", "qian2003");
    assertThat(Ran.of("sources").out()).contains("What the model gets wrong", "fewer-mowings: ");
    JsonNode shortcomings =
        new ObjectMapper().readTree(Ran.of("sources", "--json").out()).get("shortcomings");
    assertThat(shortcomings.get(0).get("name").textValue()).isEqualTo("no-feed");
    assertThat(shortcomings.get(0).get("sources").get(0).textValue()).isEqualTo("kopp2002");
  }

  @Test
  void helpAndVersionGoToStandardOutput() {
    assertThat(Ran.of("--version").out()).matches("leafturn \\d+\\.\\d+\\.\\d+\\R");
    assertThat(Ran.of().out()).contains("weather", "sources", "Exit code");
    Ran help = Ran.of("weather", "--help");
    assertThat(help.exitCode()).isZero();
    assertThat(help.out()).contains("--fill", "Example:");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          wether                           | did you mean weather?
          xyzzy                            | no command 'xyzzy'
          weather                          | FILE is missing
          weather a b                      | no argument 'b'
          weather a --jsn                  | did you mean --json?
          weather a --site                 | --site
          weather a --latitude north       | "north" is not a number
          weather a --latitude 95          | must lie from -90
          weather a --latitude 1 --elevation NaN | "NaN" is not a number
          weather none.csv                 | none.csv: there is no such file
          weather .                        | this is a folder
          sources gmx                      | did you mean gmax?
          sources one-thrid                | did you mean one-third?
          sources savings                  | did you mean saving?
          """)
  void wrongArgumentsAreOneSentenceAndExitTwo(String line, String words) {
    Ran ran = Ran.of(line.split(" "));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains(words);
    assertThat(ran.err().lines()).hasSize(1);
  }

  @Test
  void aFaultOfTheProgramIsOneSentenceAndExitThree() {
    @Command(name = "broken")
    class Broken implements Callable<Integer> {
      @Override
      public Integer call() {
        throw new IllegalStateException("first line\nsecond line");
      }
    }

    Ran ran = Ran.with(new Broken(), "broken");
    assertThat(ran.exitCode()).isEqualTo(3);
    assertThat(ran.err()).contains("fault of the program", "first line");
    assertThat(ran.err().lines()).hasSize(1);
  }

  @Test
  void anEndlessRecursionIsOneSentenceToo() {
    @Command(name = "endless")
    class Endless implements Callable<Integer> {
      @Override
      @SuppressWarnings("InfiniteRecursion")
      public Integer call() {
        return call() + 1;
      }
    }

    Ran ran = Ran.with(new Endless(), "endless");
    assertThat(ran.exitCode()).isEqualTo(3);
    assertThat(ran.err().lines()).hasSize(1);
  }
}
