package leafturn.records;

import static leafturn.records.Examples.faultsOf;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {
  @TempDir private Path folder;

  @Test
  void replacesAFileWholeAndLeavesNothingBeside() throws IOException {
    Path file = folder.resolve("days.csv");
    OutputFile.write(file, "first\n");
    OutputFile.write(file, "second °C\n");
    assertThat(file).hasContent("second °C");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).containsExactly(file);
    }
  }

  @Test
  void refusesAFolder() {
    assertThat(faultsOf(() -> OutputFile.write(folder, "x")))
        .singleElement()
        .asString()
        .contains("this is a folder");
  }

  @Test
  void refusesWhatIsNoFileAndLeavesItAsItIs() throws Exception {
    Path pipe = folder.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    assertThat(faultsOf(() -> OutputFile.write(pipe, "x")))
        .singleElement()
        .asString()
        .contains("no file; give the name of a file to write");
    assertThat(pipe).exists();
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }

  @Test
  void refusesAMissingFolderAndMakesNone() {
    Path missing = folder.resolve("missing");
    assertThat(faultsOf(() -> OutputFile.write(missing.resolve("days.csv"), "x")))
        .singleElement()
        .asString()
        .contains("there is no folder");
    assertThat(missing).doesNotExist();
  }
}
