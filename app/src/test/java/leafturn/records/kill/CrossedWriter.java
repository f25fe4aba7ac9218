package leafturn.records.kill;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;

/**
 * People in the middle of something while somebody else's write fills the disk. Each waits inside a
 * transaction until that is told, and then reads on, gives up or writes what is stale.
 */
final class CrossedWriter {
  static final String ANSWERED = "answered: ";

  private final Book book;
  private final CountDownLatch within = new CountDownLatch(3);
  private final CountDownLatch full = new CountDownLatch(1);

  CrossedWriter(Book book) {
    this.book = book;
  }

  /** Runs the write that fills the disk; tells how each of the others was answered. */
  void cross(Runnable fillsTheDisk, Consumer<String> told) throws InterruptedException {
    List<Thread> people =
        List.of(
            person(told, () -> book.read(reading -> waited(reading).all(Kind.PROPERTY).size())),
            person(
                told,
                () ->
                    book.snapshot(
                        reading -> {
                          waited(reading);
                          throw new IllegalStateException("gave up");
                        })),
            person(told, this::writeStale));
    within.await();
    fillsTheDisk.run();
    full.countDown();
    for (Thread person : people) {
      person.join();
    }
  }

  private Thread person(Consumer<String> told, Runnable work) {
    Thread thread =
        new Thread(
            () -> {
              try {
                work.run();
                told.accept(ANSWERED + "done");
              } catch (RuntimeException e) {
                told.accept(ANSWERED + e.getMessage());
              }
            });
    thread.start();
    return thread;
  }

  private void writeStale() {
    book.write(
        "writer",
        writing -> {
          LawnSheet lawn = waited(writing).all(Kind.LAWN).get(0).content();
          return writing.revise(Kind.LAWN, writing.all(Kind.LAWN).get(0).id(), 99, lawn);
        });
  }

  private BookReading waited(BookReading reading) {
    reading.all(Kind.LAWN);
    within.countDown();
    try {
      full.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return reading;
  }
}
