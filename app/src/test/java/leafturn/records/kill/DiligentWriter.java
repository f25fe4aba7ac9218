package leafturn.records.kill;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;

/**
 * A process that writes log entries as fast as it can until it is killed: {@code DiligentWriter
 * PLACE LAWN SEED}. It tells of each that the book has acknowledged, in one line: the id, the
 * version and the water given. Where the book refuses, it tells why and ends; started with a fourth
 * argument, "on", it tells why once and tries again with other entries until {@link #GOES_ON} many
 * were acknowledged; with "crossed", others are in the middle of something meanwhile.
 */
public final class DiligentWriter {
  static final String READY = "ready";
  static final String REFUSED = "refused: ";
  static final int GOES_ON = 20;

  private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
  private static final String NOTE = "a remark of some length ".repeat(20);

  private final Book book;
  private final String lawn;
  private final Random random;
  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final List<Sheet<LogSheet>> written = new ArrayList<>();

  private DiligentWriter(Book book, String lawn, long seed) {
    this.book = book;
    this.lawn = lawn;
    this.random = new Random(seed);
  }

  /** Writes until it is killed. */
  public static void main(String[] arguments) throws InterruptedException {
    try (Book book = Book.open(BookPlace.of(arguments[0]), Clock.systemUTC())) {
      DiligentWriter writer = new DiligentWriter(book, arguments[1], Long.parseLong(arguments[2]));
      String more = arguments.length > 3 ? arguments[3] : "";
      if (more.equals("crossed")) {
        new CrossedWriter(book).cross(writer::write, writer.out::println);
      } else {
        writer.write();
      }
      if (more.equals("on")) {
        writer.goOn();
      }
    }
  }

  private void write() {
    out.println(READY);
    try {
      while (true) {
        one();
      }
    } catch (BookUnavailableException refused) {
      out.println(REFUSED + refused.getMessage());
    }
  }

  private void one() {
    Sheet<LogSheet> sheet = random.nextInt(4) == 0 && !written.isEmpty() ? revised() : added();
    Done.Watered watered = (Done.Watered) sheet.content().done();
    out.println(sheet.id() + " " + sheet.version() + " " + watered.waterMm());
  }

  private void goOn() {
    for (int acknowledged = 0; acknowledged < GOES_ON; ) {
      try {
        book.read(reading -> reading.all(Kind.LAWN));
        one();
        acknowledged++;
      } catch (BookUnavailableException refused) {
        LockSupport.parkNanos(20_000_000);
      }
    }
  }

  private Sheet<LogSheet> added() {
    String id = new UUID(random.nextLong(), random.nextLong()).toString();
    Sheet<LogSheet> sheet = book.write("writer", writing -> writing.add(Kind.LOG, id, entry()));
    written.add(sheet);
    return sheet;
  }

  private Sheet<LogSheet> revised() {
    int place = random.nextInt(written.size());
    Sheet<LogSheet> before = written.get(place);
    LogSheet entry = entry();
    Sheet<LogSheet> sheet =
        book.write(
            "writer", writing -> writing.revise(Kind.LOG, before.id(), before.version(), entry));
    written.set(place, sheet);
    return sheet;
  }

  private LogSheet entry() {
    double waterMm = 1 + random.nextInt(1000) / 10.0;
    LocalDate day = FIRST.plusDays(random.nextInt(700));
    return new LogSheet(lawn, day, null, new Done.Watered(waterMm), NOTE, List.of());
  }
}
