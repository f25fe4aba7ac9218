package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import leafturn.records.InputException;
import leafturn.records.archive.BookDoor.Question;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Another process holds the book and cannot write its answer, as on a disk that is full. */
class HeldBookTest {
  @TempDir private Path folder;

  @Test
  @Timeout(30)
  void anAnswerThatCannotBeWrittenIsToldAtOnce() throws IOException {
    BookDoor door = new BookDoor(folder);
    door.make();
    CompletableFuture<Void> holder = CompletableFuture.runAsync(() -> failToAnswer(door));
    assertThatThrownBy(() -> new HeldBook(folder).check())
        .isInstanceOf(InputException.class)
        .hasMessageContaining("cannot write its answer there; make room on the disk");
    holder.join();
    assertThat(door.waiting()).isEmpty();
  }

  private void failToAnswer(BookDoor door) {
    List<Question> waiting = door.waiting();
    while (waiting.isEmpty()) {
      Thread.onSpinWait();
      waiting = door.waiting();
    }
    Question question = waiting.get(0);
    try {
      // A folder in the place of the file stands for a disk that takes nothing.
      Files.createDirectory(folder.resolve("questions").resolve(question.id() + ".part"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(door.take(question)).isTrue();
    assertThatThrownBy(() -> door.refuse(question, List.of("no room")))
        .isInstanceOf(IOException.class);
  }
}
