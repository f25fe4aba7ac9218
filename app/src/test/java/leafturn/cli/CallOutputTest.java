package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command call prints on a terminal. */
class CallOutputTest {
  private static Ran called(String on, Path log) {
    Ran ran =
        CallCommandsTest.run(
            "call",
            CallCommandsTest.example("linden-house-back.lawn.json"),
            "--weather",
            CallCommandsTest.example("new-york-2012-2015.csv"),
            "--log",
            log.toString(),
            "--on",
            on);
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    return ran;
  }

  private static Path exampleLog() {
    return Path.of(CallCommandsTest.example("linden-house-back.log.csv"));
  }

  private static Path written(Path folder, String rows) throws IOException {
    return Files.writeString(
        folder.resolve("log.csv"), "date,what,height_mm,time,seen\n" + rows + "\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2015-05-28", "2015-08-20"})
  void noLineIsWiderThanATerminal(String on) {
    assertThat(called(on, exampleLog()).out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void aMowingThatNobodyLoggedIsToldAsReckoned(@TempDir Path folder) throws IOException {
    Path log = written(folder, "2015-05-28,observed,90,12:00,dry leaves");
    assertThat(called("2015-05-28", log).words())
        .containsPattern("last mown [A-Z][a-z]+ \\d+ May \\(reckoned from the programme, not")
        .contains("(reckoned, not logged): ");
    assertThat(called("2015-05-28", exampleLog()).words())
        .doesNotContain("(reckoned from the programme, not logged)");
  }

  @Test
  void tallGrassAtRestIsOverAThirdThoughNobodyMowsIt(@TempDir Path folder) throws IOException {
    Path log = written(folder, "2015-07-20,observed,140,10:00,dormant");
    assertThat(called("2015-07-20", log).words())
        .contains("Do not mow, and keep off", "More than a third of the height would come off")
        .doesNotContain("No day in sight");
  }

  @Test
  void ofAPlanThatIsCollectedInPartOnlyThatPartLeaves(@TempDir Path folder) throws IOException {
    Path log = written(folder, "2015-05-28,observed,130,12:00,dry leaves");
    assertThat(called("2015-05-28", log).words())
        .contains("collect the first")
        .containsPattern("These nutrients .*\\d.% leave")
        .contains("taken away in part");
  }
}
