package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import leafturn.Main;
import leafturn.records.Examples;
import leafturn.records.Mutations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty spoilt files given to the command as a script would give them, each in its own process. */
class SpoiltFilesProcessTest {
  private static final long SEED = 19_530_401;
  private static final int PROCESSES = 50;
  private static final int AT_A_TIME = 2;
  private static final int KEPT_LINES = 400;

  @TempDir private Path folder;

  private record Ran(String file, int exitCode, String out, String err) {}

  @Test
  void everyProcessEndsWithAResultOrWithSentences()
      throws IOException, InterruptedException, ExecutionException {
    String original = firstLines(Examples.file("new-york-2012-2015.csv"));
    ExecutorService pool = Executors.newFixedThreadPool(AT_A_TIME);
    try {
      List<Future<Ran>> runs = new ArrayList<>();
      for (int process = 0; process < PROCESSES; process++) {
        Path file = folder.resolve("spoilt-%d.csv".formatted(process));
        Files.writeString(file, new Mutations(SEED + process).spoil(original));
        runs.add(pool.submit(() -> run(file)));
      }
      int refused = 0;
      for (Future<Ran> run : runs) {
        check(run.get());
        refused += run.get().exitCode() == ExitCode.WRONG_INPUT ? 1 : 0;
      }
      assertThat(refused).isBetween(1, PROCESSES - 1);
    } finally {
      pool.shutdownNow();
    }
  }

  private static String firstLines(Path file) throws IOException {
    return String.join("\n", Files.readAllLines(file).subList(0, KEPT_LINES)) + "\n";
  }

  private static void check(Ran ran) {
    assertThat(ran.exitCode()).as("%s: %s", ran.file(), ran.err()).isIn(0, 1, 2);
    assertThat(ran.err())
        .as(ran.file())
        .doesNotContain("\tat ")
        .doesNotContain("Exception in thread");
    if (ran.exitCode() == ExitCode.WRONG_INPUT) {
      assertThat(ran.out()).as(ran.file()).isEmpty();
      assertThat(ran.err().lines())
          .as(ran.file())
          .isNotEmpty()
          .allSatisfy(line -> assertThat(line).startsWith(ran.file()));
    } else {
      assertThat(ran.out()).as(ran.file()).contains("By the year");
    }
  }

  private Ran run(Path file) throws IOException, InterruptedException {
    Path out = folder.resolve(file.getFileName() + ".out");
    Path err = folder.resolve(file.getFileName() + ".err");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                Main.class.getName(),
                "weather",
                file.toString(),
                "--latitude",
                "40.78")
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    if (!process.waitFor(1, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError(file + " kept the command busy for a minute");
    }
    return new Ran(
        file.toString(),
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }
}
