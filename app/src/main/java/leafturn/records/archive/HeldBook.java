package leafturn.records.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.OutputFile;
import leafturn.records.SourceText;
import leafturn.records.archive.BookDoor.Question;
import leafturn.records.archive.BookDoor.Wanted;

/** A folder's book that another process holds, which is asked for what only it can give. */
final class HeldBook {
  private static final Duration TO_BE_TAKEN = Duration.ofSeconds(10);
  private static final Duration TO_BE_ANSWERED = Duration.ofMinutes(30);
  private static final long LOOK_EVERY_MS = 100;
  private static final int MOST_CHECK_BYTES = 100_000_000;

  private final Path folder;
  private final BookDoor door;

  HeldBook(Path folder) {
    this.folder = folder;
    this.door = new BookDoor(folder);
  }

  /**
   * Lets the holder write an archive and puts it where it is wanted.
   *
   * @throws InputException when the holder does not answer or cannot
   */
  void export(Path file) {
    Question question = Question.fresh(Wanted.ARCHIVE);
    try {
      await(question);
      OutputFile.write(file, out -> Files.copy(door.answer(question), out));
    } finally {
      door.forget(question);
    }
  }

  /** Lets the holder check the book. */
  CheckResult check() {
    Question question = Question.fresh(Wanted.CHECK);
    try {
      await(question);
      return CheckResult.read(SourceText.read(door.answer(question), MOST_CHECK_BYTES));
    } finally {
      door.forget(question);
    }
  }

  private void await(Question question) {
    try {
      if (!door.isThere()) {
        throw unanswered();
      }
      door.ask(question);
    } catch (IOException e) {
      throw new InputException(
          "%s: the book is open in another process, which can be asked only by whoever may write there."
              .formatted(folder));
    }
    long begun = System.nanoTime();
    while (!Files.exists(door.answer(question))) {
      Optional<List<String>> refusal = door.refusal(question);
      if (refusal.isPresent()) {
        throw new InputException(refusal.get());
      }
      if (door.unwritten(question)) {
        throw new InputException(
            "%s: the process that holds the book cannot write its answer there; make room on the disk and ask again."
                .formatted(folder));
      }
      Duration waited = Duration.ofNanos(System.nanoTime() - begun);
      Duration most = door.taken(question) ? TO_BE_ANSWERED : TO_BE_TAKEN;
      if (waited.compareTo(most) > 0) {
        throw unanswered();
      }
      pause();
    }
  }

  private InputException unanswered() {
    return new InputException(
        ("%s: the book is open in another process that does not answer; try again, or stop that"
                + " process first.")
            .formatted(folder));
  }

  private static void pause() {
    try {
      Thread.sleep(LOOK_EVERY_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InputException("It was stopped before the answer came; nothing was written.");
    }
  }
}
