package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Another process holds the book and writes to it without pause; this one backs it up. */
class HotBackupProcessTest {
  @TempDir Path folder;

  private final List<Process> holders = new ArrayList<>();

  @AfterEach
  void endWhatWasBegun() throws InterruptedException {
    for (Process holder : holders) {
      holder.destroy();
      holder.waitFor(20, TimeUnit.SECONDS);
    }
  }

  @Test
  @Timeout(120)
  void aBookInUseIsBackedUpCheckedAndExportedWithoutALoss() throws IOException {
    Path bookFolder = folder.resolve("book");
    BufferedReader acknowledged = hold(bookFolder, true);
    BookPlace place = BookPlace.of(bookFolder);
    for (int i = 0; i < 5; i++) {
      long before = Long.parseLong(acknowledged.readLine());
      Keeping.Backup backup =
          Keeping.backUp(place, folder.resolve("backup-" + i + ".zip"), InstantSource.system());
      assertThat(backup.manifest().count("sheets")).isGreaterThanOrEqualTo(before);
      assertThatList(Keeping.check(place, InstantSource.system()).damages()).isEmpty();
    }
    try (Stream<Path> left = Files.list(bookFolder.resolve("questions"))) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  @Timeout(60)
  void aHolderThatDoesNotAnswerIsTold() throws IOException {
    Path bookFolder = folder.resolve("book");
    hold(bookFolder, false);
    assertThatThrownBy(
            () ->
                Keeping.export(
                    BookPlace.of(bookFolder), folder.resolve("x.zip"), InstantSource.system()))
        .isInstanceOf(InputException.class)
        .hasMessageContaining("open in another process that does not answer");
    assertThat(folder.resolve("x.zip")).doesNotExist();
  }

  private BufferedReader hold(Path bookFolder, boolean answering) throws IOException {
    Process holder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Holder.class.getName(),
                bookFolder.toString(),
                Boolean.toString(answering))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    holders.add(holder);
    BufferedReader said =
        new BufferedReader(new InputStreamReader(holder.getInputStream(), StandardCharsets.UTF_8));
    assertThat(said.readLine()).isEqualTo("1");
    return said;
  }

  /** Holds a book, enters one sheet after the other and says how many were acknowledged. */
  static final class Holder {
    public static void main(String[] arguments) {
      Path bookFolder = Path.of(arguments[0]);
      AnySheet any = new AnySheet(1);
      Book book = Book.open(BookPlace.of(bookFolder), InstantSource.system());
      if (Boolean.parseBoolean(arguments[1])) {
        BookDesk.open(book, bookFolder, InstantSource.system());
      }
      for (long count = 1; ; count++) {
        String id = any.id();
        book.write("Ada", writing -> writing.add(Kind.STATION, id, any.station()));
        System.out.println(count);
      }
    }
  }
}
