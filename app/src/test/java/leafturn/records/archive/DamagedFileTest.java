package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whatever becomes of the bytes of a book's file, a check tells it in sentences. */
class DamagedFileTest {
  private static final int FILES = Integer.getInteger("leafturn.damaged.files", 40);

  @TempDir Path folder;

  @Test
  void aFileThatCannotBeOpenedNamesTheNewestArchive() throws IOException {
    BookPlace place = BookPlace.of(folder.resolve("book"));
    ArchiveShelf shelf = BookPlace.of(folder.resolve("book")).shelf().orElseThrow();
    Files.createDirectories(shelf.folder());
    Path newest = shelf.folder().resolve("book-2026-05-03T02-00-00Z.zip");
    try (Book book = RandomBook.open(place, 3, 10)) {
      BookExport.write(book, newest, RandomBook.clock());
      BookExport.write(
          book, shelf.folder().resolve("book-2026-05-02T02-00-00Z.zip"), RandomBook.clock());
    }
    byte[] bytes = Files.readAllBytes(file());
    java.util.Arrays.fill(bytes, 0, 8192, (byte) 'x');
    Files.write(file(), bytes);
    CheckResult result = Keeping.check(place, RandomBook.clock());
    assertThat(result.sound()).isFalse();
    assertThat(result.damages().get(0))
        .contains("leafturn book import")
        .contains(newest.toString());
  }

  @Test
  @Timeout(300)
  void flippedBytesNeverEndInATrace() throws IOException {
    BookPlace place = BookPlace.of(folder.resolve("book"));
    RandomBook.open(place, 3, 40).close();
    byte[] sound = Files.readAllBytes(file());
    SplittableRandom random = new SplittableRandom(4);
    int told = 0;
    for (int i = 0; i < FILES; i++) {
      byte[] bytes = sound.clone();
      int flips = random.nextInt(1, 200);
      for (int flip = 0; flip < flips; flip++) {
        bytes[random.nextInt(bytes.length)] ^= (byte) random.nextInt(1, 256);
      }
      // A folder for each: the database of a test before may still hold the lock of its file.
      Path spoilt = Files.createDirectories(folder.resolve("spoilt-" + i));
      Files.write(spoilt.resolve("book.mv.db"), bytes);
      CheckResult result = Keeping.check(BookPlace.of(spoilt), RandomBook.clock());
      told += result.sound() ? 0 : 1;
      for (String damage : result.damages()) {
        assertThat(damage.lines()).as("file %d", i).hasSize(1);
      }
    }
    assertThat(told).isGreaterThan(FILES / 2);
  }

  private Path file() {
    return folder.resolve("book").resolve("book.mv.db");
  }
}
