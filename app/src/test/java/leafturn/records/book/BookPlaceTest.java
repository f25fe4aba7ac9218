package leafturn.records.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BookPlaceTest {
  @TempDir Path folder;

  @Test
  void aBookThatCannotBeWrittenToIsToBeCopiedAndAnEmptyFolderIsToBeAnother() {
    assertThat(BookPlace.notWritable(true))
        .contains("even to be read", "Copy the whole folder", "check, export or serve the copy");
    assertThat(BookPlace.notWritable(false)).endsWith("choose another.");
  }

  @Test
  void aFileThatWentAwayIsToldWithItsFolderAndWhatToDo() throws Exception {
    BookPlace place = BookPlace.of(folder);
    try (Book book = Book.open(place, Clock.systemUTC())) {
      assertThat(book.<Boolean>write("Ada", writing -> true)).isTrue();
      Files.move(folder.resolve("book.mv.db"), folder.resolve("away"));
      assertThatThrownBy(() -> book.write("Ada", writing -> true))
          .isInstanceOf(BookUnavailableException.class)
          .hasMessageContaining(folder.toString())
          .hasMessageContaining("Nothing of this was saved")
          .hasMessageContaining("put the folder back");
      Files.move(folder.resolve("away"), folder.resolve("book.mv.db"));
    }
  }

  @Test
  void anotherFilePutInItsPlaceIsToldSoThatNothingIsWrittenIntoTheOldOne() throws Exception {
    try (Book book = Book.open(BookPlace.of(folder), Clock.systemUTC())) {
      Path file = folder.resolve("book.mv.db");
      Files.copy(file, folder.resolve("copy"));
      Files.move(file, folder.resolve("away"));
      Files.move(folder.resolve("copy"), file);
      assertThatThrownBy(() -> book.write("Ada", writing -> true))
          .isInstanceOf(BookUnavailableException.class)
          .hasMessageContaining(folder.toString())
          .hasMessageContaining("somebody replaced it")
          .hasMessageContaining("Nothing of this was saved");
      Files.move(folder.resolve("away"), file, StandardCopyOption.REPLACE_EXISTING);
      assertThat(book.<Boolean>write("Ada", writing -> true)).isTrue();
    }
  }
}
