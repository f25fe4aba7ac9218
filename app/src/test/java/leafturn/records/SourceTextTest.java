package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceTextTest {
  private static final long HUNDRED_MEGABYTES = 100_000_000;

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"lawn", "log", "weather", "round"})
  void refusesAHundredMegabytesByTheirSize(String kind) throws IOException {
    Path file = folder.resolve("huge");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(HUNDRED_MEGABYTES);
    }
    assertThat(
            faultsOf(
                () -> {
                  switch (kind) {
                    case "lawn" -> LawnFile.read(file);
                    case "log" -> LogFile.read(file);
                    case "round" -> RoundFile.read(file);
                    default -> WeatherFile.read(file, WeatherFile.Choice.ONLY_SITE);
                  }
                }))
        .singleElement()
        .asString()
        .contains("huge: it is too large", "MB");
  }

  @Test
  void refusesBytesThatAreNotUtf8() throws IOException {
    Path file = folder.resolve("latin.csv");
    Files.write(file, "date;höhe".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(faultsOf(() -> SourceText.read(file, 1000)))
        .singleElement()
        .asString()
        .contains("not UTF-8");
  }

  @Test
  void refusesAMissingFileAndAFolder() {
    assertThat(faultsOf(() -> SourceText.read(folder.resolve("none.json"), 1000)))
        .singleElement()
        .asString()
        .contains("no such file");
    assertThat(faultsOf(() -> SourceText.read(folder, 1000)))
        .singleElement()
        .asString()
        .contains("folder");
  }

  @Test
  void dropsAByteOrderMark() {
    byte[] bytes = "\uFEFFdate".getBytes(StandardCharsets.UTF_8);
    assertThat(SourceText.of("days.csv", bytes, 1000).text()).isEqualTo("date");
  }

  @Test
  void readsTheExamplesFromTheProgramItself() {
    assertThat(SourceText.ofResource("/leafturn/examples/round.json").text())
        .isEqualTo(Examples.text("round.json").text());
  }
}
