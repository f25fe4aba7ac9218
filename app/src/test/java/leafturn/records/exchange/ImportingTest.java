package leafturn.records.exchange;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that import into a book of their own, begun afresh for each of them. */
abstract class ImportingTest {
  @TempDir Path folder;
  ImportBook book;

  @BeforeEach
  void open() {
    book = new ImportBook(folder);
  }

  @AfterEach
  void close() {
    book.close();
  }
}
