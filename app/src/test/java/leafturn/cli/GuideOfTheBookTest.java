package leafturn.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.round.DemoBook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that the guide gives for keeping a book do what it says, one after the other. */
class GuideOfTheBookTest {
  private static final Path GUIDE = Path.of("..", "docs", "guide.md");
  private static final String COMMAND = "./leafturn book ";
  private static final List<String> TESTED = List.of("backup", "export", "check", "import");

  @TempDir Path folder;

  @Test
  void everyCommandRuns() throws IOException {
    try (Book book = Book.open(BookPlace.of(folder.resolve("my-lawns")), Clock.systemUTC())) {
      DemoBook.write(book);
    }
    Files.createDirectory(folder.resolve("backups"));
    List<String> commands =
        Files.readAllLines(GUIDE).stream()
            .filter(line -> line.startsWith(COMMAND))
            .map(line -> line.replaceFirst(" +#.*", "").substring(COMMAND.length()))
            .filter(line -> TESTED.contains(line.split(" ", 2)[0]))
            .toList();
    assertThat(commands.stream().map(line -> line.split(" ", 2)[0])).containsAll(TESTED);
    for (String command : commands) {
      String[] arguments =
          Arrays.stream(("book " + command).split(" ")).map(this::inFolder).toArray(String[]::new);
      StringWriter err = new StringWriter();
      int exitCode =
          new LeafturnCommand(new PrintWriter(new StringWriter()), new PrintWriter(err))
              .run(arguments);
      assertThat(exitCode).as("%s: %s", command, err).isZero();
    }
  }

  /** What the guide calls a book, a folder or an archive lies in the test's folder. */
  private String inFolder(String argument) {
    boolean place = argument.matches("my-lawns|backups|new-place|.*\\.zip");
    return place ? folder.resolve(argument).toString() : argument;
  }
}
