package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import leafturn.Main;
import leafturn.records.Examples;
import leafturn.records.Mutations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Fifty spoilt files given to the commands as a script would give them, each in its own process:
 * weather, lawns and logs in turn, beside files that are whole.
 */
class SpoiltFilesProcessTest {
  private static final long SEED = 19_530_401;
  private static final int PROCESSES = 50;
  private static final int AT_A_TIME = 2;
  private static final int DAYS_OF_A_YEAR = 365;

  private static final String WEATHER = "weather.csv";
  private static final String LAWN = "lawn.json";
  private static final String LOG = "log.csv";
  private static final String SEASON = "season lawn.json --weather weather.csv";
  private static final String CALL =
      "call lawn.json --weather weather.csv --log log.csv --on 2015-05-28";

  /**
   * One way to give a spoilt file.
   *
   * @param line the command with the names of its files
   * @param spoilt the one that is spoilt
   * @param answer what a result contains
   */
  private record Kind(String line, String spoilt, String answer) {}

  private static final Kind WEATHER_ALONE =
      new Kind("weather weather.csv --latitude 40.78", WEATHER, "By the year");

  private static final List<Kind> KINDS =
      List.of(
          WEATHER_ALONE,
          new Kind(SEASON, LAWN, "Grass and nitrogen"),
          new Kind(CALL, LOG, "Why"),
          WEATHER_ALONE,
          new Kind(SEASON, WEATHER, "Grass and nitrogen"),
          new Kind(CALL, WEATHER, "Why"),
          WEATHER_ALONE,
          new Kind(CALL, LAWN, "Why"));

  @TempDir private Path folder;

  /**
   * How a process ended.
   *
   * @param number which of the fifty
   * @param files the files it was given
   */
  private record Ran(
      int number, Kind kind, List<String> files, int exitCode, String out, String err) {
    String what() {
      return "process %d, %s with %s spoilt: %s".formatted(number, kind.line(), kind.spoilt(), err);
    }

    boolean refused() {
      return exitCode == ExitCode.WRONG_INPUT;
    }
  }

  @Test
  void everyProcessEndsWithAResultOrWithSentences()
      throws IOException, InterruptedException, ExecutionException {
    Map<String, String> whole = wholeFiles();
    ExecutorService pool = Executors.newFixedThreadPool(AT_A_TIME);
    try {
      List<Future<Ran>> runs = new ArrayList<>();
      for (int number = 0; number < PROCESSES; number++) {
        int own = number;
        Kind kind = KINDS.get(number % KINDS.size());
        Map<String, String> files = new TreeMap<>(whole);
        files.compute(kind.spoilt(), (name, text) -> new Mutations(SEED + own).spoil("" + text));
        runs.add(pool.submit(() -> run(own, kind, files)));
      }
      List<Ran> all = new ArrayList<>();
      for (Future<Ran> run : runs) {
        all.add(run.get());
      }
      assertThat(all).allSatisfy(SpoiltFilesProcessTest::check);
      for (String command : List.of("weather", "season", "call")) {
        assertThat(all)
            .filteredOn(ran -> ran.kind().line().startsWith(command))
            .as(command)
            .anyMatch(Ran::refused)
            .anyMatch(ran -> !ran.refused());
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static Map<String, String> wholeFiles() throws IOException {
    List<String> days = Files.readAllLines(Examples.file("new-york-2012-2015.csv"));
    List<String> lastDays = days.subList(days.size() - DAYS_OF_A_YEAR, days.size());
    return Map.of(
        WEATHER,
        days.get(0) + "\n" + String.join("\n", lastDays) + "\n",
        LAWN,
        Files.readString(Examples.file("linden-house-front.lawn.json")),
        LOG,
        Files.readString(Examples.file("linden-house-front.log.csv")));
  }

  private static void check(Ran ran) {
    assertThat(ran.exitCode()).as(ran.what()).isIn(0, 1, 2);
    assertThat(ran.err())
        .as(ran.what())
        .doesNotContain("\tat ")
        .doesNotContain("Exception in thread");
    if (ran.refused()) {
      assertThat(ran.out()).as(ran.what()).isEmpty();
      assertThat(ran.err().lines())
          .as(ran.what())
          .isNotEmpty()
          .allMatch(line -> ran.files().stream().anyMatch(line::startsWith));
    } else {
      assertThat(ran.out()).as(ran.what()).contains(ran.kind().answer());
    }
  }

  private Ran run(int number, Kind kind, Map<String, String> texts)
      throws IOException, InterruptedException {
    Path own = Files.createDirectory(folder.resolve(Integer.toString(number)));
    for (Map.Entry<String, String> file : texts.entrySet()) {
      Files.writeString(own.resolve(file.getKey()), file.getValue());
    }
    List<String> arguments =
        Stream.of(kind.line().split(" "))
            .map(word -> texts.containsKey(word) ? own.resolve(word).toString() : word)
            .toList();
    List<String> command = new ArrayList<>(java());
    command.addAll(arguments);
    Path out = own.resolve("out");
    Path err = own.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    // With it the Java runtime itself writes a line to stderr.
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    Process process = builder.start();
    if (!process.waitFor(1, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("process " + number + " was busy for a minute: " + arguments);
    }
    return new Ran(
        number,
        kind,
        arguments.stream().filter(word -> word.startsWith(own.toString())).toList(),
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private static List<String> java() {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:+UseSerialGC",
        "-XX:TieredStopAtLevel=1",
        "-Xshare:auto",
        "-cp",
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
        Main.class.getName());
  }
}
