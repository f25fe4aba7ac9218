package leafturn;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a reader may count on in every source file of the project. */
class HouseTidyTest {
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Pattern TEXT =
      Pattern.compile(".*\\.(java|jte|js|css|md|xml|sh|json)|.*/(leafturn|check|run|build)");
  private static final Pattern BUILT = Pattern.compile(".*/(target|\\.git|\\.idea)(/.*)?");
  private static final Pattern MACHINE_PATH =
      Pattern.compile("(?<![\\w.])/(tmp|root|home/\\w+|Users/\\w+|work)/\\w");
  private static final int LONGEST_FILE_LINES = 300;

  @Test
  void noFileNamesAPathOfOneMachine() throws IOException {
    assertThat(textFiles())
        .isNotEmpty()
        .allSatisfy(file -> assertThat(linesOf(file)).as("%s", file).noneMatch(this::namesMachine));
  }

  @Test
  void noJavaFileIsLongerThanAReaderCanHold() throws IOException {
    assertThat(textFiles())
        .filteredOn(file -> file.toString().endsWith(".java"))
        .isNotEmpty()
        .allSatisfy(
            file -> assertThat(linesOf(file)).as("%s", file).hasSizeLessThan(LONGEST_FILE_LINES));
  }

  private boolean namesMachine(String line) {
    return MACHINE_PATH.matcher(line).find();
  }

  private static List<Path> textFiles() throws IOException {
    try (Stream<Path> files = Files.walk(ROOT)) {
      return files
          .filter(file -> !BUILT.matcher("/" + ROOT.relativize(file)).matches())
          .filter(Files::isRegularFile)
          .filter(file -> TEXT.matcher(file.toString()).matches())
          .toList();
    }
  }

  private static List<String> linesOf(Path file) throws IOException {
    return Files.readAllLines(file, StandardCharsets.UTF_8);
  }
}
