package leafturn.records.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The file of a book as a kill between two writes would leave it, looked at far more often than
 * processes can be killed: a copy taken right after a write holds all that was acknowledged,
 * through several lives that each begin with such a copy.
 */
class EveryCommitTest {
  private static final long SEED = Long.getLong("leafturn.seed", 2);
  private static final int LIVES = Integer.getInteger("leafturn.lives", 5);
  private static final int LONGEST_LIFE = 300;

  /** Writes between two looks; a book that is lost at a write is so for several. */
  private static final int LOOK_EVERY = 8;

  private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
  private static final String NOTE = "a remark of some length ".repeat(20);

  @TempDir private Path root;

  private final Random random = new Random(SEED);
  private final List<Sheet<LogSheet>> written = new ArrayList<>();

  @Test
  void whatWasAcknowledgedIsInTheFile() throws IOException {
    Path place = root.resolve("life-0");
    String lawn = begun(place);
    for (int life = 1; life <= LIVES; life++) {
      Path next = root.resolve("life-" + life);
      try (Book book = open(place)) {
        int writes = 1 + random.nextInt(LONGEST_LIFE);
        for (int write = 1; write <= writes; write++) {
          write(book, lawn);
          if (write % LOOK_EVERY == 0) {
            assertThat(lostIn(copied(place, root.resolve("look"))))
                .as("seed %d, life %d, after write %d", SEED, life, write)
                .isEmpty();
          }
        }
        copied(place, next);
      }
      place = next;
    }
  }

  private void write(Book book, String lawn) {
    double waterMm = 1 + random.nextInt(1000) / 10.0;
    LocalDate day = FIRST.plusDays(random.nextInt(700));
    LogSheet entry = new LogSheet(lawn, day, null, new Done.Watered(waterMm), NOTE, List.of());
    if (random.nextInt(4) == 0 && !written.isEmpty()) {
      int place = random.nextInt(written.size());
      Sheet<LogSheet> before = written.get(place);
      written.set(
          place,
          book.write("writer", w -> w.revise(Kind.LOG, before.id(), before.version(), entry)));
    } else {
      String id = new UUID(random.nextLong(), random.nextLong()).toString();
      written.add(book.write("writer", w -> w.add(Kind.LOG, id, entry)));
    }
  }

  /** Ids of entries that the book at a place does not hold in the version that was acknowledged. */
  private List<String> lostIn(Path place) {
    try (Book book = open(place)) {
      Map<String, Integer> kept =
          book.read(reading -> reading.all(Kind.LOG)).stream()
              .collect(Collectors.toMap(Sheet::id, Sheet::version));
      return written.stream()
          .filter(sheet -> kept.getOrDefault(sheet.id(), 0) < sheet.version())
          .map(Sheet::id)
          .toList();
    }
  }

  private static Path copied(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(file -> file.toString().endsWith(".mv.db")).toList()) {
        Files.copy(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    return to;
  }

  private static String begun(Path place) {
    try (Book book = open(place)) {
      DemoBook.write(book);
      return book.read(reading -> reading.all(Kind.LAWN).get(0).id());
    }
  }

  private static Book open(Path place) {
    return Book.open(BookPlace.of(place), Clock.systemUTC());
  }
}
