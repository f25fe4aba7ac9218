package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that the guide gives do what it says, one after the other. */
class GuideTest {
  private static final Path GUIDE = Path.of("..", "docs", "guide.md");
  private static final String COMMAND = "./leafturn ";
  private static final String EXAMPLES = "docs/examples/";

  @TempDir Path folder;

  @Test
  void commandsForKeepingABookRun() throws IOException {
    try (Book book = Book.open(BookPlace.of(folder.resolve("my-lawns")), Clock.systemUTC())) {
      DemoBook.write(book);
    }
    Files.createDirectory(folder.resolve("backups"));
    List<String> commands = commands(line -> line.matches("book (backup|export|check|import) .*"));
    assertThat(commands)
        .map(line -> line.split(" ")[1])
        .contains("backup", "export", "check", "import");
    commands.forEach(this::runs);
  }

  /** But for plans, which take long; PlanCommandTest runs those files. */
  @Test
  void commandsOnExampleFilesRun() throws IOException {
    List<String> commands = commands(line -> line.matches("(weather|season|call|trial) .*"));
    assertThat(commands)
        .map(line -> line.split(" ")[0])
        .contains("weather", "season", "call", "trial");
    commands.forEach(this::runs);
  }

  private static List<String> commands(Predicate<String> wanted) throws IOException {
    return Files.readAllLines(GUIDE).stream()
        .filter(line -> line.startsWith(COMMAND))
        .map(line -> line.replaceFirst(" +#.*", "").substring(COMMAND.length()))
        .filter(wanted)
        .toList();
  }

  private void runs(String command) {
    Ran ran = Ran.of(Arrays.stream(command.split(" ")).map(this::inItsPlace).toList());
    assertThat(ran.exitCode()).as("%s: %s", command, ran.err()).isZero();
  }

  /** Examples lie beside the module; what a command writes lies in the test's folder. */
  private String inItsPlace(String argument) {
    if (argument.startsWith(EXAMPLES)) {
      return Path.of("..", argument).toString();
    }
    String own = argument.startsWith("target/") ? argument.substring("target/".length()) : argument;
    boolean place = !own.equals(argument) || own.matches("my-lawns|backups|new-place|.*\\.zip");
    return place ? folder.resolve(own).toString() : argument;
  }
}
